package fairpull.domain.tracing;

import java.util.Objects;

/**
 * A point of a curve in the units of the chart.
 *
 * @param x in the unit of the x axis
 * @param xError standard reading error of x, in the same unit
 * @param y in the unit of the y axis
 * @param yError standard reading error of y, in the same unit
 * @param at where it lies in the picture
 * @param source how it was found
 */
public record TracedPoint(double x, double xError, double y, double yError, PixelPoint at, PointSource source) {
    public TracedPoint {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(source, "source");
        if (!Double.isFinite(x) || !Double.isFinite(y)) {
            throw new IllegalArgumentException("a point of a curve is finite, was " + x + ", " + y);
        }
        if (!(xError >= 0 && yError >= 0) || Double.isInfinite(xError) || Double.isInfinite(yError)) {
            throw new IllegalArgumentException("a reading error is 0 or more, was " + xError + ", " + yError);
        }
    }
}
