package fairpull.engine.check;

import fairpull.domain.finding.CheckOutcome;
import fairpull.domain.pull.PullTrace;
import java.util.List;

/** One check of pulls. */
public interface PullCheck {
    /** {@return what came of it; pulls stand in the order of the plan} */
    CheckOutcome of(List<Traced> pulls);

    /** {@return what came of it for pulls that nothing is known of yet} */
    default CheckOutcome check(List<PullTrace> pulls) {
        return of(pulls.stream().map(Traced::new).toList());
    }
}
