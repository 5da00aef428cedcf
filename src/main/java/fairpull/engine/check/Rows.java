package fairpull.engine.check;

import fairpull.domain.pull.Channels;
import fairpull.domain.pull.PullTrace;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import fairpull.engine.curve.Sweep;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** What the checks share: rows of a sweep, the channel that is compared, the last digit of a column, medians. */
final class Rows {
    private static final List<Quantity> COMPARED = List.of(Quantity.POWER, Quantity.TORQUE, Quantity.FORCE, Quantity.CURRENT);

    private Rows() {
    }

    /** {@return the rows of the sweep, between two engine speeds in rad/s, in which the speed is known} */
    static int[] ofSweep(PullTrace pull, double lowRadPerS, double highRadPerS) {
        Channels channels = pull.sweepChannels();
        Optional<Samples> speed = channels.find(Quantity.ENGINE_SPEED);
        return Sweep.of(channels).map(sweep -> IntStream.rangeClosed(sweep.first(), sweep.last())
                .filter(row -> speed.get().at(row) >= lowRadPerS && speed.get().at(row) <= highRadPerS).toArray()).orElse(new int[0]);
    }

    /** {@return the quantity by which a pull is compared with another, if it has one} */
    static Optional<Quantity> compared(PullTrace pull) {
        return COMPARED.stream().filter(quantity -> pull.channels().find(quantity).isPresent()).findFirst();
    }

    /** {@return one unit of the last digit that a channel was written with, in SI} */
    static double lastDigit(PullTrace pull, Quantity quantity) {
        Unit unit = pull.units().get(quantity);
        return unit.factor() * LastDigit.of(pull.channels().find(quantity).orElseThrow().map(unit::fromSi));
    }

    /** {@return the values of a channel in some rows} */
    static double[] values(Samples samples, int[] rows) {
        return Arrays.stream(rows).mapToDouble(samples::at).toArray();
    }

    /** {@return the median; NaN of nothing} */
    static double median(double[] values) {
        return Selection.median(values.clone(), values.length);
    }

    /** {@return the standard deviation of normal values by their median absolute deviation from a centre: 1.4826 × it} */
    static double robustDeviation(double[] values, double centre) {
        return 1.4826 * median(Arrays.stream(values).map(value -> Math.abs(value - centre)).toArray());
    }

    /** {@return a map of channels where all of {@code quantities} are present} */
    static Optional<Map<Quantity, Samples>> all(PullTrace pull, Quantity... quantities) {
        Map<Quantity, Samples> all = pull.channels().all();
        return List.of(quantities).stream().allMatch(all::containsKey) ? Optional.of(all) : Optional.empty();
    }
}
