package fairpull.domain.tracing;

import java.util.Objects;

/**
 * A point of a line in a picture.
 *
 * @param at the middle of the line
 * @param slope of the line there: pixels down for a pixel to the right
 * @param source how it was found
 */
public record LinePoint(PixelPoint at, double slope, PointSource source) {
    public LinePoint {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(source, "source");
        if (!Double.isFinite(slope)) {
            throw new IllegalArgumentException("the slope of a line is finite, was " + slope);
        }
    }
}
