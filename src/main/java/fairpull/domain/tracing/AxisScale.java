package fairpull.domain.tracing;

/** How values are laid out along an axis. */
public enum AxisScale {
    /** Equal steps for equal differences. */
    LINEAR,
    /** Equal steps for equal ratios. */
    LOGARITHMIC
}
