package fairpull.app.usecase.auditing;

import fairpull.domain.InputException;
import fairpull.domain.audit.Publication.Curves;
import fairpull.report.chart.Chart;
import fairpull.report.chart.SeenCurvesChart;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A pair of published curves as the window shows it.
 *
 * @param chart both curves; empty where they cannot be read
 * @param trouble why not; empty where they can
 */
public record CurvesView(Optional<Chart> chart, Optional<InputException> trouble) {
    /** {@return each pair of curves, whose files lie in a folder} */
    public static List<CurvesView> of(List<Curves> curves, Path folder) throws IOException {
        PublishedCurves reader = new PublishedCurves(folder);
        List<CurvesView> views = new ArrayList<>();
        for (Curves pair : curves) {
            try {
                views.add(new CurvesView(Optional.of(SeenCurvesChart.of(reader.pair(pair))), Optional.empty()));
            } catch (InputException unreadable) {
                views.add(new CurvesView(Optional.empty(), Optional.of(unreadable)));
            }
        }
        return views;
    }
}
