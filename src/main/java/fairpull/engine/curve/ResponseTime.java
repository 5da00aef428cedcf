package fairpull.engine.curve;

import fairpull.domain.plan.Definition;
import fairpull.domain.pull.Channels;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import fairpull.engine.curve.Outcome.Reason;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The time from a step of the pedal until torque (or power) first comes to a share of what it then reaches.
 *
 * <p>The pedal steps where it rises through half of its full opening and is fully open ({@link Throttle}) within {@value #STEP_S} s; the
 * watch starts at half, by linear interpolation. What is reached is the largest steady value while the pedal stays open. The watch stops
 * where the value first comes to {@code share} × that, by linear interpolation; a pull whose torque is
 * above that already at the step has no response. Half, {@value #STEP_S} s: common practice, no source.
 */
final class ResponseTime {
    static final double STEP_S = 0.5;
    private static final double HALF = 0.5;

    private final Samples time;
    private final Samples pedal;
    private final Samples value;
    private final double share;

    private ResponseTime(Samples time, Samples pedal, Samples value, double share) {
        this.time = time;
        this.pedal = pedal;
        this.value = value;
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
        OptionalDouble steady = Throttle.steady(value, open.first(), open.last());
        if (steady.isEmpty()) {
            return steady;
        }
        double level = share * steady.getAsDouble();
        for (int row = 1; row <= open.last(); row++) {
            if (time.at(row) > start && value.at(row) >= level) {
                boolean rose = value.at(row - 1) < level && crossing(value, row, level) >= start;
                return rose ? OptionalDouble.of(crossing(value, row, level)) : OptionalDouble.empty();
            }
        }
        return OptionalDouble.empty();
    }

    private double crossing(Samples samples, int row, double level) {
        double part = (level - samples.at(row - 1)) / (samples.at(row) - samples.at(row - 1));
        return time.at(row - 1) + part * (time.at(row) - time.at(row - 1));
    }
}
