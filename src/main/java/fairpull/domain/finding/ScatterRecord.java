package fairpull.domain.finding;

/**
 * What is known beforehand of one scatter.
 *
 * @param standardDeviation in the unit of the values
 * @param degreesOfFreedom above 0; infinity where the figure is taken as known
 * @param guess whether nobody measured it: a starting guess stands for a record
 */
public record ScatterRecord(double standardDeviation, double degreesOfFreedom, boolean guess) {
    /** A figure that somebody measured, or answers for. */
    public ScatterRecord(double standardDeviation, double degreesOfFreedom) {
        this(standardDeviation, degreesOfFreedom, false);
    }

    public ScatterRecord {
        if (!(standardDeviation > 0) || Double.isInfinite(standardDeviation)) {
            throw new IllegalArgumentException("a scatter must be above 0, was " + standardDeviation);
        }
        if (!(degreesOfFreedom > 0)) {
            throw new IllegalArgumentException("a record has degrees of freedom above 0, had " + degreesOfFreedom);
        }
    }
}
