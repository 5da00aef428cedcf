package fairpull.engine.curve;

import fairpull.domain.plan.Definition;
import fairpull.domain.pull.Channels;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import fairpull.engine.curve.Outcome.Reason;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * The time from a step of the pedal until torque (or power) first comes to a share of what it then reaches.
 *
 * <p>The pedal steps where it rises through half of its full opening and is fully open ({@link Throttle}) within {@value #STEP_S} s; the
 * watch starts at half, by linear interpolation. What is reached is a plateau: while the pedal stays open the largest median of the values
 * within {@value #PLATEAU_S} s, which noise lifts far less than it lifts a largest value. The watch stops where the value, smoothed by a
 * {@link LocalQuadratic} over {@value #SMOOTHED_S} s (as it is where the log is too slow for that), first comes to {@code share} × that, by
 * linear interpolation. A pull whose torque is above that already at the step has no response. Half and all times: common practice, no
 * source.
 */
final class ResponseTime {
    static final double STEP_S = 0.5;
    static final double PLATEAU_S = 1;
    static final double SMOOTHED_S = 0.1;
    private static final double HALF = 0.5;
    /** Plateaus are looked for at every quarter of their length. */
    private static final int OVERLAPPING = 4;

    private final Samples time;
    private final Samples pedal;
    private final Samples value;
    private final LocalQuadratic smooth;
    private final double share;

    private ResponseTime(Samples time, Samples pedal, Samples value, double share) {
        this.time = time;
        this.pedal = pedal;
        this.value = value;
        this.smooth = LocalQuadratic.of(time, value, SMOOTHED_S);
        this.share = share;
    }

    static Outcome of(Channels channels, Definition.Response response) {
        for (Quantity needed : new Quantity[] {Quantity.TIME, Quantity.FRACTION}) {
            if (channels.find(needed).isEmpty()) {
                return Outcome.missing(Reason.CHANNEL_ABSENT, needed);
            }
        }
        Optional<SpeedCurve.RowValue> rows = SpeedCurve.valueOf(channels, response.of());
        if (rows.isEmpty()) {
            return Outcome.missing(Reason.CHANNEL_ABSENT, response.of());
        }
        Samples time = channels.find(Quantity.TIME).orElseThrow();
        if (!ElapsedTime.isRising(time)) {
            return Outcome.missing(Reason.TIME_NOT_RISING, Quantity.TIME);
        }
        double[] values = new double[channels.rows()];
        for (int row = 0; row < values.length; row++) {
            values[row] = rows.get().at(row);
        }
        return new ResponseTime(time, channels.find(Quantity.FRACTION).orElseThrow(), Samples.of(values), response.share())
                .first(response.of());
    }

    private Outcome first(Quantity of) {
        Throttle throttle = Throttle.of(pedal);
        double first = Double.NaN;
        int steps = 0;
        int responses = 0;
        for (Sweep open : throttle.stretches()) {
            OptionalDouble start = stepInto(open, throttle.full() / Throttle.FULL_SHARE * HALF);
            if (start.isPresent()) {
                steps++;
                OptionalDouble end = reached(open, start.getAsDouble());
                if (end.isPresent()) {
                    responses++;
                    first = responses == 1 ? end.getAsDouble() - start.getAsDouble() : first;
                }
            }
        }
        if (responses > 0) {
            return new Outcome.Value(first, responses);
        }
        return steps > 0 ? Outcome.missing(Reason.NO_RESPONSE, of) : Outcome.missing(Reason.NO_PEDAL_STEP, Quantity.FRACTION);
    }

    /** {@return when the pedal came through half on its way into a stretch of full opening; empty if that took too long, or never was} */
    private OptionalDouble stepInto(Sweep open, double half) {
        int row = open.first();
        while (row > 0 && !(pedal.at(row - 1) < half)) {
            row--;
        }
        if (row == 0) {
            return OptionalDouble.empty();
        }
        double start = crossing(pedal, row, half);
        return time.at(open.first()) - start <= STEP_S ? OptionalDouble.of(start) : OptionalDouble.empty();
    }

    private OptionalDouble reached(Sweep open, double start) {
        double level = share * plateau(open);
        double before = Double.NaN;
        for (int row = 1; row <= open.last(); row++) {
            if (time.at(row) > start) {
                before = Double.isNaN(before) ? smoothed(row - 1) : before;
                double now = smoothed(row);
                if (now >= level) {
                    double end = time.at(row - 1) + (level - before) / (now - before) * (time.at(row) - time.at(row - 1));
                    return before < level && end >= start ? OptionalDouble.of(end) : OptionalDouble.empty();
                }
                before = now;
            }
        }
        return OptionalDouble.empty();
    }

    /** {@return the largest median over the time of a plateau, or over the opening where that is shorter; NaN if none is above 0} */
    private double plateau(Sweep open) {
        double largest = Double.NaN;
        int last = open.first();
        for (int first = open.first(); last < open.last(); first += Math.max(1, (last - first) / OVERLAPPING)) {
            last = Math.max(first, last);
            while (last < open.last() && time.at(last) - time.at(first) < PLATEAU_S) {
                last++;
            }
            double median = median(first, last);
            largest = median > 0 && !(largest >= median) ? median : largest;
        }
        return largest;
    }

    private double smoothed(int row) {
        return Double.isFinite(smooth.value(row)) ? smooth.value(row) : value.at(row);
    }

    /** {@return the median of the known values between two rows, both included; NaN if there is none} */
    private double median(int first, int last) {
        double[] sorted = IntStream.rangeClosed(first, last).mapToDouble(value::at).filter(Double::isFinite).sorted().toArray();
        int n = sorted.length;
        return n == 0 ? Double.NaN : (sorted[(n - 1) / 2] + sorted[n / 2]) / 2;
    }

    private double crossing(Samples samples, int row, double level) {
        double part = (level - samples.at(row - 1)) / (samples.at(row) - samples.at(row - 1));
        return time.at(row - 1) + part * (time.at(row) - time.at(row - 1));
    }
}
