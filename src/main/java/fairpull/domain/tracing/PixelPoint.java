package fairpull.domain.tracing;

/**
 * A place in a picture.
 *
 * @param xPx pixels from its left edge
 * @param yPx pixels from its upper edge
 */
public record PixelPoint(double xPx, double yPx) {
    public PixelPoint {
        if (!Double.isFinite(xPx) || !Double.isFinite(yPx)) {
            throw new IllegalArgumentException("a place in a picture is finite, was " + xPx + ", " + yPx);
        }
    }

    /** {@return how many pixels another place lies away} */
    public double distance(PixelPoint other) {
        return Math.hypot(xPx - other.xPx, yPx - other.yPx);
    }

    /** {@return the place so many pixels to the right and down} */
    public PixelPoint moved(double rightPx, double downPx) {
        return new PixelPoint(xPx + rightPx, yPx + downPx);
    }

    /** {@return the column of pixels in which it lies} */
    public int column() {
        return (int) Math.floor(xPx);
    }

    /** {@return the row of pixels in which it lies} */
    public int row() {
        return (int) Math.floor(yPx);
    }
}
