package fairpull.engine.curve;

import fairpull.domain.pull.Channels;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.DoubleStream;

/**
 * A channel over engine speed within one sweep: ordered by speed, values at equal speeds averaged, straight lines between.
 * Nothing is said outside the speeds that it covers.
 */
final class SpeedCurve {
    private final double[] speeds;
    private final double[] values;

    private SpeedCurve(double[] speeds, double[] values) {
        this.speeds = speeds;
        this.values = values;
    }

    /** {@return whether the pull has the quantity, or what it is computed from} */
    static boolean canHold(Channels channels, Quantity quantity) {
        return valueOf(channels, quantity).isPresent();
    }

    /** {@return the curve of a quantity in a sweep; empty if fewer than two speeds carry a value} */
    static Optional<SpeedCurve> of(Channels channels, Quantity quantity, Sweep sweep) {
        Samples speed = channels.find(Quantity.ENGINE_SPEED).orElseThrow();
        RowValue value = valueOf(channels, quantity).orElseThrow();
        double[] speeds = new double[sweep.last() - sweep.first() + 1];
        double[] values = new double[speeds.length];
        int count = 0;
        for (int row = sweep.first(); row <= sweep.last(); row++) {
            double here = value.at(row);
            double at = speed.at(row) + 0.0; // turns -0.0 into 0.0, which are one speed
            if (Double.isFinite(here) && Double.isFinite(at)) {
                speeds[count] = at;
                values[count++] = here;
            }
        }
        return ofPoints(Arrays.copyOf(speeds, count), Arrays.copyOf(values, count));
    }

    /** {@return the curve of some points; empty if fewer than two speeds carry a value} */
    static Optional<SpeedCurve> ofPoints(double[] speeds, double[] values) {
        double[] distinct = distinct(speeds);
        if (distinct.length < 2) {
            return Optional.empty();
        }
        double[] means = new double[distinct.length];
        int[] counts = new int[distinct.length];
        for (int i = 0; i < speeds.length; i++) {
            int place = Arrays.binarySearch(distinct, speeds[i]);
            means[place] += values[i];
            counts[place]++;
        }
        for (int place = 0; place < means.length; place++) {
            means[place] /= counts[place];
        }
        return Optional.of(new SpeedCurve(distinct, means));
    }

    private static double[] distinct(double[] speeds) {
        double[] sorted = speeds.clone();
        Arrays.sort(sorted);
        int count = 0;
        for (double speed : sorted) {
            if (count == 0 || Double.compare(speed, sorted[count - 1]) != 0) {
                sorted[count++] = speed;
            }
        }
        return Arrays.copyOf(sorted, count);
    }

    double lowestRadPerS() {
        return speeds[0];
    }

    double highestRadPerS() {
        return speeds[speeds.length - 1];
    }

    boolean covers(double speedRadPerS) {
        return speedRadPerS >= lowestRadPerS() && speedRadPerS <= highestRadPerS();
    }

    double peak() {
        return Arrays.stream(values).max().orElseThrow();
    }

    /** {@return the value at a speed that the curve covers, by linear interpolation} */
    double at(double speedRadPerS) {
        int place = Arrays.binarySearch(speeds, speedRadPerS);
        if (place >= 0) {
            return values[place];
        }
        int above = -place - 1;
        double share = (speedRadPerS - speeds[above - 1]) / (speeds[above] - speeds[above - 1]);
        return values[above - 1] + share * (values[above] - values[above - 1]);
    }

    /**
     * This curve brought to a bandwidth by local linear fits, at its own speeds and at some others that it covers.
     *
     * @see LocalLinear
     */
    SpeedCurve smoothed(double bandwidthRadPerS, double... alsoAt) {
        double[] at = DoubleStream.concat(Arrays.stream(speeds), Arrays.stream(alsoAt).filter(this::covers)).sorted().distinct().toArray();
        LocalLinear fit = new LocalLinear(speeds, values, bandwidthRadPerS);
        return new SpeedCurve(at, Arrays.stream(at).map(fit::at).toArray());
    }

    /** {@return the local linear fits to this curve} */
    LocalLinear fits(double bandwidthRadPerS) {
        return new LocalLinear(speeds, values, bandwidthRadPerS);
    }

    /** {@return ∫ value dω ÷ (high − low) by the trapezoid rule, the ends interpolated; both ends must be covered} */
    double mean(double lowRadPerS, double highRadPerS) {
        double area = 0;
        double fromSpeed = lowRadPerS;
        double fromValue = at(lowRadPerS);
        for (int place = 0; place < speeds.length && speeds[place] < highRadPerS; place++) {
            if (speeds[place] > lowRadPerS) {
                area += (speeds[place] - fromSpeed) * (values[place] + fromValue) / 2;
                fromSpeed = speeds[place];
                fromValue = values[place];
            }
        }
        area += (highRadPerS - fromSpeed) * (at(highRadPerS) + fromValue) / 2;
        return area / (highRadPerS - lowRadPerS);
    }

    /** {@return the quantity row by row, measured or computed; empty if the pull has neither it nor what it is computed from} */
    static Optional<RowValue> valueOf(Channels channels, Quantity quantity) {
        Optional<Samples> measured = channels.find(quantity);
        if (measured.isPresent()) {
            return measured.map(samples -> samples::at);
        }
        Optional<Samples> speed = channels.find(Quantity.ENGINE_SPEED);
        Optional<Samples> torque = channels.find(Quantity.TORQUE);
        Optional<Samples> power = channels.find(Quantity.POWER);
        if (quantity == Quantity.POWER && speed.isPresent() && torque.isPresent()) {
            return Optional.of(row -> torque.get().at(row) * speed.get().at(row));
        }
        if (quantity == Quantity.TORQUE && speed.isPresent() && power.isPresent()) {
            return Optional.of(row -> power.get().at(row) / speed.get().at(row));
        }
        return Optional.empty();
    }

    interface RowValue {
        double at(int row);
    }
}
