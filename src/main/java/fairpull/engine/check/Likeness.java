package fairpull.engine.check;

import fairpull.domain.pull.PullTrace;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import java.util.ArrayList;
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

    /** {@return the pulls that stand with an earlier one in a relation, as {@code later = earlier}; empty if none could be compared} */
    static Optional<List<String>> pairs(List<PullTrace> pulls, Pair relation) {
        List<String> found = new ArrayList<>();
        boolean any = false;
        for (int later = 1; later < pulls.size(); later++) {
            boolean open = true;
            for (int earlier = 0; earlier < later && open; earlier++) {
                Optional<Likeness> likeness = of(pulls.get(earlier), pulls.get(later));
                any |= canBeCompared(pulls.get(earlier)) && canBeCompared(pulls.get(later));
                if (likeness.filter(relation::is).isPresent()) {
                    found.add(pulls.get(later).pull() + " = " + pulls.get(earlier).pull());
                    open = false;
                }
            }
        }
        return any ? Optional.of(found) : Optional.empty();
    }

    private static boolean canBeCompared(PullTrace pull) {
        return Rows.compared(pull).isPresent() && pull.channels().rows() >= FEWEST;
    }

    /** {@return the pair, where both hold the same channel in the same rows at the same engine speeds} */
    private static Optional<Likeness> of(PullTrace one, PullTrace other) {
        Optional<Quantity> quantity = Rows.compared(one);
        int rows = one.channels().rows();
        if (quantity.isEmpty() || !quantity.equals(Rows.compared(other)) || rows != other.channels().rows() || rows < FEWEST
                || !sameSpeeds(one, other)) {
            return Optional.empty();
        }
        Samples ones = one.channels().find(quantity.get()).orElseThrow();
        Samples others = other.channels().find(quantity.get()).orElseThrow();
        boolean complete = ones.stream().allMatch(Double::isFinite) && others.stream().allMatch(Double::isFinite);
        return complete ? Optional.of(new Likeness(ones.stream().toArray(), others.stream().toArray(),
                Rows.lastDigit(one, quantity.get()), Rows.lastDigit(other, quantity.get()))) : Optional.empty();
    }

    private static boolean sameSpeeds(PullTrace one, PullTrace other) {
        Optional<Samples> ones = one.channels().find(Quantity.ENGINE_SPEED);
        Optional<Samples> others = other.channels().find(Quantity.ENGINE_SPEED);
        if (ones.isEmpty() || others.isEmpty()) {
            return ones.isEmpty() && others.isEmpty();
        }
        double digit = Math.max(Rows.lastDigit(one, Quantity.ENGINE_SPEED), Rows.lastDigit(other, Quantity.ENGINE_SPEED));
        for (int row = 0; row < ones.get().size(); row++) {
            if (Math.abs(ones.get().at(row) - others.get().at(row)) > 0.51 * digit) {
                return false;
            }
        }
        return true;
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
