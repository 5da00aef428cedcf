package fairpull.engine.check;

import fairpull.domain.finding.Notice.Code;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A run of exactly equal values at the top of a pull: three rows or more within a tenth of the largest value, where neighbouring rows
 * elsewhere differ by more than five units of the last digit; two rows where they differ by more than ten thousand. What is written so
 * finely does not repeat by chance: a limit of the instrument, or values filled in. Common practice, no source.
 */
public final class Plateau extends EachPull {
    private static final int SHORTEST = 3;
    private static final double NEAR_TOP = 0.9;
    private static final double DIGITS = 5;
    private static final double MANY_DIGITS = 10_000;
    private static final List<Quantity> WATCHED = List.of(Quantity.POWER, Quantity.TORQUE, Quantity.FORCE);

    public Plateau() {
        super(Code.PLATEAU);
    }

    @Override
    Optional<Reading> read(Traced pull) {
        return WATCHED.stream().filter(quantity -> pull.find(quantity).isPresent())
                .map(quantity -> read(pull, quantity)).flatMap(Optional::stream)
                .reduce((one, other) -> one.weight() >= other.weight() ? one : other);
    }

    private static Optional<Reading> read(Traced pull, Quantity quantity) {
        double[] values = pull.find(quantity).map(Samples::stream).orElseThrow().filter(Double::isFinite).toArray();
        double digit = pull.lastDigit(quantity);
        double top = NEAR_TOP * Arrays.stream(values).max().orElse(0);
        double[] steps = new double[Math.max(0, values.length - 1)];
        int moving = 0;
        int run = 1;
        int longest = values.length == 0 ? 0 : 1;
        double value = Double.NaN;
        for (int row = 1; row < values.length; row++) {
            boolean same = values[row] == values[row - 1];
            run = same ? run + 1 : 1;
            if (!same) {
                steps[moving++] = Math.abs(values[row] - values[row - 1]);
            }
            if (run > longest && values[row] >= top) {
                longest = run;
                value = values[row];
            }
        }
        double step = Rows.median(Arrays.copyOf(steps, moving)) / digit;
        if (moving < SHORTEST || step <= DIGITS) {
            return Optional.empty();
        }
        return Optional.of(Reading.of(longest >= (step > MANY_DIGITS ? 2 : SHORTEST), longest, (double) longest,
                Double.isNaN(value) ? value : pull.unit(quantity).fromSi(value)));
    }
}
