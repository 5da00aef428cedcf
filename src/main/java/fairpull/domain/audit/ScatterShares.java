package fairpull.domain.audit;

/**
 * Scatter as shares of the level of a figure, one standard deviation each.
 *
 * @param pull of pulls within one install, above 0
 * @param refit that strapping down anew adds
 * @param day that another day adds, corrections included
 */
public record ScatterShares(double pull, double refit, double day) {
    /** The low end of what rigs show: good practice throughout. Common practice, no source. */
    public static final ScatterShares LEAST = new ScatterShares(0.002, 0.003, 0.003);
    /** What a rig without a record is taken to show: the starting guess of a rig record. Common practice, no source. */
    public static final ScatterShares ORDINARY = new ScatterShares(0.007, 0.010, 0.010);
    /** The high end of what rigs show that are still in order. Common practice, no source. */
    public static final ScatterShares MOST = new ScatterShares(0.016, 0.020, 0.020);

    public ScatterShares {
        if (!(pull > 0 && refit >= 0 && day >= 0) || !Double.isFinite(pull + refit + day)) {
            throw new IllegalArgumentException("scatter must be finite and above 0, was " + pull + ", " + refit + ", " + day);
        }
    }
}
