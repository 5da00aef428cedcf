package fairpull.engine.planning;

import fairpull.domain.finding.SizeAnswer;
import fairpull.domain.finding.SizeQuestion;
import fairpull.domain.search.DayCaution;
import fairpull.domain.search.FrontDay;
import fairpull.domain.search.SearchAnswer;
import fairpull.domain.search.SearchQuestion;
import fairpull.domain.search.SearchRow;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleConsumer;
import java.util.function.ToDoubleFunction;

/**
 * Finds the days worth choosing: over all orders of up to ten installs, counted pulls and warm-ups within the limits, those that no other
 * one beats in both length and detectable gain. Orders that cannot differ in either are sized once ({@link OrderClasses}); every figure
 * of a row is that of {@link Sizing}.
 *
 * <p>From the shortest day on, a day belongs to the front where it finds a smaller gain than all before it. Most are settled without
 * finding their detectable gain: by the gain that infinitely many degrees of freedom would find without a drift; as one that is neither
 * more precise nor has more degrees of freedom than a day already on the front cannot beat it; or by one look at its power at the best
 * gain so far.
 *
 * <p>Checked against: all days sized one by one (SearchTest).
 */
public final class Search {
    /** A gain must be smaller by this share to count as smaller. */
    private static final double SAME_GAIN = 1e-9;
    private static final int REPORTS = 100;
    /** No gain is that small. */
    private static final double NEVER_ENOUGH = -1;

    private final SearchQuestion question;
    private final List<Best> front = new ArrayList<>();
    private final double gainAtInfinity;

    private Search(SearchQuestion question) {
        this.question = question;
        gainAtInfinity = Sizing.detectableGain(new Precision(1, Double.POSITIVE_INFINITY), question.asked()).orElse(0);
    }

    /**
     * The days worth choosing.
     *
     * @param question what may be tried and what it may cost
     * @param progress told the share that is done, 0 to 1, at most a hundred times
     * @param goOn asked before every day; the search stops where it says no
     * @return the answer; empty where the search was stopped
     * @throws IllegalArgumentException if a figure is out of its range
     */
    public static Optional<SearchAnswer> search(SearchQuestion question, DoubleConsumer progress, BooleanSupplier goOn) {
        Sizing.requireSound(question.sizing("AB", 1, 0));
        return new Search(question).run(progress, goOn);
    }

    /**
     * The days worth choosing by length and gain alone, from the shortest up to the first that is good enough: what {@link #search} answers
     * of them, for a fraction of the work.
     *
     * @param question what may be tried and what it may cost
     * @param enough a gain; no day is longer than the shortest that finds it
     * @return the days, the last of which finds that gain if any does
     * @throws IllegalArgumentException if a figure is out of its range
     */
    public static List<FrontDay> front(SearchQuestion question, double enough) {
        Sizing.requireSound(question.sizing("AB", 1, 0));
        Search search = new Search(question);
        search.explore(SearchDaysLaidOut.of(question, () -> true).orElseThrow(), enough, share -> { }, () -> true);
        return search.front.stream().map(Best::shortly).toList();
    }

    private record Best(SearchDay day, Precision precision, double gain) {
        FrontDay shortly() {
            return new FrontDay(day.order().letters(), day.pulls(), day.warmUps(), day.minutes(), gain);
        }
    }

    private Optional<SearchAnswer> run(DoubleConsumer progress, BooleanSupplier goOn) {
        return SearchDaysLaidOut.of(question, goOn).flatMap(laidOut -> answer(laidOut, progress, goOn));
    }

    private Optional<SearchAnswer> answer(SearchDaysLaidOut laidOut, DoubleConsumer progress, BooleanSupplier goOn) {
        if (!explore(laidOut, NEVER_ENOUGH, progress, goOn)) {
            return Optional.empty();
        }
        List<SearchRow> rows = front.stream().map(Best::day).map(this::row).toList();
        double best = front.isEmpty() ? 0 : front.get(front.size() - 1).gain();
        return Optional.of(new SearchAnswer(rows, laidOut.tried(), least(laidOut, SearchDay::minutes), least(laidOut, SearchDay::cost),
                best <= question.asked().gain() ? Optional.empty() : Optional.of(Shortfalls.of(question, gainAtInfinity, best))));
    }

