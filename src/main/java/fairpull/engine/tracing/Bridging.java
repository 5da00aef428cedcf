package fairpull.engine.tracing;

import fairpull.domain.tracing.LineGap;
import fairpull.domain.tracing.LinePoint;
import fairpull.domain.tracing.PixelPoint;
import fairpull.domain.tracing.PointSource;
import java.util.ArrayList;
import java.util.List;

/**
 * The line where it cannot be seen: the cubic that leaves both sides of a gap with the slope that the line has there (Hermite
 * interpolation; each slope that of the straight line of least squares through the nearest {@value #SIDE} points).
 */
final class Bridging {
    private static final int SIDE = 10;

    private Bridging() {
    }

    /** {@return points in the columns of a gap; none where the line is not known on both of its sides} */
    static List<LinePoint> across(LineGap gap, List<PixelPoint> seen) {
        List<PixelPoint> left = seen.stream().filter(point -> point.xPx() < gap.fromPx()).toList();
        List<PixelPoint> right = seen.stream().filter(point -> point.xPx() > gap.toPx()).toList();
        if (left.isEmpty() || right.isEmpty()) {
            return List.of();
        }
        PixelPoint from = left.get(left.size() - 1);
        PixelPoint to = right.get(0);
        double span = to.xPx() - from.xPx();
        double leaving = span * StraightLine.through(left.subList(Math.max(0, left.size() - SIDE), left.size())).slope();
        double arriving = span * StraightLine.through(right.subList(0, Math.min(SIDE, right.size()))).slope();
        List<LinePoint> points = new ArrayList<>();
        for (double x = from.xPx() + 1; x < to.xPx() - 0.5; x++) {
            double t = (x - from.xPx()) / span;
            double y = from.yPx() * (1 + 2 * t) * (1 - t) * (1 - t) + leaving * t * (1 - t) * (1 - t) + to.yPx() * t * t * (3 - 2 * t)
                    + arriving * t * t * (t - 1);
            double slope = 6 * t * (1 - t) * (to.yPx() - from.yPx()) + leaving * (1 - t) * (1 - 3 * t) + arriving * t * (3 * t - 2);
            points.add(new LinePoint(new PixelPoint(x, y), slope / span, PointSource.BRIDGED));
        }
        return points;
    }
}
