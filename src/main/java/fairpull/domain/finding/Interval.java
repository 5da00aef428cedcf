package fairpull.domain.finding;

/**
 * An interval for the change B − A.
 *
 * @param level its level, such as 0.95
 * @param low its lower end; negative infinity where it has none
 * @param high its upper end; positive infinity where it has none
 */
public record Interval(double level, double low, double high) {
    public Interval {
        if (!(low <= high)) {
            throw new IllegalArgumentException("an interval needs low ≤ high, was " + low + " … " + high);
        }
    }

    /** {@return whether the interval holds a value} */
    public boolean holds(double value) {
        return low <= value && value <= high;
    }
}
