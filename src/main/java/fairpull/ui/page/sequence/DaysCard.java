package fairpull.ui.page.sequence;

import fairpull.app.document.SequenceEdits;
import fairpull.app.usecase.planning.PlanSearch;
import fairpull.app.usecase.planning.PlanTyping;
import fairpull.app.usecase.planning.StartingPlan;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Sequence;
import fairpull.domain.search.SearchAnswer;
import fairpull.domain.search.SearchRow;
import fairpull.domain.unit.Unit;
import fairpull.report.chart.FrontChart;
import fairpull.ui.form.Card;
import fairpull.ui.form.ChartView;
import fairpull.ui.form.Entry;
import fairpull.ui.form.FaultWords;
import fairpull.ui.form.Prose;
import fairpull.ui.form.WorkLine;
import fairpull.ui.page.Desk;
import fairpull.ui.theme.Words;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.JCheckBox;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** The days worth choosing among within the hours of the day; a click takes one. */
final class DaysCard extends Card {
    private final Desk desk;
    private final ChartView chart = new ChartView("days.chart", 300, this::draw);
    private final MissingFacts missing;
    private final Prose answer = Prose.small("");
    private final WorkLine working = new WorkLine("days");
    private final JCheckBox balanced = new JCheckBox(Words.of("days.balanced"));
    private final JCheckBox oneWay = new JCheckBox(Words.of("days.oneWay"));
    private final Entry<Double> hours;
    private final Entry<Integer> installs;
    private double minutes = 8 * 60;
    private int mostInstalls = 7;
    private Optional<SearchAnswer> found = Optional.empty();
    private Plan searched;
    private PlanSearch.Limits within;

    DaysCard(Desk desk) {
        super(Words.of("days.head"), new MigLayout("insets 20, gap 8 8, fillx, wrap 1, hidemode 3", "[grow, fill]"));
        this.desk = desk;
        hours = new Entry<>("days.hours", PlanTyping::hoursAsMinutes, value -> {
            minutes = value;
            showLimits();
            search();
        }, () -> { }).aside();
        installs = new Entry<>("days.installs", text -> PlanTyping.count(text, 2, 10), value -> {
            mostInstalls = value;
            showLimits();
            search();
        }, () -> { }).aside();
        add(Prose.small(Words.of("days.sub")), "growx, wmin 0");
        missing = new MissingFacts("days.chart", desk);
        add(missing, "growx, wmin 0");
        add(chart, "growx, wmin 0");
        add(answer, "growx, wmin 0");
        JPanel limits = new JPanel(new MigLayout("insets 0, gap 8 4, hidemode 3, wrap 2", "[pref!][60:70]"));
        limits.setOpaque(false);
        for (Entry<?> limit : List.of(hours, installs)) {
            limits.add(limit.label());
            limits.add(limit.field(), "growx");
            limits.add(limit.complaint(), "spanx, wmin 0, growx");
        }
        for (JCheckBox box : new JCheckBox[] {balanced, oneWay}) {
            box.setOpaque(false);
            box.addActionListener(event -> search());
            limits.add(box, "spanx");
        }
        balanced.setName("days.balanced");
        balanced.setToolTipText(Words.tip(Words.of("days.balanced.tip")));
        oneWay.setName("days.oneWay");
        oneWay.setToolTipText(Words.tip(Words.of("days.oneWay.tip")));
        add(limits, "growx");
        add(working, "growx");
        chart.onClick(this::take);
        desk.settings().listen(() -> {
            if (isShowing()) {
                search();
            }
        });
    }

    void refresh() {
        boolean blind = missing.refresh();
        chart.setVisible(!blind);
        answer.setVisible(!blind);
        showLimits();
        search();
    }

    private void showLimits() {
        hours.show(PlanTyping.hours(minutes));
        installs.show(Integer.toString(mostInstalls));
    }

    private void search() {
        Plan plan = desk.document().plan();
        double most = desk.settings().number("cost.most", 0);
        PlanSearch.Limits limits = new PlanSearch.Limits(minutes, mostInstalls, 8, balanced.isSelected(), oneWay.isSelected(),
                desk.settings().costs(), most > 0 ? OptionalDouble.of(most) : OptionalDouble.empty());
        if (plan.equals(searched) && limits.equals(within)) {
            return;
        }
        searched = plan;
        within = limits;
        working.start(watch -> PlanSearch.days(plan, limits, watch), front -> {
            found = front;
            tell(front.map(days -> Words.of("days.found", days.daysTried(), days.front().size())).orElse(Words.of("days.none")));
        }, fault -> {
            found = Optional.empty();
            tell(FaultWords.of(fault));
        });
    }

    private void tell(String words) {
        answer.setText(words);
        chart.refresh();
    }

    private Optional<ChartView.Shown> draw(double width, double height) {
        Plan plan = desk.document().plan();
        if (found.isEmpty() || found.get().front().isEmpty() || plan.question().worthwhileGainSi().isEmpty()) {
            return Optional.empty();
        }
        Unit unit = plan.question().deciding().unit();
        double worthwhile = unit.differenceFromSi(plan.question().worthwhileGainSi().getAsDouble());
        Optional<FrontChart.Now> now = PlanSearch.now(plan);
        FrontChart front = FrontChart.draw(found.get().front(), worthwhile, unit.symbol(), now, width, height);
        return Optional.of(new ChartView.Shown(front.drawing(), front.spots()));
    }

    private void take(int spot) {
        SearchRow row = found.orElseThrow().front().get(spot);
        Sequence old = desk.document().plan().sequence();
        Sequence other = StartingPlan.refilled(old, row.order(), row.pulls(), row.warmUps());
        desk.edit(SequenceEdits.take(Words.of("days.take", row.order()), other));
    }
}
