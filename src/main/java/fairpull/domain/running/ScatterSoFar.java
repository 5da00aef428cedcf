package fairpull.domain.running;

/**
 * How far pulls of one install lie apart so far.
 *
 * @param standardDeviation pooled within installs, in the unit of the values
 * @param degreesOfFreedom behind it
 */
public record ScatterSoFar(double standardDeviation, int degreesOfFreedom) {
}
