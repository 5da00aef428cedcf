package fairpull.ui.page.sequence;

import fairpull.app.task.Latest;
import fairpull.app.usecase.planning.PlanSearch;
import fairpull.domain.plan.Plan;
import fairpull.domain.unit.Unit;
import fairpull.report.chart.PullsChart;
import fairpull.ui.form.Card;
import fairpull.ui.form.ChartView;
import fairpull.ui.form.FaultWords;
import fairpull.ui.form.Prose;
import fairpull.ui.page.Desk;
import fairpull.ui.theme.Words;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** What more pulls would bring in this order, and what they cannot pass. */
final class PullsCard extends Card {
    private final Desk desk;
    private final Latest<Optional<PlanSearch.Pulls>> reckoning = new Latest<>(SwingUtilities::invokeLater);
    private final ChartView chart = new ChartView("pulls.chart", 300, this::draw);
    private final MissingFacts missing;
    private Optional<PlanSearch.Pulls> pulls = Optional.empty();
    private Plan shown;

    PullsCard(Desk desk) {
        super(Words.of("pulls.head"), new MigLayout("insets 20, gap 8 8, fillx, wrap 1, hidemode 3", "[grow, fill]"));
        this.desk = desk;
        add(Prose.small(Words.of("pulls.sub")), "growx, wmin 0");
        missing = new MissingFacts("pulls.chart", desk);
        add(missing, "growx, wmin 0");
        add(chart, "growx, wmin 0");
    }

    void refresh() {
        Plan plan = desk.document().plan();
        chart.setVisible(!missing.refresh());
        if (!plan.equals(shown)) {
            shown = plan;
            reckoning.ask(progress -> PlanSearch.pulls(plan), ended -> {
                ended.tell(found -> pulls = found, fault -> {
                    pulls = Optional.empty();
                    desk.words().accept(FaultWords.of(fault));
                });
                chart.refresh();
            });
        }
    }

    private Optional<ChartView.Shown> draw(double width, double height) {
        Plan plan = desk.document().plan();
        if (pulls.isEmpty() || plan.question().worthwhileGainSi().isEmpty()) {
            return Optional.empty();
        }
        PlanSearch.Pulls found = pulls.get();
        List<PullsChart.Step> steps = IntStream.range(0, found.gains().size()).filter(place -> found.gains().get(place).isPresent())
                .mapToObj(place -> new PullsChart.Step(place + 1, found.gains().get(place).getAsDouble())).toList();
        Unit unit = plan.question().deciding().unit();
        double worthwhile = unit.differenceFromSi(plan.question().worthwhileGainSi().getAsDouble());
        return steps.size() < 2 ? Optional.empty() : Optional.of(new ChartView.Shown(PullsChart.draw(steps, found.now(), worthwhile,
                found.limit(), unit.symbol(), width, height), List.of()));
    }
}
