package fairpull.engine.tracing;

import fairpull.domain.tracing.PixelPoint;
import java.util.List;

/**
 * The straight line of least squares, y = y̅ + s (x − x̅).
 *
 * @param meanX x̅
 * @param meanY y̅
 * @param slope s; 0 where all x are the same
 */
record StraightLine(double meanX, double meanY, double slope) {
    /** {@return the line through one or more points} */
    static StraightLine through(List<PixelPoint> points) {
        double meanX = points.stream().mapToDouble(PixelPoint::xPx).average().orElseThrow();
        double meanY = points.stream().mapToDouble(PixelPoint::yPx).average().orElseThrow();
        double across = 0;
        double both = 0;
        for (PixelPoint point : points) {
            across += (point.xPx() - meanX) * (point.xPx() - meanX);
            both += (point.xPx() - meanX) * (point.yPx() - meanY);
        }
        return new StraightLine(meanX, meanY, across == 0 ? 0 : both / across);
    }

    double at(double x) {
        return meanY + slope * (x - meanX);
    }
}
