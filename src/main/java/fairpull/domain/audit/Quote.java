package fairpull.domain.audit;

/**
 * What a printed figure is of the pulls behind it.
 *
 * @param kind mean, best or single
 * @param pulls how many were run, 1 or more; 1 for a single one
 */
public record Quote(Kind kind, int pulls) {
    /** What is quoted. */
    public enum Kind {
        MEAN, BEST, SINGLE
    }

    public Quote {
        if (pulls < 1 || pulls > 1000) {
            throw new IllegalArgumentException("a figure comes from 1 to 1000 pulls, was " + pulls);
        }
        if (kind == Kind.SINGLE && pulls != 1) {
            throw new IllegalArgumentException("a single pull is one pull, was " + pulls + "; say best or mean of them");
        }
    }

    /** {@return a single pull} */
    public static Quote single() {
        return new Quote(Kind.SINGLE, 1);
    }

    /** {@return whether the figure was picked as the largest of several} */
    public boolean isPicked() {
        return kind == Kind.BEST && pulls > 1;
    }
}
