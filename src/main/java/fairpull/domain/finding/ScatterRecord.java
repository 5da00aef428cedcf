package fairpull.domain.finding;

/**
 * What is known beforehand of one scatter.
 *
 * @param standardDeviation in the unit of the values
 * @param degreesOfFreedom above 0; infinity where the figure is taken as known
 */
public record ScatterRecord(double standardDeviation, double degreesOfFreedom) {
    public ScatterRecord {
        if (!(standardDeviation > 0) || Double.isInfinite(standardDeviation)) {
            throw new IllegalArgumentException("a scatter must be above 0, was " + standardDeviation);
        }
        if (!(degreesOfFreedom > 0)) {
            throw new IllegalArgumentException("a record has degrees of freedom above 0, had " + degreesOfFreedom);
        }
    }
}
