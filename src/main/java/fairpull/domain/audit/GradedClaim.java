package fairpull.domain.audit;

import fairpull.domain.finding.Interval;

/**
 * A claim with its grade, the reason and the figures behind it.
 *
 * @param grade how it stands
 * @param reason why
 * @param claimed the gain claimed; 0 for any gain
 * @param published the published difference
 * @param ordinary its interval on a rig of ordinary scatter, run well where nothing was disclosed
 * @param worst its interval where all that was not disclosed is at its worst plausible value
 */
public record GradedClaim(Grade grade, Reason reason, double claimed, double published, Interval ordinary, Interval worst) {
    /** Why a claim stands as it does. */
    public enum Reason {
        /** The published figures do not come to what is claimed, even with all of their rounding. */
        FIGURES_FALL_SHORT,
        /** Even at the worst plausible scatter the gain lies below what is claimed. */
        BELOW_WHAT_IS_CLAIMED,
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
        /** It would stand, but nothing excludes what drifted with the clock: the state before was not run again. */
        NO_RETURN,
        /** It stands at the worst plausible value of everything. */
        STANDS_AT_THE_WORST
    }
}
