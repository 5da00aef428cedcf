package fairpull.domain.tracing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * A curve as it is being traced, in pixels.
 *
 * @param colour of its line, {@code 0xRRGGBB}; empty until it was picked
 * @param widthPx across its line; 0 until it is known
 * @param points from left to right, never two at the same x
 * @param gaps that were bridged
 */
public record TracedLine(OptionalInt colour, double widthPx, List<LinePoint> points, List<LineGap> gaps) {
    /** Nothing yet. */
    public static final TracedLine NONE = new TracedLine(OptionalInt.empty(), 0, List.of(), List.of());
    /** More points than any picture has columns worth reading. */
    public static final int MOST_POINTS = 20_000;
    private static final double SAME_PX = 1e-6;

    public TracedLine {
        if (!(widthPx >= 0) || Double.isInfinite(widthPx)) {
            throw new IllegalArgumentException("a line has a width of 0 or more, was " + widthPx);
        }
        if (points.size() > MOST_POINTS) {
            throw new IllegalArgumentException("a curve has up to " + MOST_POINTS + " points, was " + points.size());
        }
        points = points.stream().sorted(Comparator.comparingDouble(point -> point.at().xPx())).toList();
        for (int place = 1; place < points.size(); place++) {
            if (points.get(place).at().xPx() - points.get(place - 1).at().xPx() < SAME_PX) {
                throw new IllegalArgumentException("a curve has one point at an x, has two at " + points.get(place).at().xPx());
            }
        }
        gaps = List.copyOf(gaps);
    }

    /** {@return this line with what was followed in place of what it had there} */
    public TracedLine with(FollowedLine followed) {
        double from = followed.points().get(0).at().xPx() - SAME_PX;
        double to = followed.points().get(followed.points().size() - 1).at().xPx() + SAME_PX;
        List<LinePoint> kept = points.stream().filter(point -> point.at().xPx() < from || point.at().xPx() > to).toList();
        List<LineGap> keptGaps = gaps.stream().filter(gap -> gap.toPx() < from || gap.fromPx() > to).toList();
        return new TracedLine(OptionalInt.of(followed.colour()), followed.widthPx(), joined(kept, followed.points()),
                joined(keptGaps, followed.gaps()));
    }

    /** {@return this line with a point; one that stands within half a pixel of its x gives way} */
    public TracedLine with(LinePoint point) {
        List<LinePoint> others = points.stream().filter(other -> Math.abs(other.at().xPx() - point.at().xPx()) >= 0.5).toList();
        return withPoints(joined(others, List.of(point)));
    }

    /** {@return this line without the points at these places, counted from 0} */
    public TracedLine without(List<Integer> places) {
        List<LinePoint> kept = new ArrayList<>();
        for (int place = 0; place < points.size(); place++) {
            if (!places.contains(place)) {
                kept.add(points.get(place));
            }
        }
        return withPoints(kept);
    }

    /** {@return the same line of another colour} */
    public TracedLine withColour(int picked) {
        return new TracedLine(OptionalInt.of(picked), widthPx, points, gaps);
    }

    private TracedLine withPoints(List<LinePoint> others) {
        return new TracedLine(colour, widthPx, others, others.isEmpty() ? List.of() : gaps);
    }

    private static <T> List<T> joined(List<T> some, List<T> more) {
        return Stream.concat(some.stream(), more.stream()).toList();
    }
}
