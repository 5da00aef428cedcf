package fairpull.domain.tracing;

import java.util.List;
import java.util.Objects;

/**
 * What following a line gave.
 *
 * @param colour of the line, {@code 0xRRGGBB}
 * @param widthPx across the line
 * @param points from left to right, one a column of pixels that could be read
 * @param gaps from left to right
 * @param left why it goes no further to the left
 * @param right why it goes no further to the right
 */
public record FollowedLine(int colour, double widthPx, List<LinePoint> points, List<LineGap> gaps, LineEnd left, LineEnd right) {
    public FollowedLine {
        points = List.copyOf(points);
        gaps = List.copyOf(gaps);
        Objects.requireNonNull(left, "left");
        Objects.requireNonNull(right, "right");
        if (points.isEmpty()) {
            throw new IllegalArgumentException("a followed line has points");
        }
    }

    /** {@return the same line with fewer points} */
    public FollowedLine with(List<LinePoint> fewer) {
        return new FollowedLine(colour, widthPx, fewer, gaps, left, right);
    }
}
