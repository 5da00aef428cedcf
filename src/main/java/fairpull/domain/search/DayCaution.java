package fairpull.domain.search;

/** What a day that a search found cannot guard against. */
public enum DayCaution {
    /** Neither part comes back after the other one: whatever moved with the clock goes into the change. */
    NO_RETURN_TO_A,
    /** B cannot come off again and is strapped down once: nothing in the data shows what that strap-down added. */
    SINGLE_B_ONE_WAY,
    /** Install means cannot tell the change from the drift that is modelled: only pulls within installs do. */
    DRIFT_TOLD_BY_PULLS_ALONE,
    /** A drift in a straight line passes in part for a change. */
    LINEAR_DRIFT_LEFT,
    /** A drift that bends passes in part for a change, even where its straight part is removed. */
    CURVATURE_LEFT
}
