package fairpull.domain.finding;

/**
 * The change at one engine speed.
 *
 * @param speedRadPerS the speed
 * @param meanA mean of the install means of A
 * @param meanB mean of the install means of B
 * @param estimate B − A by the model, in the unit of the curve
 * @param own the interval for this speed alone: for a speed that was named before the day
 * @param band the interval that holds for all speeds of the curve at once: for a speed picked after looking
 */
public record CurvePoint(double speedRadPerS, double meanA, double meanB, Estimate estimate, Interval own, Interval band) {
}
