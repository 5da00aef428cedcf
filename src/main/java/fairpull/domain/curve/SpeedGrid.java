package fairpull.domain.curve;

/**
 * Equally spaced engine speeds: the one grid on which the pulls of a test are compared.
 *
 * @param firstRadPerS the lowest speed, above 0
 * @param stepRadPerS from one speed to the next, above 0
 * @param size how many speeds, 2 or more
 */
public record SpeedGrid(double firstRadPerS, double stepRadPerS, int size) {
    /** More speeds than any curve needs; a grid from a stranger's file must not fill the memory. */
    public static final int MOST = 2000;

    public SpeedGrid {
        if (!(firstRadPerS > 0 && stepRadPerS > 0) || Double.isInfinite(firstRadPerS) || Double.isInfinite(stepRadPerS)) {
            throw new IllegalArgumentException("a grid needs speeds above 0, was " + firstRadPerS + " by " + stepRadPerS + " rad/s");
        }
        if (size < 2 || size > MOST) {
            throw new IllegalArgumentException("a grid has 2 … " + MOST + " speeds, was " + size);
        }
    }

    /** {@return the speed at a place, counted from 0} */
    public double at(int place) {
        return firstRadPerS + place * stepRadPerS;
    }

    /** {@return the place whose speed lies nearest} */
    public int nearest(double radPerS) {
        return (int) Math.max(0, Math.min(size - 1L, Math.round((radPerS - firstRadPerS) / stepRadPerS)));
    }

    /** {@return the highest speed} */
    public double lastRadPerS() {
        return at(size - 1);
    }
}
