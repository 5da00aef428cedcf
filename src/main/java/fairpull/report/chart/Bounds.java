package fairpull.report.chart;

/**
 * A rectangle.
 *
 * @param x its left edge
 * @param y its upper edge
 * @param width to the right
 * @param height downwards
 */
public record Bounds(double x, double y, double width, double height) {
    /** {@return its right edge} */
    public double right() {
        return x + width;
    }

    /** {@return its lower edge} */
    public double bottom() {
        return y + height;
    }

    /** {@return the x of its middle} */
    public double middle() {
        return x + width / 2;
    }

    /** {@return whether the two share some area} */
    public boolean overlaps(Bounds other) {
        return x < other.right() && other.x < right() && y < other.bottom() && other.y < bottom();
    }
}
