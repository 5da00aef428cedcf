package fairpull.domain.tracing;

import java.util.Objects;

/**
 * Both axes of a chart.
 *
 * @param x the one that runs across
 * @param y the one that runs up
 */
public record Axes(Axis x, Axis y) {
    public Axes {
        Objects.requireNonNull(x, "x");
        Objects.requireNonNull(y, "y");
    }
}
