package fairpull.engine.check;

import fairpull.domain.finding.CheckOutcome;
import fairpull.domain.finding.Notice.Code;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * One pull is a multiple of another: value = c × value of the other in every row, within the rounding of both. Two pulls of a real engine
 * never share their noise. Only where the rounding is at most 0.1 % of the median value and neighbouring rows differ in at least eight
 * places, since coarse or flat curves are multiples by chance (common practice, no source).
 */
public final class PullIsMultiple implements PullCheck {
    private static final double COARSE = 0.001;
    private static final double SAME = 1e-6;

    @Override
    public CheckOutcome of(List<Traced> pulls) {
        List<Double> factors = new ArrayList<>();
        Optional<List<String>> pairs = Likeness.pairs(pulls, likeness -> {
            boolean multiple = isMultiple(likeness);
            if (multiple) {
                factors.add(likeness.factor());
            }
            return multiple;
        });
        double first = factors.isEmpty() ? Double.NaN : factors.get(0);
        return pairs.map(found -> CheckOutcome.naming(Code.PULL_IS_MULTIPLE, List.of(first), found))
                .orElse(CheckOutcome.notApplicable(Code.PULL_IS_MULTIPLE));
    }

    private static boolean isMultiple(Likeness likeness) {
        double factor = likeness.factor();
        double rounding = (Math.abs(factor) * likeness.oneDigit() + likeness.otherDigit()) / 2;
        double level = Rows.median(Arrays.stream(likeness.other()).map(Math::abs).toArray());
        return Math.abs(factor - 1) > SAME && rounding <= COARSE * level && !isFlat(likeness.one(), 10 * likeness.oneDigit())
                && !likeness.isEqual() && likeness.isWithin(factor, 1.05 * rounding);
    }

    private static boolean isFlat(double[] values, double least) {
        int moves = 0;
        for (int row = 1; row < values.length; row++) {
            moves += Math.abs(values[row] - values[row - 1]) > least ? 1 : 0;
        }
        return moves < Likeness.FEWEST;
    }
}
