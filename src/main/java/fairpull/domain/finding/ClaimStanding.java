package fairpull.domain.finding;

import fairpull.domain.plan.Claim;
import java.util.Objects;
import java.util.Optional;

/**
 * How a claim stands against the finding.
 *
 * @param claim the sentence
 * @param standing shown, open or contradicted
 * @param against what a claim at one engine speed was held against; empty for any other, and where that speed is not judged
 */
public record ClaimStanding(Claim claim, Standing standing, Optional<AtSpeed> against) {
    /**
     * The interval of one speed of the difference curve.
     *
     * @param speedRadPerS the speed of the grid, the nearest to the one claimed
     * @param interval that of the speed alone where it was named before the first data, otherwise the band that holds for all speeds
     * @param namedBefore whether the plan named the speed before the first data came in
     */
    public record AtSpeed(double speedRadPerS, Interval interval, boolean namedBefore) {
    }

    public ClaimStanding {
        Objects.requireNonNull(claim, "claim");
        Objects.requireNonNull(standing, "standing");
        Objects.requireNonNull(against, "against");
    }

    /** How a claim about a measure stands. */
    public ClaimStanding(Claim claim, Standing standing) {
        this(claim, standing, Optional.empty());
    }

    /** The three standings, and the case where there is no interval to hold a claim against. */
    public enum Standing {
        SHOWN, OPEN, CONTRADICTED, NOT_JUDGED
    }
}
