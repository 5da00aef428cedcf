package fairpull.ui.page.run;

import fairpull.app.usecase.running.SoFar;
import fairpull.domain.pull.PullId;
import fairpull.report.chart.Marked;
import fairpull.report.chart.SoFarChart;
import fairpull.ui.form.Card;
import fairpull.ui.form.ChartView;
import fairpull.ui.form.Prose;
import fairpull.ui.strip.DayStripView;
import fairpull.ui.theme.Words;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import net.miginfocom.swing.MigLayout;

/** The values so far, their scatter, whether the car came back. Nothing of the change before a planned look. */
final class SoFarCard extends Card {
    /** The order of the pulls does not depend on the width. */
    private static final double ANY_WIDTH = 300;

    private final DayStripView strip;

    /** A card whose dots choose pulls on a strip, and which tells of the pull that is chosen there. */
    SoFarCard(DayStripView strip) {
        super(Words.of("run.sofar.head"), new MigLayout("insets 10 16 10 16, gap 8 6, fillx, wrap 1", "[grow, fill]"));
        this.strip = strip;
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
        strip.chosenPull().ifPresent(pull -> {
            Prose told = Prose.body(soFar.of(pull, blind));
            told.setName("run.chosen");
            add(told, "growx, wmin 0");
        });
        List<String> said = soFar.said();
        (blind ? said.subList(said.size() - 1, said.size()) : said).forEach(words -> add(Prose.small(words), "growx, wmin 0"));
        revalidate();
        repaint();
    }

    private JComponent chart(SoFar soFar) {
        Optional<Marked> marked = strip.chosenPull().map(Marked::of).or(() -> strip.chosen().map(Marked::of));
        List<PullId> pulls = SoFarChart.draw(soFar.values(), soFar.unit(), marked, ANY_WIDTH).pulls();
        ChartView view = new ChartView("run.chart", (int) SoFarChart.height(soFar.values().size()), (width, height) -> {
            SoFarChart chart = SoFarChart.draw(soFar.values(), soFar.unit(), marked, width);
            return Optional.of(new ChartView.Shown(chart.drawing(), chart.places()));
        });
        view.onClick(spot -> strip.choose(pulls.get(spot)));
        return view;
    }
}
