package fairpull.domain.proof;

/**
 * A share that was counted, with its Monte Carlo standard error √(p(1 − p)/n).
 *
 * @param count how many
 * @param of how many there were
 */
public record Share(long count, long of) {
    public Share {
        if (count < 0 || of < 1 || count > of) {
            throw new IllegalArgumentException("a share needs 0 ≤ count ≤ number, was " + count + " of " + of);
        }
    }

    static Share of(long count, long of) {
        return new Share(count, of);
    }

    /** {@return the share} */
    public double value() {
        return (double) count / of;
    }

    /** {@return its standard error} */
    public double standardError() {
        return Math.sqrt(value() * (1 - value()) / of);
    }
}
