package fairpull.domain.curve;

/**
 * A stretch of engine speed.
 *
 * @param lowRadPerS its lower end
 * @param highRadPerS its upper end, not below the lower one; equal where a single speed of the grid stands alone
 */
public record SpeedRange(double lowRadPerS, double highRadPerS) {
    public SpeedRange {
        if (!(lowRadPerS > 0 && highRadPerS >= lowRadPerS) || Double.isInfinite(highRadPerS)) {
            throw new IllegalArgumentException("a range of speed needs 0 < low ≤ high, was " + lowRadPerS + " … " + highRadPerS);
        }
    }
}
