package fairpull.domain.tracing;

import fairpull.domain.plan.Part;
import java.util.Objects;
import java.util.Optional;

/**
 * A picture of a chart as it is being traced: everything that a person set, in pixels.
 *
 * @param file which picture
 * @param x the axis that runs across
 * @param y the axis that runs up
 * @param a the curve of part A
 * @param b the curve of part B
 */
public record Tracing(PictureFile file, AxisDraft x, AxisDraft y, TracedLine a, TracedLine b) {
    public Tracing {
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(x, "x");
        Objects.requireNonNull(y, "y");
        Objects.requireNonNull(a, "a");
        Objects.requireNonNull(b, "b");
    }

    /** {@return a picture of which nothing is traced yet} */
    public static Tracing of(PictureFile file) {
        return new Tracing(file, AxisDraft.NONE, AxisDraft.NONE, TracedLine.NONE, TracedLine.NONE);
    }

    /** {@return the curve of a part} */
    public TracedLine line(Part part) {
        return part == Part.A ? a : b;
    }

    /** {@return the same with another curve of a part} */
    public Tracing with(Part part, TracedLine line) {
        return part == Part.A ? new Tracing(file, x, y, line, b) : new Tracing(file, x, y, a, line);
    }

    /** {@return the same with another axis across} */
    public Tracing withX(AxisDraft axis) {
        return new Tracing(file, axis, y, a, b);
    }

    /** {@return the same with another axis upwards} */
    public Tracing withY(AxisDraft axis) {
        return new Tracing(file, x, axis, a, b);
    }

    /**
     * Both axes, once all of them is known.
     *
     * @throws IllegalArgumentException if what is known cannot be an axis, in words for people
     */
    public Optional<Axes> axes() {
        return x.axis().flatMap(across -> y.axis().map(up -> new Axes(across, up)));
    }
}
