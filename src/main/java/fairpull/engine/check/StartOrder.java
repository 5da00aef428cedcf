package fairpull.engine.check;

import fairpull.domain.finding.CheckOutcome;
import fairpull.domain.finding.Notice.Code;
import fairpull.domain.finding.PullSeen;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Within an install every pull started after the one before it, as far as their starts are known. Installs are the judge's to compare. */
public final class StartOrder {
    private StartOrder() {
    }

    /** {@return what came of it, pulls standing in the order of the plan} */
    public static CheckOutcome check(List<PullSeen> pulls) {
        Map<String, OffsetDateTime> latest = new HashMap<>();
        List<String> early = new ArrayList<>();
        boolean any = false;
        for (PullSeen seen : pulls) {
            if (seen.startedAt().isPresent()) {
                OffsetDateTime start = seen.startedAt().get();
                OffsetDateTime before = latest.get(seen.pull().install());
                any |= before != null;
                if (before != null && !start.isAfter(before)) {
                    early.add(seen.pull().toString());
                }
                latest.merge(seen.pull().install(), start, (one, other) -> one.isAfter(other) ? one : other);
            }
        }
        return any ? CheckOutcome.naming(Code.STARTS_OUT_OF_ORDER, List.of((double) early.size()), early)
                : CheckOutcome.notApplicable(Code.STARTS_OUT_OF_ORDER);
    }
}
