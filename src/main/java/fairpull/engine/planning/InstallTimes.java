package fairpull.engine.planning;

import fairpull.domain.day.DayClock;
import fairpull.domain.day.DayEvent;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * When the installs of a session are run, breaks included, whichever part is fitted. All installs having as many counted pulls, what a
 * drift passes for in the change is a difference of plain means; that is all {@link DriftLeft} comes to where no drift is modelled, here
 * without a fit.
 *
 * <p>Checked against: {@link DriftLeft} (SearchTest).
 */
final class InstallTimes {
    private static final double SECONDS_AN_HOUR = 3600;

    /** Of every install the mean over its counted pulls: hours from the mean of the session, and their squares. */
    private final double[] hours;
    private final double[] squares;

    private InstallTimes(double[] hours, double[] squares) {
        this.hours = hours;
        this.squares = squares;
    }

    /** The times of a session whose installs have as many counted pulls each. */
    static InstallTimes of(DayClock day) {
        double middle = day.events().stream().filter(event -> event.kind() == DayEvent.Kind.PULL).mapToDouble(DayEvent::startS).average()
                .orElseThrow();
        Map<String, double[]> sums = new LinkedHashMap<>();
        for (DayEvent event : day.events()) {
            if (event.kind() == DayEvent.Kind.PULL) {
                double from = (event.startS() - middle) / SECONDS_AN_HOUR;
                double[] sum = sums.computeIfAbsent(event.install(), install -> new double[3]);
                sum[0]++;
                sum[1] += from;
                sum[2] += from * from;
            }
        }
        return new InstallTimes(sums.values().stream().mapToDouble(sum -> sum[1] / sum[0]).toArray(),
                sums.values().stream().mapToDouble(sum -> sum[2] / sum[0]).toArray());
    }

    /** What a drift of 1 per hour passes for: mean time of B less mean time of A, in hours. */
    double lean(OrderShape order) {
        return difference(order, hours);
    }

    /** What a drift of 1 per hour², from the middle of the session, passes for. */
    double bow(OrderShape order) {
        return difference(order, squares);
    }

    private static double difference(OrderShape order, double[] values) {
        double a = 0;
        double b = 0;
        for (int i = 0; i < values.length; i++) {
            if (order.letters().charAt(i) == 'B') {
                b += values[i];
            } else {
                a += values[i];
            }
        }
        return b / order.countB() - a / order.countA();
    }
}
