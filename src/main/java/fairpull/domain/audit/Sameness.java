package fairpull.domain.audit;

/** Whether something was the same for both figures. */
public enum Sameness {
    SAME, DIFFERENT
}