    /** Fills the front up to the shortest day that finds what is enough; tells whether it was let go on until then. */
    private boolean explore(SearchDaysLaidOut laidOut, double enough, DoubleConsumer progress, BooleanSupplier goOn) {
        List<SearchDay> affordable = laidOut.days().stream().filter(SearchDay::isAffordable)
                .sorted(Comparator.comparingDouble(SearchDay::minutes)).toList();
        for (int i = 0; i < affordable.size() && !isLongerThanIsEnough(affordable.get(i), enough); i++) {
            if (!goOn.getAsBoolean()) {
                return false;
            }
            tryOut(affordable.get(i));
            if ((i + 1) * REPORTS / affordable.size() > i * REPORTS / affordable.size()) {
                progress.accept((i + 1.0) / affordable.size());
            }
        }
        return true;
    }

    private boolean isLongerThanIsEnough(SearchDay day, double enough) {
        Best last = front.isEmpty() ? null : front.get(front.size() - 1);
        return last != null && last.gain() <= enough && day.minutes() > last.day().minutes() + SearchDay.SAME_MINUTES;
    }

    private void tryOut(SearchDay day) {
        double best = front.isEmpty() ? Double.POSITIVE_INFINITY : front.get(front.size() - 1).gain();
        if (day.standardErrorAtLeast() * gainAtInfinity >= best) {
            return;
        }
        Precision precision = day.precision().orElse(null);
        if (precision == null || front.stream().anyMatch(shown -> shown.precision().isAtLeastAsGoodAs(precision))) {
            return;
        }
        SizeQuestion sizing = day.sizing();
        if (best < Double.POSITIVE_INFINITY && Sizing.power(precision, best, sizing) <= question.asked().powerWanted()) {
            return;
        }
        OptionalDouble gain = Sizing.detectableGain(precision, sizing);
        if (gain.isPresent() && gain.getAsDouble() < best * (1 - SAME_GAIN)) {
            front.removeIf(shown -> shown.day().minutes() >= day.minutes() - SearchDay.SAME_MINUTES);
            front.add(new Best(day, precision, gain.getAsDouble()));
        }
    }

    private SearchRow row(SearchDay day) {
        SizeQuestion sizing = day.sizing();
        SizeAnswer seen = Sizing.figures(sizing);
        DriftLeft left = DriftLeft.of(sizing);
        return new SearchRow(day.order().letters(), day.pulls(), day.warmUps(), seen, left.linear(), left.quadratic(),
                cautions(day.order(), seen, left), day.cost());
    }

    private List<DayCaution> cautions(OrderShape order, SizeAnswer seen, DriftLeft left) {
        List<DayCaution> cautions = new ArrayList<>();
        if (order.exchanges() < 2) {
            cautions.add(DayCaution.NO_RETURN_TO_A);
        }
        if (question.space().oneWay() && order.countB() == 1) {
            cautions.add(DayCaution.SINGLE_B_ONE_WAY);
        }
        if (seen.limit().isEmpty()) {
            cautions.add(DayCaution.DRIFT_TOLD_BY_PULLS_ALONE);
        }
        if (left.linear() != 0) {
            cautions.add(DayCaution.LINEAR_DRIFT_LEFT);
        }
        if (left.quadratic() != 0) {
            cautions.add(DayCaution.CURVATURE_LEFT);
        }
        return cautions;
    }

    /** The least of what can be judged. */
    private static OptionalDouble least(SearchDaysLaidOut laidOut, ToDoubleFunction<SearchDay> figure) {
        return laidOut.days().stream().sorted(Comparator.comparingDouble(figure)).filter(day -> day.precision().isPresent())
                .mapToDouble(figure).findFirst();
    }
}
