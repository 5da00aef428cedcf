package fairpull.domain.finding;

import fairpull.domain.curve.SpeedRange;

/**
 * One number made of each pull's curve and judged by the same model as the curve.
 *
 * @param kind which number
 * @param speeds the speeds that it comes from: for a peak from the lowest to the highest at which a pull has it, else those compared
 * @param unit its unit, as it is printed
 * @param meanA mean of the install means of A
 * @param meanB mean of the install means of B
 * @param estimate B − A
 * @param interval its interval, at the level of the curve, for this number alone
 */
public record CurveFigure(Kind kind, SpeedRange speeds, String unit, double meanA, double meanB, Estimate estimate, Interval interval) {
    /** The numbers that are made of a curve. */
    public enum Kind {
        /** The largest value on the grid. */
        PEAK,
        /** The mean over the speeds that are compared. */
        MEAN,
        /** The area under the curve over the speeds that are compared. */
        AREA
    }
}
