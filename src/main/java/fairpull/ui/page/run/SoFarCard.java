package fairpull.ui.page.run;

import fairpull.app.usecase.SoFar;
import fairpull.domain.plan.Install;
import fairpull.report.chart.SoFarChart;
import fairpull.ui.form.Card;
import fairpull.ui.form.ChartView;
import fairpull.ui.form.Prose;
import fairpull.ui.theme.Words;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JComponent;
import net.miginfocom.swing.MigLayout;

/** The values so far, their scatter, whether the car came back. Nothing of the change before a planned look. */
final class SoFarCard extends Card {
    SoFarCard() {
        super(Words.of("run.sofar.head"), new MigLayout("insets 16 20 16 20, gap 8 8, fillx, wrap 1", "[grow, fill]"));
        setName("run.sofar");
    }

    /** Shows what came in, or, to blind eyes, that it came in. */
    void show(SoFar soFar, boolean blind) {
        while (getComponentCount() > 1) {
            remove(1);
        }
        if (blind) {
            add(Prose.small(Words.of("run.sofar.blind")), "growx, wmin 0");
        } else if (soFar.values().isEmpty()) {
            add(Prose.small(Words.of("run.sofar.none")), "growx, wmin 0");
        } else {
            add(chart(soFar), "growx, wmin 0");
        }
        List<String> said = soFar.said();
        (blind ? said.subList(said.size() - 1, said.size()) : said).forEach(words -> add(Prose.body(words), "growx, wmin 0"));
        revalidate();
        repaint();
    }

    private static JComponent chart(SoFar soFar) {
        Map<Install, Collection<Double>> values = new LinkedHashMap<>();
        soFar.values().forEach((install, pulls) -> values.put(install, pulls.values()));
        return new ChartView("run.chart", (int) SoFarChart.height(values.size()), (width, height) -> Optional.of(
                new ChartView.Shown(SoFarChart.draw(values, soFar.unit(), width), List.of())));
    }
}
