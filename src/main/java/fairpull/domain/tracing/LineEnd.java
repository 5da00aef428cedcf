package fairpull.domain.tracing;

import java.util.Objects;

/**
 * Where following a line came to its end.
 *
 * @param at the last point that was read
 * @param reason why it went no further
 */
public record LineEnd(PixelPoint at, Reason reason) {
    /** Why. */
    public enum Reason {
        /** No more of the colour lies ahead within the gap that may be bridged. */
        NO_MORE_LINE,
        /** Another line covers it, and it does not come out where it led. */
        LOST_UNDER_ANOTHER,
        /** The picture ends. */
        EDGE_OF_PICTURE,
        /** Another line of the same colour meets this one: which is which cannot be told. */
        MEETS_SAME_COLOUR,
        /** Behind a gap lie several lines of the colour. */
        SEVERAL_AHEAD,
        /** The line grew much thicker or thinner: what lies ahead is no line. */
        NO_LINE_AHEAD
    }

    public LineEnd {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(reason, "reason");
    }

    /** {@return whether there is more of the colour, so that a person has to say where the line goes on} */
    public boolean isDoubtful() {
        return reason != Reason.NO_MORE_LINE && reason != Reason.EDGE_OF_PICTURE;
    }
}
