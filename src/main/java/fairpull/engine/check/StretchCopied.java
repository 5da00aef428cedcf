package fairpull.engine.check;

import fairpull.domain.finding.CheckOutcome;
import fairpull.domain.finding.Notice.Code;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import java.util.ArrayList;
import java.util.Arrays;
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

    /**
     * What is compared of a pull.
     *
     * @param values the compared channel, row by row
     * @param speeds engine speed beside it; empty where there is none
     * @param whole all rows of the channel
     * @param hashes one of each stretch, by the row that it begins at
     */
    record Compared(double[] values, double[] speeds, Samples whole, long[] hashes) {
        /** {@return whether a run of rows is less than both pulls as they are} */
        boolean isStretch(int run, Compared other) {
            return run < Math.min(values.length, other.values.length) || !whole.equals(other.whole);
        }

        boolean isSame(int first, Compared other, int otherFirst) {
            for (int k = 0; k < LENGTH; k++) {
                if (bits(values, first + k) != bits(other.values, otherFirst + k)
                        || bits(speeds, first + k) != bits(other.speeds, otherFirst + k)) {
                    return false;
                }
            }
            return true;
        }
    }

    private static long bits(double[] channel, int row) {
        return channel.length == 0 ? 0 : Double.doubleToLongBits(channel[row]);
    }

    /** Each row adds to a sum of powers of the multiplier, which loses its first row and gains one from stretch to stretch (Rabin–Karp). */
    private static long[] hashes(double[] values, double[] speeds) {
        long[] rows = new long[values.length];
        for (int row = 0; row < rows.length; row++) {
            long both = (bits(values, row) * MULTIPLIER ^ bits(speeds, row)) * MULTIPLIER;
            rows[row] = both ^ both >>> 32;
        }
        long leaving = 1;
        for (int k = 0; k < LENGTH; k++) {
            leaving *= MULTIPLIER;
        }
        long[] hashes = new long[rows.length - LENGTH + 1];
        long sum = 0;
        for (int row = 0; row < rows.length; row++) {
            sum = sum * MULTIPLIER + rows[row] - (row < LENGTH ? 0 : leaving * rows[row - LENGTH]);
            if (row >= LENGTH - 1) {
                hashes[row - LENGTH + 1] = sum ^ sum >>> 29;
            }
        }
        return hashes;
    }

    @Override
    public CheckOutcome of(List<Traced> pulls) {
        List<Optional<Compared>> compared = pulls.stream().map(Traced::stretches).toList();
        SeenTwice twice = twice(compared);
        FirstPlaces seen = new FirstPlaces();
        List<String> names = new ArrayList<>();
        int longest = 0;
        boolean any = false;
        for (int pull = 0; pull < pulls.size(); pull++) {
            any |= compared.get(pull).isPresent() && pull > 0;
            for (Map.Entry<Integer, Integer> from : place(pull, compared, twice, seen).entrySet()) {
                int run = from.getValue() + LENGTH - 1;
                if (compared.get(pull).orElseThrow().isStretch(run, compared.get(from.getKey()).orElseThrow())) {
                    longest = Math.max(longest, run);
                    names.add(pulls.get(pull).pull().pull() + " = " + pulls.get(from.getKey()).pull().pull());
                }
            }
        }
        return any ? CheckOutcome.naming(Code.STRETCH_COPIED, List.of((double) longest), names)
                : CheckOutcome.notApplicable(Code.STRETCH_COPIED);
    }

    private static SeenTwice twice(List<Optional<Compared>> compared) {
        SeenTwice twice = new SeenTwice(compared.stream().flatMap(Optional::stream).mapToLong(one -> one.hashes().length).sum());
        for (Optional<Compared> pull : compared) {
            if (pull.isPresent()) {
                for (long hash : pull.get().hashes()) {
                    twice.add(hash);
                }
            }
        }
        return twice;
    }

    /** {@return how many windows of a pull stand in each earlier one; its own are added} */
    private static Map<Integer, Integer> place(int pull, List<Optional<Compared>> compared, SeenTwice twice, FirstPlaces seen) {
        Map<Integer, Integer> copied = new HashMap<>();
        if (compared.get(pull).isPresent()) {
            Compared own = compared.get(pull).get();
            for (int first = 0; first < own.hashes().length; first++) {
                int here = first;
                long hash = own.hashes()[first];
                int before = twice.mayHold(hash) ? seen.firstOf(hash, pull, first,
                        (other, row) -> own.isSame(here, compared.get(other).orElseThrow(), row)) : pull;
                if (before != pull) {
                    copied.merge(before, 1, Integer::sum);
                }
            }
        }
        return copied;
    }

    /** {@return the compared channel beside its engine speed; empty where it is too coarse or too short} */
    static Optional<Compared> compared(Traced pull) {
        Optional<Quantity> quantity = pull.compared();
        if (quantity.isEmpty()) {
            return Optional.empty();
        }
        Samples whole = pull.find(quantity.get()).orElseThrow();
        Optional<Samples> speeds = pull.find(Quantity.ENGINE_SPEED);
        int[] sweep = speeds.isPresent() ? pull.ofSweep(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY) : new int[0];
        int[] compared = sweep.length > 0 ? sweep : IntStream.range(0, whole.size()).toArray();
        double[] values = Rows.values(whole, compared);
        double[] steps = new double[Math.max(0, values.length - 1)];
        for (int row = 0; row < steps.length; row++) {
            steps[row] = Math.abs(values[row + 1] - values[row]);
        }
        boolean fine = values.length >= LENGTH && Arrays.stream(values).allMatch(Double::isFinite)
                && Rows.median(steps) > DIGITS * pull.lastDigit(quantity.get());
        if (!fine) {
            return Optional.empty();
        }
        double[] beside = speeds.map(all -> Rows.values(all, compared)).orElse(new double[0]);
        return Optional.of(new Compared(values, beside, whole, hashes(values, beside)));
    }
}
