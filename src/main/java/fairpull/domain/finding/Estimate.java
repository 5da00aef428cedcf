package fairpull.domain.finding;

/**
 * The estimated change B − A with everything that a t statement needs.
 *
 * @param change B − A, in the unit of the values
 * @param standardError its standard error
 * @param degreesOfFreedom infinity where both scatters are taken as known
 * @param t change over standard error
 * @param pValue of no change; one-sided towards a gain where the test is one-sided
 */
public record Estimate(double change, double standardError, double degreesOfFreedom, double t, double pValue) {
}
