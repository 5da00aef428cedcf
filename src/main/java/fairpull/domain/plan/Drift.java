package fairpull.domain.plan;

/** How what changes with the clock is modelled, declared before the day. */
public enum Drift {
    NONE(0), LINEAR(1), QUADRATIC(2);

    private final int terms;

    Drift(int terms) {
        this.terms = terms;
    }

    /** {@return how many coefficients the drift takes} */
    public int terms() {
        return terms;
    }
}
