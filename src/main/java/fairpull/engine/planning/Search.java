package fairpull.engine.planning;

import fairpull.domain.finding.SizeAnswer;
import fairpull.domain.finding.SizeQuestion;
import fairpull.domain.search.DayCaution;
import fairpull.domain.search.Range;
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
    /** Lengths closer than this are the same, in minutes. */
    private static final double SAME_MINUTES = 1e-6;
    /** A gain must be smaller by this share to count as smaller. */
    private static final double SAME_GAIN = 1e-9;
    private static final int REPORTS = 100;

    private final SearchQuestion question;
    private final List<Best> front = new ArrayList<>();
    private final double gainAtInfinity;
    private long daysTried;

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

    private record Day(OrderShape order, int pulls, int warmUps, double minutes, double cost) {
    }

    private record Best(Day day, Precision precision, double gain) {
    }

    private Optional<SearchAnswer> run(DoubleConsumer progress, BooleanSupplier goOn) {
        Optional<List<Day>> laidOut = days(goOn);
        return laidOut.isEmpty() ? Optional.empty() : frontOf(laidOut.get(), progress, goOn);
    }

    private Optional<SearchAnswer> frontOf(List<Day> allowed, DoubleConsumer progress, BooleanSupplier goOn) {
        List<Day> affordable = allowed.stream().filter(this::isAffordable)
                .sorted(Comparator.comparingDouble(Day::minutes)).toList();
        for (int i = 0; i < affordable.size(); i++) {
            if (!goOn.getAsBoolean()) {
                return Optional.empty();
            }
            tryOut(affordable.get(i));
            if ((i + 1) * REPORTS / affordable.size() > i * REPORTS / affordable.size()) {
                progress.accept((i + 1.0) / affordable.size());
            }
        }
        List<SearchRow> rows = front.stream().map(Best::day).map(this::row).toList();
        return Optional.of(new SearchAnswer(rows, daysTried, least(allowed, Comparator.comparingDouble(Day::minutes)).map(Day::minutes)
                .map(OptionalDouble::of).orElse(OptionalDouble.empty()), least(allowed, Comparator.comparingDouble(Day::cost))
                .map(Day::cost).map(OptionalDouble::of).orElse(OptionalDouble.empty())));
    }

    /** All days; empty where told to stop before all were laid out. */
    private Optional<List<Day>> days(BooleanSupplier goOn) {
        OrderClasses.Gathered orders = OrderClasses.within(question.space(), question.asked().drift(), hasBreaks());
        Range pulls = question.space().pulls();
        Range warmUps = question.space().warmUps();
        daysTried = orders.orders() * (pulls.most() - pulls.least() + 1) * (warmUps.most() - warmUps.least() + 1);
        List<Day> days = new ArrayList<>();
        for (int warm = warmUps.least(); warm <= warmUps.most(); warm++) {
            for (int counted = pulls.least(); counted <= pulls.most(); counted++) {
                if (!goOn.getAsBoolean()) {
                    return Optional.empty();
                }
                double[] minutes = minutes(counted, warm);
                for (OrderShape order : orders.preferred()) {
                    int installs = order.letters().length();
                    double cost = question.costs().of(minutes[installs], installs, counted + warm);
                    days.add(new Day(order, counted, warm, minutes[installs], cost));
                }
            }
        }
        return Optional.of(days);
    }

    /** Breaks part the installs unequally. */
    private boolean hasBreaks() {
        return question.asked().clock().hoursOf(0).filter(hours -> !hours.breaks().isEmpty()).isPresent();
    }

    /** How long a day takes does not depend on its order; by the number of installs. */
    private double[] minutes(int pulls, int warmUps) {
        double[] minutes = new double[question.space().mostInstalls() + 1];
        for (int installs = 1; installs < minutes.length; installs++) {
            minutes[installs] = SequenceDesign.clock(question.sizing("A".repeat(installs), pulls, warmUps)).get(0).minutes();
        }
        return minutes;
    }

    private boolean isAffordable(Day day) {
        return day.minutes() <= question.minutes() + SAME_MINUTES
                && day.cost() <= question.money().orElse(Double.POSITIVE_INFINITY) * (1 + SAME_GAIN);
    }

    private void tryOut(Day day) {
        double best = front.isEmpty() ? Double.POSITIVE_INFINITY : front.get(front.size() - 1).gain();
        if (standardErrorAtLeast(day) * gainAtInfinity >= best) {
            return;
        }
        Precision precision = precision(day).orElse(null);
        if (precision == null || front.stream().anyMatch(shown -> shown.precision().isAtLeastAsGoodAs(precision))) {
            return;
        }
        SizeQuestion sizing = sizing(day);
        if (best < Double.POSITIVE_INFINITY && Sizing.power(precision, best, sizing) <= question.asked().powerWanted()) {
            return;
        }
        OptionalDouble gain = Sizing.detectableGain(precision, sizing);
        if (gain.isPresent() && gain.getAsDouble() < best * (1 - SAME_GAIN)) {
            front.removeIf(shown -> shown.day().minutes() >= day.minutes() - SAME_MINUTES);
            front.add(new Best(day, precision, gain.getAsDouble()));
        }
    }

    /** √((s_r² + s_p²/n)(1/k_A + 1/k_B)): that of the day without drift; a term more in the model never makes it smaller. */
    private double standardErrorAtLeast(Day day) {
        double refit = question.asked().refitScatter();
        double pull = question.asked().pullScatter();
        return Math.sqrt((refit * refit + pull * pull / day.pulls()) * (1.0 / day.order().countA() + 1.0 / day.order().countB()));
    }

    private Optional<Precision> precision(Day day) {
        SizeQuestion sizing = sizing(day);
        return Precision.of(SequenceDesign.of(sizing), sizing);
    }

    private SizeQuestion sizing(Day day) {
        return question.sizing(day.order().letters(), day.pulls(), day.warmUps());
    }

    private SearchRow row(Day day) {
        SizeQuestion sizing = sizing(day);
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

    /** The first in some order that can be judged. */
    private Optional<Day> least(List<Day> days, Comparator<Day> by) {
        return days.stream().sorted(by).filter(day -> precision(day).isPresent()).findFirst();
    }
}
