package fairpull.domain.tracing;

/** How a point of a curve came about. */
public enum PointSource {
    /** Found by following the line. */
    FOLLOWED,
    /** Not seen: in a gap of a followed line, on the smooth curve that joins both of its sides. */
    BRIDGED,
    /** Clicked, and moved to the middle of the line there. */
    SNAPPED,
    /** Clicked or moved by hand, and taken as it is. */
    PLACED
}
