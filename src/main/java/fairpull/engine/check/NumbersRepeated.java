package fairpull.engine.check;

import fairpull.domain.finding.CheckOutcome;
import fairpull.domain.finding.Notice.Code;
import java.util.List;

/** Two pulls hold the same numbers, whatever their bytes: other line ends, other headers, fewer decimals. */
public final class NumbersRepeated implements PullCheck {
    @Override
    public CheckOutcome of(List<Traced> pulls) {
        return Likeness.pairs(pulls, Likeness::isEqual)
                .map(pairs -> CheckOutcome.naming(Code.NUMBERS_REPEATED, List.of((double) pairs.size()), pairs))
                .orElse(CheckOutcome.notApplicable(Code.NUMBERS_REPEATED));
    }
}
