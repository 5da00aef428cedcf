package fairpull.domain.finding;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the air at a pull makes of its deciding measure.
 *
 * @param factor the factor of the plan's standard in that air
 * @param multiplier what the value was multiplied by; empty where it is used as it came in
 * @param carried how old its oldest carried reading is; empty where every reading was noted at the pull itself
 */
public record PullCorrection(double factor, OptionalDouble multiplier, Optional<Carried> carried) {
    /**
     * A reading that was noted at an earlier pull of the session.
     *
     * @param minutes from the pull where it was noted
     * @param byPlannedClock whether these minutes are those of the plan, as the start of a pull is not known
     */
    public record Carried(double minutes, boolean byPlannedClock) {
    }

    public PullCorrection {
        Objects.requireNonNull(multiplier, "multiplier");
        Objects.requireNonNull(carried, "carried");
    }
}
