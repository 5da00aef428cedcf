package fairpull.domain.plan;

/** Whether a test looks for a change in either direction or only for a gain. */
public enum Sides {
    TWO, ONE
}
