package fairpull.engine.judging;

import fairpull.domain.finding.ClaimStanding;
import fairpull.domain.finding.ClaimStanding.Standing;
import fairpull.domain.finding.Finding;
import fairpull.domain.finding.Interval;
import fairpull.domain.finding.Verdict.Undecided;
import fairpull.domain.finding.Verdict.WhyUndecided;
import fairpull.domain.plan.Claim;
import fairpull.engine.judging.VerdictRule.GainInterval;

/** Holds a claim “at least x” against a finding. */
public final class ClaimCheck {
    private ClaimCheck() {
    }

    /**
     * How a claim stands: shown where the near end of the interval reaches it, contradicted where the far end stays short of it,
     * otherwise open. The ends are taken in the direction of a gain. Where the test on install means does not agree with the interval
     * the claim stays open; without an interval it is not judged.
     *
     * @param claim the sentence
     * @param atLeastInUnit the gain claimed, in the finding's unit
     * @param finding the finding for the claim's measure
     * @return the claim with its standing
     */
    public static ClaimStanding standing(Claim claim, double atLeastInUnit, Finding finding) {
        return new ClaimStanding(claim, finding.interval().map(interval -> against(interval, atLeastInUnit, finding))
                .orElse(Standing.NOT_JUDGED));
    }

    private static Standing against(Interval interval, double atLeast, Finding finding) {
        GainInterval ends = GainInterval.of(interval, finding.settings().better());
        if (finding.verdict().equals(new Undecided(WhyUndecided.INSTALL_MEANS_DISAGREE))) {
            return Standing.OPEN;
        }
        if (ends.near() >= atLeast) {
            return Standing.SHOWN;
        }
        return ends.far() < atLeast ? Standing.CONTRADICTED : Standing.OPEN;
    }
}
