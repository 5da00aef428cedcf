package fairpull.engine.check;

import fairpull.domain.finding.CheckOutcome;
import fairpull.domain.finding.Notice.Code;
import fairpull.domain.pull.PullTrace;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A stretch of one pull stands in another to the last digit: eight rows in a run with the same power (or torque, force) and engine speed,
 * at whatever place, neighbouring rows within it differing by more than five units of the last digit in the middle (coarser stretches
 * agree by chance; common practice, no source). Of a pull with engine speed only the sweep is compared: before and after it rigs write what
 * stands alike in every pull. Pulls that are equal as a whole are another check's.
 */
public final class StretchCopied implements PullCheck {
    private static final int LENGTH = 8;
    private static final double DIGITS = 5;
    /** Spreads the bits of a hash: 2⁶⁴ divided by the golden ratio, made odd. */
    private static final long MULTIPLIER = 0x9E3779B97F4A7C15L;

    /** What is compared of a pull, row by row, and all rows of the same channel. */
    private record Compared(Samples values, Optional<Samples> speeds, Samples whole) {
        /** {@return whether a run of rows is less than both pulls as they are} */
        boolean isStretch(int run, Compared other) {
            return run < Math.min(values.size(), other.values.size()) || !whole.equals(other.whole);
        }

        private long bits(int row) {
            return Double.doubleToLongBits(values.at(row));
        }

        private long speedBits(int row) {
            return speeds.isPresent() ? Double.doubleToLongBits(speeds.get().at(row)) : 0;
        }

        /** {@return a hash of the stretch that begins at a row} */
        long hash(int first) {
            long hash = 0;
            for (int row = first; row < first + LENGTH; row++) {
                hash = (hash * MULTIPLIER + bits(row)) * MULTIPLIER + speedBits(row);
                hash ^= hash >>> 29;
            }
            return hash;
        }

        boolean isSame(int first, Compared other, int otherFirst) {
            for (int k = 0; k < LENGTH; k++) {
                if (bits(first + k) != other.bits(otherFirst + k) || speedBits(first + k) != other.speedBits(otherFirst + k)) {
                    return false;
                }
            }
            return true;
        }
    }

    @Override
    public CheckOutcome check(List<PullTrace> pulls) {
        FirstPlaces seen = new FirstPlaces();
        List<Optional<Compared>> compared = pulls.stream().map(StretchCopied::rows).toList();
        List<String> names = new ArrayList<>();
        int longest = 0;
        boolean any = false;
        for (int pull = 0; pull < pulls.size(); pull++) {
            any |= compared.get(pull).isPresent() && pull > 0;
            for (Map.Entry<Integer, Integer> from : place(pull, compared, seen).entrySet()) {
                int run = from.getValue() + LENGTH - 1;
                if (compared.get(pull).orElseThrow().isStretch(run, compared.get(from.getKey()).orElseThrow())) {
                    longest = Math.max(longest, run);
                    names.add(pulls.get(pull).pull() + " = " + pulls.get(from.getKey()).pull());
                }
            }
        }
        return any ? CheckOutcome.naming(Code.STRETCH_COPIED, List.of((double) longest), names)
                : CheckOutcome.notApplicable(Code.STRETCH_COPIED);
    }

    /** {@return how many windows of a pull stand in each earlier one; its own are added} */
    private static Map<Integer, Integer> place(int pull, List<Optional<Compared>> compared, FirstPlaces seen) {
        Map<Integer, Integer> copied = new HashMap<>();
        if (compared.get(pull).isPresent()) {
            Compared own = compared.get(pull).get();
            for (int first = 0; first + LENGTH <= own.values().size(); first++) {
                int here = first;
                int before = seen.firstOf(own.hash(first), pull, first,
                        (other, row) -> own.isSame(here, compared.get(other).orElseThrow(), row));
                if (before != pull) {
                    copied.merge(before, 1, Integer::sum);
                }
            }
        }
        return copied;
    }

    /** {@return the compared channel beside its engine speed; empty where it is too coarse or too short} */
    private static Optional<Compared> rows(PullTrace pull) {
        Optional<Quantity> quantity = Rows.compared(pull);
        if (quantity.isEmpty()) {
            return Optional.empty();
        }
        Samples whole = pull.channels().find(quantity.get()).orElseThrow();
        Optional<Samples> speeds = pull.channels().find(Quantity.ENGINE_SPEED);
        int[] sweep = speeds.isPresent() ? Rows.ofSweep(pull, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY) : new int[0];
        int[] compared = sweep.length > 0 ? sweep : IntStream.range(0, whole.size()).toArray();
        Samples values = Samples.of(Rows.values(whole, compared));
        double[] steps = new double[Math.max(0, values.size() - 1)];
        for (int row = 0; row < steps.length; row++) {
            steps[row] = Math.abs(values.at(row + 1) - values.at(row));
        }
        boolean fine = values.size() >= LENGTH && values.stream().allMatch(Double::isFinite)
                && Rows.median(steps) > DIGITS * Rows.lastDigit(pull, quantity.get());
        return fine ? Optional.of(new Compared(values, speeds.map(all -> Samples.of(Rows.values(all, compared))), whole))
                : Optional.empty();
    }
}
