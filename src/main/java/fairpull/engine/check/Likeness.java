package fairpull.engine.check;

import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Two pulls row by row: the channel that both are compared by, in the units it was written in.
 *
 * @param one values of the first, finite in every row
 * @param other values of the second, as many
 * @param oneDigit one unit of the last digit of the first
 * @param otherDigit the same of the second
 */
record Likeness(double[] one, double[] other, double oneDigit, double otherDigit) {
    /** Fewer equal rows may be chance. */
    static final int FEWEST = 8;
    /** Rows that agree only after rounding the finer of the two need more of them. */
    static final int FEWEST_ROUNDED = 16;
    private static final double ROUND_TRIP = 1e-9;

    /** What is told of a pair. */
    interface Pair {
        boolean is(Likeness likeness);
    }

    /**
     * What is compared of one pull, told once however many others it is held against.
     *
     * @param quantity the channel by which it is compared, if it has one
     * @param values of that channel
     * @param speeds engine speed beside it
     * @param digit one unit of the last digit of the values
     * @param speedDigit the same of the speeds
     * @param complete whether every value is known
     */
    private record Side(Optional<Quantity> quantity, double[] values, Optional<Samples> speeds, double digit, double speedDigit,
            boolean complete) {
        static Side of(Traced pull) {
            Optional<Quantity> quantity = pull.compared();
            Optional<Samples> speeds = pull.find(Quantity.ENGINE_SPEED);
            double[] values = quantity.flatMap(pull::find).orElse(Samples.of()).stream().toArray();
            return new Side(quantity, values, speeds, quantity.map(pull::lastDigit).orElse(0.0),
                    speeds.isPresent() ? pull.lastDigit(Quantity.ENGINE_SPEED) : 0, Arrays.stream(values).allMatch(Double::isFinite));
        }

        boolean canBeCompared() {
            return quantity.isPresent() && values.length >= FEWEST;
        }

        boolean hasSameSpeeds(Side other) {
            if (speeds.isEmpty() || other.speeds.isEmpty()) {
                return speeds.isEmpty() && other.speeds.isEmpty();
            }
            double most = 0.51 * Math.max(speedDigit, other.speedDigit);
            for (int row = 0; row < speeds.get().size(); row++) {
                if (Math.abs(speeds.get().at(row) - other.speeds.get().at(row)) > most) {
                    return false;
                }
            }
            return true;
        }
    }

    /** {@return the pulls that stand with an earlier one in a relation, as {@code later = earlier}; empty if none could be compared} */
    static Optional<List<String>> pairs(List<Traced> pulls, Pair relation) {
        List<Side> sides = pulls.stream().map(Side::of).toList();
        List<String> found = new ArrayList<>();
        for (int later = 1; later < pulls.size(); later++) {
            boolean open = true;
            for (int earlier = 0; earlier < later && open; earlier++) {
                if (of(sides.get(earlier), sides.get(later)).filter(relation::is).isPresent()) {
                    found.add(pulls.get(later).pull().pull() + " = " + pulls.get(earlier).pull().pull());
                    open = false;
                }
            }
        }
        return sides.stream().filter(Side::canBeCompared).count() > 1 ? Optional.of(found) : Optional.empty();
    }

    /** {@return the pair, where both hold the same channel in the same rows at the same engine speeds} */
    private static Optional<Likeness> of(Side one, Side other) {
        boolean alike = one.canBeCompared() && one.quantity.equals(other.quantity) && one.values.length == other.values.length
                && one.complete && other.complete && one.hasSameSpeeds(other);
        return alike ? Optional.of(new Likeness(one.values, other.values, one.digit, other.digit))
                : Optional.empty();
    }

    /** {@return whether all values are the same, but for one of the two being written with fewer digits} */
    boolean isEqual() {
        boolean alike = Math.abs(oneDigit / otherDigit - 1) < ROUND_TRIP;
        double tolerance = alike ? ROUND_TRIP : 0.5 * Math.max(oneDigit, otherDigit);
        return (alike || one.length >= FEWEST_ROUNDED) && isWithin(1, tolerance);
    }

    /** {@return the factor between the two by least squares} */
    double factor() {
        double products = 0;
        double squares = 0;
        for (int row = 0; row < one.length; row++) {
            products += one[row] * other[row];
            squares += one[row] * one[row];
        }
        return products / squares;
    }

    /** {@return whether the second is a factor times the first, within an allowance} */
    boolean isWithin(double factor, double tolerance) {
        for (int row = 0; row < one.length; row++) {
            double noise = ROUND_TRIP * Math.abs(other[row]);
            if (!(Math.abs(other[row] - factor * one[row]) <= tolerance + noise)) {
                return false;
            }
        }
        return true;
    }
}
