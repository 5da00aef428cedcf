package fairpull.engine.judging;

import fairpull.domain.finding.ClaimStanding;
import fairpull.domain.finding.ClaimStanding.AtSpeed;
import fairpull.domain.finding.ClaimStanding.Standing;
import fairpull.domain.finding.CurveFinding;
import fairpull.domain.finding.CurvePoint;
import fairpull.domain.finding.Finding;
import fairpull.domain.finding.Interval;
import fairpull.domain.finding.Verdict.Undecided;
import fairpull.domain.finding.Verdict.WhyUndecided;
import fairpull.domain.plan.Better;
import fairpull.domain.plan.Claim;
import fairpull.engine.judging.VerdictRule.GainInterval;
import java.util.Comparator;
import java.util.Optional;

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

    /**
     * How a claim at one engine speed stands: against the interval of that speed where the plan named it before the first data, otherwise
     * against the band, which allows for any speed having been picked. It stays open where unequal pulls leave the interval in doubt.
     *
     * @param claim the sentence, with its speed
     * @param atLeastInUnit the gain claimed, in the unit of the curve
     * @param curve the difference curve, where there is one
     * @param better which direction is a gain
     * @param namedBefore whether the speed was named before the first data
     * @return the claim with its standing; not judged where no judged speed of the curve lies within half a step of the one claimed
     * @throws IllegalArgumentException if the claim names no speed
     */
    public static ClaimStanding atSpeed(Claim claim, double atLeastInUnit, Optional<CurveFinding> curve, Better better,
            boolean namedBefore) {
        double speed = claim.speedRadPerS().orElseThrow(() -> new IllegalArgumentException("the claim names no engine speed"));
        return curve.flatMap(found -> nearest(found, speed)).map(point -> {
            Interval interval = namedBefore ? point.own() : point.band();
            Standing standing = point.meansAgree() ? against(interval, atLeastInUnit, better) : Standing.OPEN;
            return new ClaimStanding(claim, standing, Optional.of(new AtSpeed(point.speedRadPerS(), interval, namedBefore)));
        }).orElseGet(() -> new ClaimStanding(claim, Standing.NOT_JUDGED));
    }

    /** Half a step away at most; rounding must not lose a speed at the very middle. */
    private static Optional<CurvePoint> nearest(CurveFinding curve, double speed) {
        double reach = curve.curves().grid().stepRadPerS() * (0.5 + 1e-9);
        return curve.points().stream().filter(point -> Math.abs(point.speedRadPerS() - speed) <= reach)
                .min(Comparator.comparingDouble(point -> Math.abs(point.speedRadPerS() - speed)));
    }

    private static Standing against(Interval interval, double atLeast, Finding finding) {
        if (finding.verdict().equals(new Undecided(WhyUndecided.INSTALL_MEANS_DISAGREE))) {
            return Standing.OPEN;
        }
        return against(interval, atLeast, finding.settings().better());
    }

    private static Standing against(Interval interval, double atLeast, Better better) {
        GainInterval ends = GainInterval.of(interval, better);
        if (ends.near() >= atLeast) {
            return Standing.SHOWN;
        }
        return ends.far() < atLeast ? Standing.CONTRADICTED : Standing.OPEN;
    }
}
