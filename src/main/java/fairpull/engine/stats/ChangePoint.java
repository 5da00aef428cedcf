package fairpull.engine.stats;

import java.util.SplittableRandom;

/**
 * Where a series parts best into two levels, and how often a steady series parts as well. The statistic is the largest share of the sum
 * of squares that two levels take up, max over k of k·(n − k)/n·(mean before − mean after)² / Σ(value − mean)²; p is its share among
 * series of independent normal values at least as large, by simulation: (1 + #)/(1 + N). It grows with the largest of the t tests over
 * all k, whose critical values Worsley tabled.
 *
 * @see "Worsley (1979), On the likelihood ratio test for a shift in location of normal populations, J. Am. Statist. Assoc. 74, 365–367"
 *
 * @param first the place of the first value after the change
 * @param pValue as above
 * @param before mean before it
 * @param after mean from it on
 */
public record ChangePoint(int first, double pValue, double before, double after) {
    private static final int DRAWS = 9_999;

    /**
     * The best change point of a series.
     *
     * @param values in the order of time, at least three, not all equal
     * @param seed of the simulation
     * @return place and p-value
     * @throws IllegalArgumentException if there are fewer than three values or all are equal
     */
    public static ChangePoint of(double[] values, long seed) {
        double[] centred = values.length < 3 ? new double[0] : centred(values);
        if (!(Sums.product(centred, centred) > 0)) {
            throw new IllegalArgumentException("a change needs at least three values that are not all equal");
        }
        double mean = Sums.mean(values);
        int first = place(centred);
        double sumAfter = 0;
        for (int k = first; k < values.length; k++) {
            sumAfter += centred[k];
        }
        double p = shareOfSteady(values.length, statistic(centred), seed);
        return new ChangePoint(first, p, mean - sumAfter / first, mean + sumAfter / (values.length - first));
    }

    private static double[] centred(double[] values) {
        double mean = Sums.mean(values);
        double[] centred = new double[values.length];
        for (int k = 0; k < values.length; k++) {
            centred[k] = values[k] - mean;
        }
        return centred;
    }

    private static int place(double[] centred) {
        int best = 1;
        double most = -1;
        double sum = 0;
        for (int k = 1; k < centred.length; k++) {
            sum += centred[k - 1];
            double between = sum * sum / k / (centred.length - k);
            if (between > most) {
                most = between;
                best = k;
            }
        }
        return best;
    }

    /** Share of the sum of squares that the best two levels take up. */
    private static double statistic(double[] centred) {
        double most = 0;
        double sum = 0;
        for (int k = 1; k < centred.length; k++) {
            sum += centred[k - 1];
            most = Math.max(most, sum * sum / k / (centred.length - k));
        }
        return most * centred.length / Sums.product(centred, centred);
    }

    private static double shareOfSteady(int length, double least, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] steady = new double[length];
        int atLeast = 0;
        for (int draw = 0; draw < DRAWS; draw++) {
            for (int k = 0; k < length; k++) {
                // nextDouble can be 0, which has no quantile; half a step up never is
                steady[k] = Normal.upperQuantile(random.nextDouble() + 0x1.0p-54);
            }
            atLeast += statistic(centred(steady)) >= least ? 1 : 0;
        }
        return (1.0 + atLeast) / (1 + DRAWS);
    }
}
