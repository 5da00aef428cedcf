package fairpull.ui.strip;

/**
 * An install on its way along the strip.
 *
 * @param install its label
 * @param fromX where the mouse took it, in pixels
 * @param x where the mouse is
 */
record Drag(String install, int fromX, int x) {
    /** So many pixels a click may move. */
    static final int LEAST = 8;

    /** {@return whether it was moved, and not just clicked} */
    boolean isUnderWay() {
        return Math.abs(x - fromX) >= LEAST;
    }
}
