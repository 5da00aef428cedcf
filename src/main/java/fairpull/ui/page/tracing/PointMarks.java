package fairpull.ui.page.tracing;

import fairpull.domain.plan.Part;
import fairpull.domain.tracing.LinePoint;
import fairpull.domain.tracing.PixelPoint;
import fairpull.domain.tracing.PointSource;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.ToDoubleFunction;

/**
 * The points of a curve over its picture, hollow, so that the line shows through: rings for A, squares for B, crosses where a gap was
 * bridged. All of them near the pointer; of the curve at hand some along the way, of the other one both ends.
 */
final class PointMarks {
    private static final double RADIUS = 3;
    private static final double RADIUS_CHOSEN = 5.5;
    /** How near the pointer is near, and how far apart points are shown elsewhere. */
    private static final double NEAR = 45;
    private static final double APART = 48;
    /** How far from the pointer something changes when it moves. */
    static final int REACH = 52;

    private final ToDoubleFunction<PixelPoint> across;
    private final ToDoubleFunction<PixelPoint> down;
    private final Optional<Point> pointer;

    /** Marks at the places that a view shows points at. */
    PointMarks(ToDoubleFunction<PixelPoint> across, ToDoubleFunction<PixelPoint> down, Optional<Point> pointer) {
        this.across = across;
        this.down = down;
        this.pointer = pointer;
    }

    void paint(Graphics2D g, List<LinePoint> points, Part part, OptionalInt chosen, boolean isAtHand) {
        double lastX = Double.NEGATIVE_INFINITY;
        double lastY = 0;
        for (int place = 0; place < points.size(); place++) {
            double x = across.applyAsDouble(points.get(place).at());
            double y = down.applyAsDouble(points.get(place).at());
            boolean isEnd = place == 0 || place == points.size() - 1;
            boolean isDue = isEnd || isAtHand && Math.hypot(x - lastX, y - lastY) >= APART;
            if (isDue) {
                lastX = x;
                lastY = y;
            }
            if (chosen.isPresent() && chosen.getAsInt() == place) {
                mark(g, shape(part, points.get(place), x, y, RADIUS_CHOSEN), 2.2f);
            } else if (isDue || pointer.filter(at -> at.distance(x, y) < NEAR).isPresent()) {
                mark(g, shape(part, points.get(place), x, y, RADIUS), 1);
            }
        }
    }

    private static Shape shape(Part part, LinePoint point, double x, double y, double radius) {
        if (point.source() == PointSource.BRIDGED) {
            Path2D cross = new Path2D.Double(new Line2D.Double(x - radius, y - radius, x + radius, y + radius));
            cross.append(new Line2D.Double(x - radius, y + radius, x + radius, y - radius), false);
            return cross;
        }
        return part == Part.A ? new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius)
                : new Rectangle2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
    }

    /** Dark on a light rim, which shows on any picture. */
    private static void mark(Graphics2D g, Shape shape, float width) {
        g.setColor(new Color(255, 255, 255, 190));
        g.setStroke(new BasicStroke(width + 1.2f));
        g.draw(shape);
        g.setColor(Color.BLACK);
        g.setStroke(new BasicStroke(width));
        g.draw(shape);
    }
}
