package fairpull.report.chart;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;

/**
 * Leaves out of a line the points that nobody would miss, so that a report with many pulls stays small: the line that is left passes
 * every point that was left out within {@link #TOLERANCE} (the Ramer–Douglas–Peucker method).
 */
final class Thinning {
    /** In units of a drawing 800 wide: less than the eye can tell apart, and less than half a printed line. */
    static final double TOLERANCE = 0.2;

    private record Stretch(int first, int last) {
    }

    private Thinning() {
    }

    /** {@return the points that are needed, in order; both ends are always among them} */
    static List<Point> of(List<Point> points) {
        if (points.size() < 3) {
            return points;
        }
        BitSet kept = new BitSet(points.size());
        kept.set(0);
        kept.set(points.size() - 1);
        Deque<Stretch> open = new ArrayDeque<>(List.of(new Stretch(0, points.size() - 1)));
        while (!open.isEmpty()) {
            Stretch stretch = open.pop();
            int farthest = farthest(points, stretch);
            if (farthest > 0) {
                kept.set(farthest);
                open.push(new Stretch(stretch.first(), farthest));
                open.push(new Stretch(farthest, stretch.last()));
            }
        }
        List<Point> needed = new ArrayList<>(kept.cardinality());
        kept.stream().forEach(place -> needed.add(points.get(place)));
        return needed;
    }

    /** The place farthest from the chord of a stretch, if it is farther than tolerated; else 0. */
    private static int farthest(List<Point> points, Stretch stretch) {
        Point from = points.get(stretch.first());
        Point to = points.get(stretch.last());
        double length = Math.hypot(to.x() - from.x(), to.y() - from.y());
        double most = TOLERANCE;
        int farthest = 0;
        for (int place = stretch.first() + 1; place < stretch.last(); place++) {
            Point at = points.get(place);
            double area = Math.abs((to.x() - from.x()) * (from.y() - at.y()) - (from.x() - at.x()) * (to.y() - from.y()));
            double distance = length > 0 ? area / length : Math.hypot(at.x() - from.x(), at.y() - from.y());
            if (distance > most) {
                most = distance;
                farthest = place;
            }
        }
        return farthest;
    }
}
