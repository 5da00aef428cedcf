package fairpull.engine.planning;

import fairpull.domain.day.DayClock;
import fairpull.domain.finding.SizeQuestion;
import fairpull.domain.search.Range;
import fairpull.domain.search.SearchQuestion;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * All days that a search may try, whether or not hours and money suffice.
 *
 * @param days one for each class of orders that cannot differ
 * @param tried how many days these stand for
 */
record SearchDaysLaidOut(List<SearchDay> days, long tried) {
    private static final double MINUTES_AN_HOUR = 60;

    /** Lays them out; empty where told to stop before all were. */
    static Optional<SearchDaysLaidOut> of(SearchQuestion question, BooleanSupplier goOn) {
        OrderClasses classes = new OrderClasses(question.space(), question.asked().drift());
        SizeQuestion.Clock clock = question.asked().clock();
        boolean breaks = clock.hoursOf(0).filter(hours -> !hours.breaks().isEmpty()).isPresent();
        Range pulls = question.space().pulls();
        Range warmUps = question.space().warmUps();
        OrderClasses.Gathered alike = classes.equallySpaced();
        List<SearchDay> days = new ArrayList<>();
        long tried = 0;
        for (int warm = warmUps.least(); warm <= warmUps.most(); warm++) {
            for (int counted = pulls.least(); counted <= pulls.most(); counted++) {
                if (!goOn.getAsBoolean()) {
                    return Optional.empty();
                }
                List<DayClock> clocks = clocks(question, counted, warm);
                OrderClasses.Gathered orders = breaks ? classes.timed(clocks.stream().map(InstallTimes::of).toList(),
                        clock.intervalMinutes() / MINUTES_AN_HOUR / 2) : alike;
                tried += orders.orders();
                for (OrderShape order : orders.preferred()) {
                    days.add(day(question, order, counted, warm, clocks.get(order.letters().length() - 1).minutes()));
                }
            }
        }
        return Optional.of(new SearchDaysLaidOut(days, tried));
    }

    private static SearchDay day(SearchQuestion question, OrderShape order, int pulls, int warmUps, double minutes) {
        double cost = question.costs().of(minutes, order.letters().length(), pulls + warmUps);
        return new SearchDay(question, order, pulls, warmUps, minutes, cost);
    }

    /** When everything happens does not depend on the order; of one install, of two, … */
    private static List<DayClock> clocks(SearchQuestion question, int pulls, int warmUps) {
        return IntStream.rangeClosed(1, question.space().mostInstalls())
                .mapToObj(installs -> SequenceDesign.clock(question.sizing("A".repeat(installs), pulls, warmUps)).get(0)).toList();
    }
}
