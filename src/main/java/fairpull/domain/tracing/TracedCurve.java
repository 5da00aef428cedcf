package fairpull.domain.tracing;

import fairpull.domain.plan.Part;
import java.util.List;
import java.util.Objects;

/**
 * A curve that was traced.
 *
 * @param part whose curve it is
 * @param colour of its line, as {@code #rrggbb}
 * @param widthPx across its line
 * @param points in the order of their x in the picture, from left to right
 * @param gaps that were bridged; the points in them say so
 */
public record TracedCurve(Part part, String colour, double widthPx, List<TracedPoint> points, List<LineGap> gaps) {
    public TracedCurve {
        Objects.requireNonNull(part, "part");
        if (!colour.matches("#[0-9a-f]{6}")) {
            throw new IllegalArgumentException("a colour is written as #rrggbb, was “" + colour + "”");
        }
        if (!(widthPx >= 0) || Double.isInfinite(widthPx)) {
            throw new IllegalArgumentException("a line has a width of 0 or more, was " + widthPx);
        }
        points = List.copyOf(points);
        gaps = List.copyOf(gaps);
        if (points.isEmpty() || points.size() > TracedLine.MOST_POINTS) {
            throw new IllegalArgumentException("a traced curve has 1 … " + TracedLine.MOST_POINTS + " points, was " + points.size());
        }
    }
}
