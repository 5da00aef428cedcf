package fairpull.domain.finding;

import fairpull.domain.plan.Condition;
import fairpull.domain.pull.PullId;
import java.time.OffsetDateTime;
import java.util.Map;
import java.util.Optional;

/**
 * One pull of a test as the finding shows it.
 *
 * @param pull which one
 * @param fate what became of it
 * @param reason why it is excluded or aborted, or that it was aborted before it was used; empty otherwise
 * @param startedAt when it started, where that is known
 * @param minutes minutes within its session as the judge used them; NaN where unknown
 * @param values value of each measure in the measure's own unit, by name
 * @param conditionsSi conditions read beside it
 */
public record PullSeen(PullId pull, Fate fate, String reason, Optional<OffsetDateTime> startedAt, double minutes,
        Map<String, Double> values, Map<Condition, Double> conditionsSi) {
    public PullSeen {
        values = Map.copyOf(values);
        conditionsSi = Map.copyOf(conditionsSi);
    }
}
