package fairpull.domain.tracing;

import java.util.Objects;

/**
 * A place on an axis and the value that is printed there.
 *
 * @param at in the picture
 * @param value in the unit of the axis
 */
public record AxisPoint(PixelPoint at, double value) {
    public AxisPoint {
        Objects.requireNonNull(at, "at");
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("the value of an axis is finite, was " + value);
        }
    }
}
