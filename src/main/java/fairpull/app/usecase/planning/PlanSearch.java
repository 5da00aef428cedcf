package fairpull.app.usecase.planning;

import fairpull.app.task.CancelledException;
import fairpull.app.task.Progress;
import fairpull.domain.finding.SizeAnswer;
import fairpull.domain.finding.SizeQuestion;
import fairpull.domain.plan.Plan;
import fairpull.domain.search.Costs;
import fairpull.domain.search.Range;
import fairpull.domain.search.SearchAnswer;
import fairpull.domain.search.SearchQuestion;
import fairpull.domain.search.SearchSpace;
import fairpull.engine.planning.PlanSizing;
import fairpull.engine.planning.Sizing;
import fairpull.report.chart.FrontChart;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Looks for other days for a plan, and for other numbers of pulls: figures for the charts beside its sequence. */
public final class PlanSearch {
    private static final int MOST_PULLS = 12;
    private static final int STEPS = 100;

    private PlanSearch() {
    }

    /**
     * Within what the days are looked for.
     *
     * @param minutes how long the day may last
     * @param mostInstalls installs at most
     * @param mostPulls counted pulls per install at most
     * @param counterbalanced whether A and B must stand equally late on average
     * @param oneWay whether B cannot come off again
     * @param costs what things cost
     * @param money what a day may cost; empty where that does not matter
     */
    public record Limits(double minutes, int mostInstalls, int mostPulls, boolean counterbalanced, boolean oneWay, Costs costs,
            OptionalDouble money) {
    }

    /**
     * The days worth choosing among.
     *
     * @return empty where the plan has no scatter figures or no worthwhile gain
     * @throws UsageException if no day within the limits can be judged
     * @throws CancelledException if the search was stopped
     */
    public static Optional<SearchAnswer> days(Plan plan, Limits limits, Progress progress) {
        Optional<SizeQuestion> question = PlanSizing.question(plan).map(asked -> asked.withLooks(Optional.empty()));
        if (question.isEmpty()) {
            return Optional.empty();
        }
        int warmUps = question.get().warmUps();
        SearchSpace space = new SearchSpace(limits.mostInstalls(), OptionalInt.empty(), true, limits.counterbalanced() && !limits.oneWay(),
                limits.oneWay(), new Range(2, Math.max(2, limits.mostPulls())), new Range(warmUps, warmUps));
        SearchQuestion asked = new SearchQuestion(question.get(), space, limits.minutes(),
                limits.costs().areNone() ? OptionalDouble.empty() : limits.money(), limits.costs());
        return Optional.of(SearchDays.search(asked, share -> progress.reached((int) Math.round(share * STEPS), STEPS),
                () -> !progress.isCancelled()).orElseThrow(() -> new CancelledException(0, STEPS)));
    }

    /** {@return the plan as it stands, to be shown among other days; empty where it cannot be judged or sized} */
    public static Optional<FrontChart.Now> now(Plan plan) {
        return PlanSizing.question(plan).map(asked -> Sizing.figures(asked.withLooks(Optional.empty())))
                .filter(seen -> seen.detectableGain().isPresent())
                .map(seen -> new FrontChart.Now(plan.sequence().letters(), seen.minutes(), seen.detectableGain().getAsDouble()));
    }

    /**
     * What other numbers of pulls would find.
     *
     * @param gains the smallest gain found with 1, 2, 3 … counted pulls per install
     * @param limit what more pulls cannot pass
     * @param now counted pulls per install as planned
     */
    public record Pulls(List<OptionalDouble> gains, OptionalDouble limit, int now) {
        public Pulls {
            gains = List.copyOf(gains);
        }
    }

    /** {@return what other numbers of pulls in this order would find; empty where the plan cannot be sized} */
    public static Optional<Pulls> pulls(Plan plan) {
        return PlanSizing.question(plan).map(asked -> asked.withLooks(Optional.empty())).map(asked -> {
            List<OptionalDouble> gains = new ArrayList<>();
            for (int pulls = 1; pulls <= Math.max(MOST_PULLS, asked.pulls() + 2); pulls++) {
                gains.add(Sizing.figures(asked.withPulls(pulls)).detectableGain());
            }
            SizeAnswer now = Sizing.figures(asked);
            return new Pulls(gains, now.limit(), asked.pulls());
        });
    }
}
