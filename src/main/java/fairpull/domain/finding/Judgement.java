package fairpull.domain.finding;

import fairpull.domain.plan.Measure;
import fairpull.domain.plan.Plan;
import fairpull.domain.pull.Seal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The finding of a whole test, ready to be reported.
 *
 * @param plan the plan in force
 * @param seal its seal, if there is one
 * @param deciding the finding for the deciding measure, in that measure's unit
 * @param withExcluded the finding with every excluded pull put back; empty where none is excluded
 * @param secondary the findings for the further measures
 * @param claims how each claim stands
 * @param pulls every pull, planned or come in, in the order of the plan
 * @param amendments in the order of the log
 * @param notices what a reader must know about the test as a whole
 * @param look at which planned look it is judged; empty where no looks are planned
 * @param curve the difference curve of the deciding measure over engine speed; empty where its pulls hold no curves that can be judged
 */
public record Judgement(Plan plan, Optional<Seal> seal, Finding deciding, Optional<Finding> withExcluded, List<Secondary> secondary,
        List<ClaimStanding> claims, List<PullSeen> pulls, List<AmendmentSeen> amendments, List<Notice> notices,
        Optional<LookTaken> look, Optional<CurveFinding> curve) {
    /**
     * A further measure.
     *
     * @param measure which one
     * @param finding its finding, in the measure's unit
     * @param holmP its p-value adjusted for all further measures; empty where it cannot be judged
     */
    public record Secondary(Measure measure, Finding finding, OptionalDouble holmP) {
    }

    public Judgement {
        secondary = List.copyOf(secondary);
        claims = List.copyOf(claims);
        pulls = List.copyOf(pulls);
        amendments = List.copyOf(amendments);
        notices = List.copyOf(notices);
    }

    /** A judgement of a test without planned looks and without curves. */
    public Judgement(Plan plan, Optional<Seal> seal, Finding deciding, Optional<Finding> withExcluded, List<Secondary> secondary,
            List<ClaimStanding> claims, List<PullSeen> pulls, List<AmendmentSeen> amendments, List<Notice> notices) {
        this(plan, seal, deciding, withExcluded, secondary, claims, pulls, amendments, notices, Optional.empty(), Optional.empty());
    }
}
