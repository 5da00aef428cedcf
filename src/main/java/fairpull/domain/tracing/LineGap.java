package fairpull.domain.tracing;

import java.util.Objects;

/**
 * A stretch of a line that could not be seen and was bridged; the points in it say so.
 *
 * @param fromPx its left end, pixels from the left edge of the picture
 * @param toPx its right end
 * @param reason why
 */
public record LineGap(double fromPx, double toPx, Reason reason) {
    /** Why there is nothing to read. */
    public enum Reason {
        /** Something of another colour lies over the line. */
        COVERED,
        /** The line is interrupted, as dashed lines are. */
        INTERRUPTED,
        /** A stroke of the same colour runs straight across. */
        STROKE
    }

    public LineGap {
        Objects.requireNonNull(reason, "reason");
        if (!(toPx >= fromPx)) {
            throw new IllegalArgumentException("a gap runs from left to right, was " + fromPx + " to " + toPx);
        }
    }
}
