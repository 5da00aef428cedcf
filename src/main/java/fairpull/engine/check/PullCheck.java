package fairpull.engine.check;

import fairpull.domain.finding.CheckOutcome;
import fairpull.domain.pull.PullTrace;
import java.util.List;

/** One check of pulls. */
public interface PullCheck {
    /** {@return what came of it; pulls stand in the order of the plan} */
    CheckOutcome check(List<PullTrace> pulls);
}
