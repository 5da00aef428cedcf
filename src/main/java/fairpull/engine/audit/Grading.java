package fairpull.engine.audit;

import fairpull.domain.audit.Assumed;
import fairpull.domain.audit.Grade;
import fairpull.domain.audit.GradedClaim;
import fairpull.domain.audit.GradedClaim.Ends;
import fairpull.domain.audit.GradedClaim.Reason;
import fairpull.domain.audit.Procedure;
import fairpull.domain.audit.Sameness;
import fairpull.domain.audit.ScatterRange;
import fairpull.domain.finding.Interval;
import java.util.Optional;

/**
 * Grades the claim “at least x”, x = 0 standing for any gain, against a published pair; x is as small as its rounding allows.
 *
 * <ol>
 * <li>contradicted: the whole interval at the worst lies below x.
 * <li>not shown: the publication contradicts itself about the figure; the rigs differ, something else was changed, or standards or the
 * barometers behind them differ; the printed figures differ by less than x, with all of their rounding; nothing is known of the scatter of
 * such figures; or the interval on a rig of ordinary scatter, with all that is not disclosed done well, reaches down to x.
 * <li>plausible: that interval lies above x, but the one at the worst plausible values does not, or it was not said that all else stayed
 * as it was and that the state before was run again, or it was not run again.
 * <li>shown: the interval at the high end of the plausible scatter, with all that is not disclosed at its worst, lies above x.
 * </ol>
 *
 * <p>An unchanged car is meant to be graded “shown” in less than 5 % of publications, as long as its rig scatters within the plausible
 * range (GradingSharesTest, simulated: single pulls, best of several, picked speeds, both together).
 */
public final class Grading {
    private final Pair pair;
    private final Procedure procedure;
    private final boolean doubted;
    private final boolean ofWhatUnsaid;

    private Grading(Pair pair, Procedure procedure, boolean doubted, boolean ofWhatUnsaid) {
        this.pair = pair;
        this.procedure = procedure;
        this.doubted = doubted;
        this.ofWhatUnsaid = ofWhatUnsaid;
    }

    /**
     * {@return the grading of a pair}
     *
     * @param pair the published pair
     * @param procedure what was disclosed
     * @param doubted whether the publication contradicts itself about the pair
     * @param ofWhatUnsaid whether values were published one by one, and what each of them is of was not said
     */
    static Grading of(Pair pair, Procedure procedure, boolean doubted, boolean ofWhatUnsaid) {
        return new Grading(pair, procedure, doubted, ofWhatUnsaid);
    }

    /**
     * {@return the grade of a claim where nothing is known of the scatter but what is plausible}
     *
     * @param pair the published pair
     * @param claimed the gain claimed, 0 for any gain, in the unit of the pair
     * @param procedure what was disclosed
     * @param pickedCritical critical value of the largest of those picked from, in case the figure was
     */
    public static GradedClaim grade(Pair pair, double claimed, Procedure procedure, double pickedCritical) {
        return grade(pair, claimed, procedure, pickedCritical, ScatterRange.ASSUMED);
    }

    static GradedClaim grade(Pair pair, double claimed, Procedure procedure, double pickedCritical, ScatterRange scatter) {
        Ends ends = ends(pair, procedure, pickedCritical, scatter);
        return of(pair, procedure, false, false).grade(new Claimed(claimed, 0), Optional.of(ends));
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

    /**
     * What is claimed of a pair.
     *
     * @param gain at least, 0 for any gain
     * @param halfDigit half a unit of its last printed digit
     */
    record Claimed(double gain, double halfDigit) {
        double least() {
            return gain - halfDigit;
        }
    }

    /** {@return between which ends the gain lies under a scatter} */
    static Ends ends(Pair pair, Procedure procedure, double pickedCritical, ScatterRange scatter) {
        PublishedDifference ordinary = of(pair, Assumptions.ordinary(procedure, scatter.ordinary(), pickedCritical));
        Interval near = of(pair, Assumptions.worst(procedure, scatter.most(), pickedCritical)).interval();
        Interval far = of(pair, Assumptions.farthest(procedure, scatter.most(), pickedCritical)).interval();
        return new Ends(ordinary.interval(), new Interval(near.level(), near.low(), far.high()));
    }

    private static PublishedDifference of(Pair pair, Assumed assumed) {
        return new PublishedDifference(pair.difference(), pair.level(), pair.halfDigit(), assumed);
    }

    /** {@return the grade of a claim; {@code ends} are empty where nothing is known of the scatter} */
    GradedClaim grade(Claimed claimed, Optional<Ends> ends) {
        Reason reason = barred().or(() -> ends.filter(known -> known.worst().high() < claimed.least())
                .map(known -> Reason.BELOW_WHAT_IS_CLAIMED)).or(() -> fallsShort(claimed))
                .orElseGet(() -> ends.map(known -> reason(claimed.least(), known)).orElse(Reason.SCATTER_UNKNOWN));
        return new GradedClaim(gradeOf(reason), reason, claimed.gain(), pair.difference(), ends);
    }

    /** What keeps figures from saying anything of the part, however far apart they are. */
    private Optional<Reason> barred() {
        Optional<Sameness> different = Optional.of(Sameness.DIFFERENT);
        return doubted ? Optional.of(Reason.FIGURES_DISAGREE)
                : procedure.keeping().rig().equals(different) ? Optional.of(Reason.RIGS_DIFFER)
                : procedure.keeping().allElse().equals(different) ? Optional.of(Reason.OTHER_CHANGES)
                : procedure.correcting().corrections().differs() ? Optional.of(Reason.STANDARDS_DIFFER)
                : procedure.correcting().barometersDiffer() ? Optional.of(Reason.BAROMETERS_DIFFER) : Optional.empty();
    }

    private Optional<Reason> fallsShort(Claimed claimed) {
        return pair.difference() + 2 * pair.halfDigit() < claimed.least() ? Optional.of(Reason.FIGURES_FALL_SHORT) : Optional.empty();
    }

    private Reason reason(double least, Ends ends) {
        if (ends.ordinary().low() <= least) {
            return Reason.ORDINARY_SCATTER_EXPLAINS_IT;
        }
        if (ends.worst().low() <= least) {
            return Reason.HANGS_ON_WHAT_IS_NOT_DISCLOSED;
        }
        if (ofWhatUnsaid || procedure.keeping().allElse().isEmpty() || procedure.returning().returned().isEmpty()) {
            return Reason.WHAT_HAS_NO_SIZE_IS_NOT_DISCLOSED;
        }
        return procedure.returning().returned().get() ? Reason.STANDS_AT_THE_WORST : Reason.NO_RETURN;
    }

    private static Grade gradeOf(Reason reason) {
        return switch (reason) {
            case BELOW_WHAT_IS_CLAIMED -> Grade.CONTRADICTED;
            case FIGURES_DISAGREE, RIGS_DIFFER, OTHER_CHANGES, STANDARDS_DIFFER, BAROMETERS_DIFFER, FIGURES_FALL_SHORT, SCATTER_UNKNOWN,
                    ORDINARY_SCATTER_EXPLAINS_IT -> Grade.NOT_SHOWN;
            case HANGS_ON_WHAT_IS_NOT_DISCLOSED, WHAT_HAS_NO_SIZE_IS_NOT_DISCLOSED, NO_RETURN -> Grade.PLAUSIBLE;
            case STANDS_AT_THE_WORST -> Grade.SHOWN;
        };
    }
}
