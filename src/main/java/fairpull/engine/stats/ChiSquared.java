package fairpull.engine.stats;

import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/** The distribution of a sum of squared normal values. */
public final class ChiSquared {
    private ChiSquared() {
    }

    /**
     * The value below which a share of the distribution lies.
     *
     * @param share above 0 and below 1
     * @param degreesOfFreedom above 0, not necessarily whole
     * @return the quantile
     */
    public static double quantile(double share, double degreesOfFreedom) {
        return ChiSquaredDistribution.of(degreesOfFreedom).inverseCumulativeProbability(share);
    }

    /**
     * The factors by which the ends of the two-sided interval of a standard deviation lie from its estimate: √(ν/χ²), with the quantiles
     * of equal tails; exact for normal values and ν of a mean square, and near for Satterthwaite’s ν. With next to no degrees of freedom
     * both quantiles may lie on one side of ν; the interval then begins, or ends, at the estimate.
     *
     * @param level of the interval, above 0 and below 1
     * @param degreesOfFreedom above 0
     * @return lower and upper factor
     * @see "NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.8 (from memory)"
     */
    public static double[] scatterFactors(double level, double degreesOfFreedom) {
        double tail = (1 - level) / 2;
        return new double[] {Math.min(1, Math.sqrt(degreesOfFreedom / quantile(1 - tail, degreesOfFreedom))),
            Math.max(1, Math.sqrt(degreesOfFreedom / quantile(tail, degreesOfFreedom)))};
    }
}
