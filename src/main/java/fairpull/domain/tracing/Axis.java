package fairpull.domain.tracing;

import fairpull.domain.unit.Unit;
import java.util.Objects;

/**
 * An axis of a chart, known by two of its points.
 *
 * @param first one point
 * @param second another one, with another value
 * @param scale what lies between them
 * @param unit of the values
 */
public record Axis(AxisPoint first, AxisPoint second, AxisScale scale, Unit unit) {
    /** Points that lie closer together say nothing about what is far from them. */
    public static final double LEAST_APART_PX = 10;

    public Axis {
        Objects.requireNonNull(scale, "scale");
        Objects.requireNonNull(unit, "unit");
        if (first.value() == second.value()) {
            throw new IllegalArgumentException("the two points of an axis have the same value; type two different ones");
        }
        if (scale == AxisScale.LOGARITHMIC && !(first.value() > 0 && second.value() > 0)) {
            throw new IllegalArgumentException("a logarithmic axis has values above 0 only");
        }
        if (first.at().distance(second.at()) < LEAST_APART_PX) {
            throw new IllegalArgumentException("the two points of an axis lie closer than " + (int) LEAST_APART_PX
                    + " pixels together; choose two far apart");
        }
    }
}
