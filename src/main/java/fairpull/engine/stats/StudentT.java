package fairpull.engine.stats;

import org.apache.commons.numbers.gamma.LogBeta;
import org.apache.commons.numbers.gamma.RegularizedBeta;

/**
 * Student's t for any degrees of freedom above 0; infinity is the normal distribution. Tails are computed as tails, so that they keep
 * their digits however small they are; a mixed model can ask for fewer than 0.01 degrees of freedom, where quantiles pass 1e100.
 *
 * <p>Checked against: published tables and R's pt and qt (StudentTTest).
 */
public final class StudentT {
    /** Below this argument the incomplete beta function is its leading term to the last digit. */
    private static final double LEADING_TERM_BELOW = 1e-30;

    private static final double LARGEST_LOGARITHM = Math.log(Double.MAX_VALUE);

    private StudentT() {
    }

    /**
     * P(T ≤ t).
     *
     * @param t any number
     * @param degreesOfFreedom above 0
     * @return the lower tail
     */
    public static double cdf(double t, double degreesOfFreedom) {
        return upperTail(-t, degreesOfFreedom);
    }

    /**
     * P(T > t) = ½·I(ν/(ν+t²); ν/2, ½) for t ≥ 0, I the regularised incomplete beta function.
     *
     * @param t any number
     * @param degreesOfFreedom above 0
     * @return the upper tail
     * @throws IllegalArgumentException if the degrees of freedom are not above 0
     */
    public static double upperTail(double t, double degreesOfFreedom) {
        requirePositive(degreesOfFreedom);
        if (Double.isInfinite(degreesOfFreedom)) {
            return Normal.upperTail(t);
        }
        return t >= 0 ? 0.5 * outside(t, degreesOfFreedom) : 1 - 0.5 * outside(-t, degreesOfFreedom);
    }

    /**
     * P(|T| > |t|).
     *
     * @param t any number
     * @param degreesOfFreedom above 0
     * @return both tails together
     */
    public static double bothTails(double t, double degreesOfFreedom) {
        requirePositive(degreesOfFreedom);
        return Double.isInfinite(degreesOfFreedom) ? 2 * Normal.upperTail(Math.abs(t)) : outside(Math.abs(t), degreesOfFreedom);
    }

    /**
     * The value that is exceeded with a given probability: t(1 − probability; ν).
     *
     * @param probability in (0, 1)
     * @param degreesOfFreedom above 0
     * @return t with P(T > t) = {@code probability}; infinity where it passes what a double holds
     * @throws IllegalArgumentException if an argument is out of its range
     */
    public static double upperQuantile(double probability, double degreesOfFreedom) {
        requirePositive(degreesOfFreedom);
        if (!(probability > 0 && probability < 1)) {
            throw new IllegalArgumentException("a probability must lie between 0 and 1, was " + probability);
        }
        if (Double.isInfinite(degreesOfFreedom)) {
            return Normal.upperQuantile(probability);
        }
        if (probability > 0.5) {
            return -positiveQuantile(1 - probability, degreesOfFreedom);
        }
        return probability == 0.5 ? 0 : positiveQuantile(probability, degreesOfFreedom);
    }

    private static double outside(double t, double nu) {
        if (Double.isInfinite(t)) {
            return 0;
        }
        double ratio = t / Math.sqrt(nu);
        double logX = ratio > 1e8 ? Math.log(nu) - 2 * Math.log(t) : -Math.log1p(ratio * ratio);
        if (logX < Math.log(LEADING_TERM_BELOW)) {
            return Math.exp(0.5 * nu * logX - Math.log(0.5 * nu) - LogBeta.value(0.5 * nu, 0.5));
        }
        double square = ratio * ratio;
        return square < 1
                ? RegularizedBeta.complement(square / (1 + square), 0.5, 0.5 * nu)
                : RegularizedBeta.value(1 / (1 + square), 0.5 * nu, 0.5);
    }

    /** For a tail below one half: in t near the middle, in the logarithms of t and of the tail further out, where both are smooth. */
    private static double positiveQuantile(double tail, double nu) {
        double target = 2 * tail;
        if (outside(1, nu) <= target) {
            return Roots.between(t -> outside(t, nu) - target, 0, 1);
        }
        if (outside(Double.MAX_VALUE, nu) > target) {
            return Double.POSITIVE_INFINITY;
        }
        double logTarget = Math.log(target);
        double high = 1;
        while (high < LARGEST_LOGARITHM && outside(Math.exp(high), nu) > target) {
            high = Math.min(2 * high, LARGEST_LOGARITHM);
        }
        // the tail may vanish at the upper end; a large negative number stands for its logarithm
        return Math.exp(Roots.between(u -> Math.max(-1e6, Math.log(outside(Math.exp(u), nu))) - logTarget, 0, high));
    }

    private static void requirePositive(double degreesOfFreedom) {
        if (!(degreesOfFreedom > 0)) {
            throw new IllegalArgumentException("degrees of freedom must be above 0, were " + degreesOfFreedom);
        }
    }
}
