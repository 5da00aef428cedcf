package fairpull.domain.tracing;

import fairpull.domain.plan.Part;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The curves that were traced from a picture, with everything that tells how.
 *
 * @param picture which one
 * @param axes its axes, with the places that were clicked
 * @param curves one a part, each part once at most
 */
public record Trace(PictureFile picture, Axes axes, List<TracedCurve> curves) {
    public Trace {
        Objects.requireNonNull(picture, "picture");
        Objects.requireNonNull(axes, "axes");
        curves = List.copyOf(curves);
        if (curves.isEmpty() || curves.stream().map(TracedCurve::part).distinct().count() < curves.size()) {
            throw new IllegalArgumentException("a trace has a curve, and one a part at most");
        }
    }

    /** {@return the curve of a part, where it was traced} */
    public Optional<TracedCurve> curve(Part part) {
        return curves.stream().filter(curve -> curve.part() == part).findFirst();
    }
}
