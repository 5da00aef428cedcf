package fairpull.domain.finding;

import fairpull.domain.plan.Claim;

/**
 * How a claim stands against the finding.
 *
 * @param claim the sentence
 * @param standing shown, open or contradicted
 */
public record ClaimStanding(Claim claim, Standing standing) {
    /** The three standings, and the case where there is no interval to hold a claim against. */
    public enum Standing {
        SHOWN, OPEN, CONTRADICTED, NOT_JUDGED
    }
}
