package fairpull.engine.stats;

import org.apache.commons.numbers.gamma.Erfc;
import org.apache.commons.numbers.gamma.InverseErfc;

/** The standard normal distribution, both tails without cancellation. */
public final class Normal {
    private static final double SQRT_HALF = Math.sqrt(0.5);

    private Normal() {
    }

    /** {@return P(Z ≤ z)} */
    public static double cdf(double z) {
        return 0.5 * Erfc.value(-z * SQRT_HALF);
    }

    /** {@return P(Z > z)} */
    public static double upperTail(double z) {
        return cdf(-z);
    }

    /**
     * The value that is exceeded with a given probability.
     *
     * @param probability in (0, 1)
     * @return z with P(Z > z) = {@code probability}
     */
    public static double upperQuantile(double probability) {
        return InverseErfc.value(2 * probability) / SQRT_HALF;
    }
}
