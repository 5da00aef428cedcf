package fairpull.engine.audit;

import fairpull.domain.audit.Assumed;
import fairpull.domain.audit.Grade;
import fairpull.domain.audit.GradedClaim;
import fairpull.domain.audit.GradedClaim.Reason;
import fairpull.domain.audit.Procedure;
import fairpull.domain.audit.Sameness;
import fairpull.domain.audit.ScatterRange;
import fairpull.domain.finding.Interval;

/**
 * Grades the claim “at least x”, x = 0 standing for any gain, against a published pair.
 *
 * <ol>
 * <li>contradicted: the printed difference falls short of x by more than its rounding, or the whole interval at the worst lies below x.
 * <li>not shown: the rigs differ, something else was changed, or standards or barometers differ; or the interval on a rig of ordinary
 * scatter, with all that is not disclosed done well, reaches down to x.
 * <li>plausible: that interval lies above x, but the one at the worst plausible values does not, or the state before
 * was not run again after the change.
 * <li>shown: the interval at the high end of the plausible scatter, with all that is not disclosed at its worst, lies above x.
 * </ol>
 *
 * <p>An unchanged car is meant to be graded “shown” in less than 5 % of publications, as long as its rig scatters within the plausible
 * range (GradingTest, simulated: single pulls, best of several, picked speeds).
 */
public final class Grading {
    private Grading() {
    }

    /**
     * Grades a claim.
     *
     * @param pair the published pair
     * @param claimed the gain claimed, 0 for any gain, in the unit of the pair
     * @param procedure what was disclosed
     * @param pickedCritical critical value of the largest of those picked from, in case the figure was
     * @param scatter that it is held against
     * @return the grade with its reason
     */
    public static GradedClaim grade(Pair pair, double claimed, Procedure procedure, double pickedCritical, ScatterRange scatter) {
        Interval ordinary = interval(pair, Assumptions.ordinary(procedure, scatter.ordinary(), pickedCritical));
        Interval worst = interval(pair, Assumptions.worst(procedure, scatter.most(), pickedCritical));
        Reason reason = reason(pair, claimed, procedure, ordinary, worst);
        return new GradedClaim(gradeOf(reason), reason, claimed, pair.difference(), ordinary, worst);
    }

    /** {@return the grade of a claim where nothing is known of the scatter} */
    public static GradedClaim grade(Pair pair, double claimed, Procedure procedure, double pickedCritical) {
        return grade(pair, claimed, procedure, pickedCritical, ScatterRange.ASSUMED);
    }

    /**
     * A published pair.
     *
     * @param difference after − before, turned so that a gain is positive
     * @param level of the figure before
     * @param halfDigit half a unit of the last printed digit
     */
    public record Pair(double difference, double level, double halfDigit) {
    }

    private static Interval interval(Pair pair, Assumed assumed) {
        return new PublishedDifference(pair.difference(), pair.level(), pair.halfDigit(), assumed).interval();
    }

    private static Reason reason(Pair pair, double claimed, Procedure procedure, Interval ordinary, Interval worst) {
        if (pair.difference() + 2 * pair.halfDigit() < claimed) {
            return Reason.FIGURES_FALL_SHORT;
        }
        if (worst.high() < claimed) {
            return Reason.BELOW_WHAT_IS_CLAIMED;
        }
        if (procedure.rig().filter(Sameness.DIFFERENT::equals).isPresent()) {
            return Reason.RIGS_DIFFER;
        }
        if (procedure.allElse().filter(Sameness.DIFFERENT::equals).isPresent()) {
            return Reason.OTHER_CHANGES;
        }
        if (procedure.corrections().differs()) {
            return Reason.STANDARDS_DIFFER;
        }
        if (procedure.barometers().differs()) {
            return Reason.BAROMETERS_DIFFER;
        }
        if (ordinary.low() <= claimed) {
            return Reason.ORDINARY_SCATTER_EXPLAINS_IT;
        }
        boolean open = procedure.rig().isEmpty() || procedure.allElse().isEmpty();
        if (worst.low() <= claimed || open || procedure.returned().isEmpty()) {
            return Reason.HANGS_ON_WHAT_IS_NOT_DISCLOSED;
        }
        return procedure.returned().get() ? Reason.STANDS_AT_THE_WORST : Reason.NO_RETURN;
    }

    static Grade gradeOf(Reason reason) {
        return switch (reason) {
            case FIGURES_FALL_SHORT, BELOW_WHAT_IS_CLAIMED -> Grade.CONTRADICTED;
            case RIGS_DIFFER, OTHER_CHANGES, STANDARDS_DIFFER, BAROMETERS_DIFFER, ORDINARY_SCATTER_EXPLAINS_IT -> Grade.NOT_SHOWN;
            case HANGS_ON_WHAT_IS_NOT_DISCLOSED, NO_RETURN -> Grade.PLAUSIBLE;
            case STANDS_AT_THE_WORST -> Grade.SHOWN;
        };
    }
}
