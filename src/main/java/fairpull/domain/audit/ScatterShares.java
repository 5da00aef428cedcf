package fairpull.domain.audit;

/**
 * Scatter as shares of the level of a figure, one standard deviation each, and how well each is known.
 *
 * @param pull of pulls within one install, above 0
 * @param refit that strapping down anew adds
 * @param day that another day adds, corrections included
 * @param freedom degrees of freedom behind each
 */
public record ScatterShares(double pull, double refit, double day, Freedom freedom) {
    /** The low end of what rigs show: good practice throughout. Common practice, no source. */
    public static final ScatterShares LEAST = new ScatterShares(0.002, 0.003, 0.003);
    /** What a rig without a record is taken to show: the starting guess of a rig record. Common practice, no source. */
    public static final ScatterShares ORDINARY = new ScatterShares(0.007, 0.010, 0.010);
    /** The high end of what rigs show that are still in order. Common practice, no source. */
    public static final ScatterShares MOST = new ScatterShares(0.016, 0.020, 0.020);

    /**
     * Degrees of freedom behind each layer, above 0; infinite where it is taken as known.
     *
     * @param pull behind the scatter of pulls
     * @param refit behind that of refits
     * @param day behind that of days
     */
    public record Freedom(double pull, double refit, double day) {
        /** All layers are taken as known. */
        public static final Freedom KNOWN = new Freedom(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);

        public Freedom {
            if (!(pull > 0 && refit > 0 && day > 0)) {
                throw new IllegalArgumentException("degrees of freedom must be above 0, were " + pull + ", " + refit + ", " + day);
            }
        }
    }

    public ScatterShares {
        if (!(pull > 0 && refit >= 0 && day >= 0) || !Double.isFinite(pull + refit + day)) {
            throw new IllegalArgumentException("scatter must be finite and above 0, was " + pull + ", " + refit + ", " + day);
        }
    }

    /** Scatter that is taken as known. */
    public ScatterShares(double pull, double refit, double day) {
        this(pull, refit, day, Freedom.KNOWN);
    }
}
