package fairpull.engine.check;

import fairpull.domain.finding.CheckOutcome;
import fairpull.domain.finding.Notice.Code;
import fairpull.domain.pull.PullTrace;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * A stretch of one pull stands in another to the last digit: eight rows in a run with the same power (or torque, force) and engine speed,
 * at whatever place, neighbouring rows within it differing by more than five units of the last digit in the middle (coarser stretches
 * agree by chance; common practice, no source). Pulls that are equal as a whole are another check's.
 */
public final class StretchCopied implements PullCheck {
    private static final int LENGTH = 8;
    private static final double DIGITS = 5;

    /** Where a stretch was seen first. */
    private record Place(int pull, int row) {
    }

    @Override
    public CheckOutcome check(List<PullTrace> pulls) {
        Map<List<Double>, Place> seen = new HashMap<>();
        List<String> names = new ArrayList<>();
        int longest = 0;
        boolean any = false;
        for (int pull = 0; pull < pulls.size(); pull++) {
            Optional<double[][]> rows = rows(pulls.get(pull));
            any |= rows.isPresent() && pull > 0;
            Map<Integer, Integer> copied = rows.isPresent() ? place(pull, rows.get(), seen) : Map.of();
            for (Map.Entry<Integer, Integer> from : copied.entrySet()) {
                int run = from.getValue() + LENGTH - 1;
                if (run < Math.min(rows.get()[0].length, pulls.get(from.getKey()).channels().rows())) {
                    longest = Math.max(longest, run);
                    names.add(pulls.get(pull).pull() + " = " + pulls.get(from.getKey()).pull());
                }
            }
        }
        return any ? CheckOutcome.naming(Code.STRETCH_COPIED, List.of((double) longest), names)
                : CheckOutcome.notApplicable(Code.STRETCH_COPIED);
    }

    /** {@return how many windows of a pull stand in each earlier one; its own are added} */
    private static Map<Integer, Integer> place(int pull, double[][] rows, Map<List<Double>, Place> seen) {
        Map<Integer, Integer> copied = new HashMap<>();
        Set<Integer> done = new TreeSet<>();
        for (int first = 0; first + LENGTH <= rows[0].length; first++) {
            List<Double> window = new ArrayList<>();
            for (double[] channel : rows) {
                for (int row = first; row < first + LENGTH; row++) {
                    window.add(channel[row]);
                }
            }
            Place before = seen.putIfAbsent(window, new Place(pull, first));
            if (before != null && before.pull() != pull && done.add(first)) {
                copied.merge(before.pull(), 1, Integer::sum);
            }
        }
        return copied;
    }

    /** {@return the compared channel, engine speed below it; empty where it is too coarse or too short} */
    private static Optional<double[][]> rows(PullTrace pull) {
        Optional<Quantity> quantity = Rows.compared(pull);
        if (quantity.isEmpty()) {
            return Optional.empty();
        }
        double[] values = pull.channels().find(quantity.get()).map(Samples::stream).orElseThrow().toArray();
        double[] steps = new double[Math.max(0, values.length - 1)];
        for (int row = 0; row < steps.length; row++) {
            steps[row] = Math.abs(values[row + 1] - values[row]);
        }
        boolean fine = values.length >= LENGTH && Arrays.stream(values).allMatch(Double::isFinite)
                && Rows.median(steps) > DIGITS * Rows.lastDigit(pull, quantity.get());
        double[] speeds = pull.channels().find(Quantity.ENGINE_SPEED).map(samples -> samples.stream().toArray())
                .orElse(new double[values.length]);
        return fine ? Optional.of(new double[][] {values, speeds}) : Optional.empty();
    }
}
