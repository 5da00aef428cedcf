package fairpull.io.table;

import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.Units;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What numbers say about their unit, where the header is silent. */
final class Behaviour {
    /** Engine speeds in rad/s stay below this, a full sweep in 1/min passes it. Common practice, no source. */
    private static final double TOO_FAST_FOR_RAD_PER_S = 2_000;
    private static final double FASTEST_RPM = 60_000;
    /** Numbers of one source agree with power = torque × speed within their rounding. */
    private static final double IDENTITY_TOLERANCE = 0.001;
    /** The second best pair of units must be this many times further off. */
    private static final double CLEARLY_WORSE = 3;
    private static final List<Unit> POWER_UNITS = List.of(Units.HORSEPOWER, Units.KILOWATT, Units.PFERDESTAERKE, Units.WATT);
    private static final List<Unit> TORQUE_UNITS = List.of(Units.NEWTON_METRE, Units.POUND_FOOT);

    private Behaviour() {
    }

    /**
     * The units under which power is torque × speed.
     *
     * @param power the unit of power
     * @param torque the unit of torque
     * @param deviation the median relative deviation from the identity
     */
    record UnitPair(Unit power, Unit torque, double deviation) {
    }

    /** {@return the unit of a quantity if the size of its numbers leaves only one} */
    static Optional<Unit> unit(Quantity quantity, Samples numbers) {
        double largest = numbers.stream().filter(value -> !Double.isNaN(value)).max().orElse(Double.NaN);
        if (quantity == Quantity.ENGINE_SPEED && largest > TOO_FAST_FOR_RAD_PER_S && largest < FASTEST_RPM) {
            return Optional.of(Units.RPM);
        }
        return quantity == Quantity.FRACTION && largest > 1.5 && largest <= 110 ? Optional.of(Units.PERCENT) : Optional.empty();
    }

    /**
     * Finds the units of power and torque by the identity power = torque × speed.
     *
     * @param speed engine speed with its unit known
     * @param power numbers of power, the unit known or not
     * @param torque numbers of torque, the unit known or not
     * @return the one pair of units that fits; empty if none does or more than one
     */
    static Optional<UnitPair> unitsByIdentity(GuessedColumn speed, GuessedColumn power, GuessedColumn torque) {
        double[] ratios = ratios(speed, power.column().numbers(), torque.column().numbers());
        if (ratios.length < 3) {
            return Optional.empty();
        }
        List<UnitPair> pairs = new ArrayList<>();
        for (Unit powerUnit : power.unit().map(List::of).orElse(POWER_UNITS)) {
            for (Unit torqueUnit : torque.unit().map(List::of).orElse(TORQUE_UNITS)) {
                pairs.add(new UnitPair(powerUnit, torqueUnit, deviation(ratios, powerUnit.factor() / torqueUnit.factor())));
            }
        }
        pairs.sort(Comparator.comparingDouble(UnitPair::deviation));
        UnitPair best = pairs.get(0);
        boolean settled = best.deviation() < IDENTITY_TOLERANCE
                && (pairs.size() == 1 || pairs.get(1).deviation() > CLEARLY_WORSE * best.deviation());
        return settled ? Optional.of(best) : Optional.empty();
    }

    private static double[] ratios(GuessedColumn speed, Samples power, Samples torque) {
        Samples speeds = speed.column().numbers();
        Unit unit = speed.unit().orElseThrow();
        double[] ratios = new double[speeds.size()];
        int count = 0;
        for (int row = 0; row < speeds.size(); row++) {
            double ratio = power.at(row) / (torque.at(row) * unit.toSi(speeds.at(row)));
            if (ratio > 0 && !Double.isInfinite(ratio) && power.at(row) > 0) {
                ratios[count++] = ratio;
            }
        }
        return Arrays.copyOf(ratios, count);
    }

    private static double deviation(double[] ratios, double factor) {
        double[] deviations = Arrays.stream(ratios).map(ratio -> Math.abs(ratio * factor - 1)).sorted().toArray();
        return deviations[deviations.length / 2];
    }
}
