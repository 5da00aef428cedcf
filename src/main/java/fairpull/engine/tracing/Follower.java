package fairpull.engine.tracing;

import fairpull.domain.tracing.FollowedLine;
import fairpull.domain.tracing.LineGap;
import fairpull.domain.tracing.LinePoint;
import fairpull.domain.tracing.Picture;
import fairpull.domain.tracing.PixelPoint;
import fairpull.domain.tracing.PointSource;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Follows a coloured line in the picture of a chart to both sides of a click.
 *
 * <p>In every column the middle of the line is the centroid of the shares of its colour ({@link Ink}). The line goes on in the run of
 * pixels that touches the one before. It is bridged along its direction, the straight line of least squares through the last columns,
 * where it is interrupted for up to a stated number of columns, where another colour covers it for up to five times as many, and across a
 * stroke of its own colour behind which it goes on. Where a second line of its colour meets it, or several lie ahead, it ends there: which
 * is which is for a person to say.
 */
public final class Follower {
    /** Bridged by default, in pixels: the gaps of a dashed line. */
    public static final int USUAL_GAP_PX = 16;
    /** A longer gap is no gap. */
    public static final int LONGEST_GAP_PX = 200;
    private static final int SLOPE_COLUMNS = 3;

    private Follower() {
    }

    /**
     * Follows the line at a click.
     *
     * @param picture of the chart
     * @param click on the line, or within 4 pixels of it
     * @param longestGapPx bridged where the line is interrupted, 0 … {@value #LONGEST_GAP_PX}
     * @return the line; empty where there is nothing but ground at the click
     * @throws IllegalArgumentException if the gap is out of its range
     */
    public static Optional<FollowedLine> follow(Picture picture, PixelPoint click, int longestGapPx) {
        if (longestGapPx < 0 || longestGapPx > LONGEST_GAP_PX) {
            throw new IllegalArgumentException("gaps of 0 … " + LONGEST_GAP_PX + " pixels can be bridged, was " + longestGapPx);
        }
        return LineStart.at(picture, click).map(start -> follow(start, longestGapPx));
    }

    private static FollowedLine follow(LineStart start, int longestGapPx) {
        Walk left = new Walk(start, -1, longestGapPx).done();
        Walk right = new Walk(start, 1, longestGapPx).done();
        List<PixelPoint> places = Stream.concat(Stream.concat(left.reads().stream().map(Walk.Read::at), right.reads().stream()
                .map(Walk.Read::at)), Stream.of(new PixelPoint(start.column() + 0.5, start.run().centre())))
                .sorted(Comparator.comparingDouble(PixelPoint::xPx)).toList();
        List<LineGap> gaps = Stream.concat(left.gaps().stream(), right.gaps().stream())
                .sorted(Comparator.comparingDouble(LineGap::fromPx)).toList();
        Stream<LinePoint> bridged = gaps.stream().flatMap(gap -> Bridging.across(gap, places).stream());
        List<LinePoint> points = Stream.concat(sloped(places).stream(), bridged)
                .sorted(Comparator.comparingDouble(point -> point.at().xPx())).toList();
        return new FollowedLine(start.ink().line(), start.widthPx(), points, gaps, left.end(), right.end());
    }

    private static List<LinePoint> sloped(List<PixelPoint> places) {
        List<LinePoint> points = new ArrayList<>();
        for (int place = 0; place < places.size(); place++) {
            PixelPoint at = places.get(place);
            List<PixelPoint> near = places.subList(Math.max(0, place - SLOPE_COLUMNS), Math.min(places.size(), place + SLOPE_COLUMNS + 1));
            points.add(new LinePoint(at, StraightLine.through(near).slope(), PointSource.FOLLOWED));
        }
        return points;
    }
}
