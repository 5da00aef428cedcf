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
 * @param meansAgree false where pulls are unequal, no record says how refits scatter, and the test on install means does not say the
 *     same of zero as the interval of this speed
 */
public record CurvePoint(double speedRadPerS, double meanA, double meanB, Estimate estimate, Interval own, Interval band,
        boolean meansAgree) {
    /** A point about which the test on install means has nothing else to say. */
    public CurvePoint(double speedRadPerS, double meanA, double meanB, Estimate estimate, Interval own, Interval band) {
        this(speedRadPerS, meanA, meanB, estimate, own, band, true);
    }
}
