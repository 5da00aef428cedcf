package fairpull.domain.rig;

/** The layers of scatter on a rig, each within the next. */
public enum Layer {
    /** Pulls within one install. */
    PULL,
    /** What a new strap-down and refit adds within one session. */
    REFIT,
    /** What another session adds. */
    DAY
}
