package fairpull.domain.plan;

/** The two states compared: A, the reference, and B, the changed one. */
public enum Part {
    A, B
}
