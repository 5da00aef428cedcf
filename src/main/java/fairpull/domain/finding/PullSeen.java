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
 * @param reason why it is excluded or aborted; empty otherwise
 * @param startedAt when it started, where that is known
 * @param minutes minutes within its session as the judge used them; NaN where unknown
 * @param values value of each measure in the measure's own unit, by name
 * @param conditionsSi conditions read beside it
 * @param correction what the air at it makes of the deciding measure; empty where nothing is corrected or the air is not known
 */
public record PullSeen(PullId pull, Fate fate, String reason, Optional<OffsetDateTime> startedAt, double minutes,
        Map<String, Double> values, Map<Condition, Double> conditionsSi, Optional<PullCorrection> correction) {
    public PullSeen {
        values = Map.copyOf(values);
        conditionsSi = Map.copyOf(conditionsSi);
    }

    /** A pull with nothing to say of a correction. */
    public PullSeen(PullId pull, Fate fate, String reason, Optional<OffsetDateTime> startedAt, double minutes,
            Map<String, Double> values, Map<Condition, Double> conditionsSi) {
        this(pull, fate, reason, startedAt, minutes, values, conditionsSi, Optional.empty());
    }

    /** {@return the same pull at some minutes of its session} */
    public PullSeen at(double otherMinutes) {
        return new PullSeen(pull, fate, reason, startedAt, otherMinutes, values, conditionsSi, correction);
    }
}
