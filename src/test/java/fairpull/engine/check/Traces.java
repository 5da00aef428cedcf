package fairpull.engine.check;

import fairpull.domain.pull.Channels;
import fairpull.domain.pull.PullId;
import fairpull.domain.pull.PullTrace;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.Units;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.IntToDoubleFunction;

/** An invented sweep from 2000 to 7000 rpm, with the noise of a seed and rounded as a rig writes it, and what can be done to it. */
final class Traces {
    static final int ROWS = 201;
    static final double LOW = Units.RPM.toSi(3000);
    static final double HIGH = Units.RPM.toSi(6500);

    private final Map<Quantity, double[]> readings = new EnumMap<>(Quantity.class);
    private final Map<Quantity, Unit> units = new EnumMap<>(Quantity.class);
    private String name = "A1-1";
    private boolean cutToFullThrottle;
    private OptionalDouble ratio = OptionalDouble.empty();
    private OptionalDouble factor = OptionalDouble.empty();

    private Traces() {
    }

    /** {@return power in hp and torque in N·m to two decimals, speed in whole rpm, time in ms} */
    static Traces sweep(long seed) {
        Random random = new Random(seed);
        Traces traces = new Traces();
        traces.put(Quantity.TIME, Units.SECOND, row -> row / 20.0);
        traces.put(Quantity.ENGINE_SPEED, Units.RPM, row -> 2000 + 25 * row);
        double[] speed = traces.readings.get(Quantity.ENGINE_SPEED);
        double[] torque = new double[ROWS];
        for (int row = 0; row < ROWS; row++) {
            double at = (speed[row] - 4500) / 2500;
            torque[row] = (250 - 30 * at * at) * (1 + 0.004 * random.nextGaussian());
        }
        traces.put(Quantity.TORQUE, Units.NEWTON_METRE, row -> rounded(torque[row], 2));
        traces.put(Quantity.POWER, Units.HORSEPOWER, row -> rounded(
                Units.HORSEPOWER.fromSi(torque[row] * Units.RPM.toSi(speed[row])), 2));
        return traces;
    }

    Traces put(Quantity quantity, Unit unit, IntToDoubleFunction reading) {
        double[] column = new double[ROWS];
        Arrays.setAll(column, reading);
        readings.put(quantity, column);
        units.put(quantity, unit);
        return this;
    }

    Traces without(Quantity quantity) {
        readings.remove(quantity);
        units.remove(quantity);
        return this;
    }

    /** Reads the same numbers in another unit. */
    Traces readAs(Quantity quantity, Unit unit) {
        units.put(quantity, unit);
        return this;
    }

    Traces times(Quantity quantity, double by, int decimals) {
        double[] column = readings.get(quantity);
        return put(quantity, units.get(quantity), row -> rounded(column[row] * by, decimals));
    }

    /** Keeps the first rows alone. */
    Traces first(int rows) {
        readings.replaceAll((quantity, column) -> Arrays.copyOf(column, rows));
        return this;
    }

    Traces named(String pull) {
        name = pull;
        return this;
    }

    /** Reads the value at full throttle alone, as where the mapping uses the throttle. */
    Traces cutToFullThrottle() {
        cutToFullThrottle = true;
        return this;
    }

    Traces air(double ofFactor) {
        factor = OptionalDouble.of(ofFactor);
        return this;
    }

    Traces correctedOverMeasured(double found) {
        ratio = OptionalDouble.of(found);
        return this;
    }

    double[] reading(Quantity quantity) {
        return readings.get(quantity);
    }

    PullTrace trace() {
        Map<Quantity, Samples> channels = new EnumMap<>(Quantity.class);
        readings.forEach((quantity, column) -> channels.put(quantity, Samples.of(column).map(units.get(quantity)::toSi)));
        return new PullTrace(PullId.parse(name).orElseThrow(), true, new Channels(channels), cutToFullThrottle, units, ratio, factor);
    }

    static double rounded(double value, int decimals) {
        double scale = Math.pow(10, decimals);
        return Math.rint(value * scale) / scale;
    }
}
