package fairpull.domain.audit;

import fairpull.domain.finding.Interval;
import java.util.Optional;

/**
 * A claim with its grade, the reason and the figures behind it.
 *
 * @param grade how it stands
 * @param reason why
 * @param claimed the gain claimed; 0 for any gain
 * @param published the published difference
 * @param ends between which the gain lies; empty where nothing is known of how such figures scatter
 */
public record GradedClaim(Grade grade, Reason reason, double claimed, double published, Optional<Ends> ends) {
    /**
     * Between which ends the gain lies.
     *
     * @param ordinary on a rig of ordinary scatter, run well where nothing was disclosed
     * @param worst where all that was not disclosed is at its worst plausible value, for either end
     */
    public record Ends(Interval ordinary, Interval worst) {
    }

    /** Why a claim stands as it does. */
    public enum Reason {
        /** The published figures do not come to what is claimed, even with all of their rounding. */
        FIGURES_FALL_SHORT,
        /** The publication contradicts itself about the figure. */
        FIGURES_DISAGREE,
        /** Even at the worst plausible scatter the gain lies below what is claimed. */
        BELOW_WHAT_IS_CLAIMED,
        /** Nothing is known of how much such a figure scatters without any change. */
        SCATTER_UNKNOWN,
        /** The rigs differ: two rigs are never compared. */
        RIGS_DIFFER,
        /** Something else was changed with the part. */
        OTHER_CHANGES,
        /** One correction before, another after. */
        STANDARDS_DIFFER,
        /** The pressure at the rig behind one correction, one reduced to sea level behind the other. */
        BAROMETERS_DIFFER,
        /** A rig of ordinary scatter gives as much without any change. */
        ORDINARY_SCATTER_EXPLAINS_IT,
        /** It would stand on a rig of ordinary scatter; what is not disclosed could undo it. */
        HANGS_ON_WHAT_IS_NOT_DISCLOSED,
        /** It stands at the worst plausible value of all that has one, but what has none was kept back. */
        WHAT_HAS_NO_SIZE_IS_NOT_DISCLOSED,
        /** It would stand, but nothing excludes what drifted with the clock: the state before was not run again. */
        NO_RETURN,
        /** It stands at the worst plausible value of everything. */
        STANDS_AT_THE_WORST
    }
}
