package fairpull.engine.stats;

import java.util.Arrays;

/**
 * Values in groups: means, and sums of squares between and within. Deviations are taken from a value of the data first, where
 * subtraction is exact, so that a large common offset costs no digits beyond those the data have lost already.
 *
 * <p>Checked against: NIST StRD, analysis of variance, all eleven sets (OneWayTest).
 */
public final class OneWay {
    private final int[] sizes;
    private final double[] means;
    private final double[] deviations;
    private final double betweenSumOfSquares;
    private final double withinSumOfSquares;

    private OneWay(int[] sizes, double[] means, double[] deviations, double between, double within) {
        this.sizes = sizes;
        this.means = means;
        this.deviations = deviations;
        this.betweenSumOfSquares = between;
        this.withinSumOfSquares = within;
    }

    /**
     * Splits values by group.
     *
     * @param group for each value the index of its group: 0 … number of groups − 1, each with at least one value
     * @param values one for each entry of {@code group}
     * @return the split
     */
    public static OneWay of(int[] group, double[] values) {
        int groups = Arrays.stream(group).max().orElseThrow(() -> new IllegalArgumentException("no values")) + 1;
        int[] sizes = new int[groups];
        for (int g : group) {
            sizes[g]++;
        }
        double origin = values[0];
        double[] shifted = new double[values.length];
        for (int k = 0; k < values.length; k++) {
            shifted[k] = values[k] - origin;
        }
        double[] means = new double[groups];
        double[] deviations = shifted.clone();
        // the second round takes out the rounding of the first
        for (int round = 0; round < 2; round++) {
            double[] rest = sumsByGroup(group, deviations, groups);
            for (int g = 0; g < groups; g++) {
                rest[g] /= sizes[g];
                means[g] += rest[g];
            }
            for (int k = 0; k < values.length; k++) {
                deviations[k] -= rest[group[k]];
            }
        }
        double grand = Sums.mean(shifted);
        double between = 0;
        for (int g = 0; g < groups; g++) {
            between += sizes[g] * (means[g] - grand) * (means[g] - grand);
        }
        Arrays.setAll(means, g -> origin + means[g]);
        return new OneWay(sizes, means, deviations, between, Sums.product(deviations, deviations));
    }

    private static double[] sumsByGroup(int[] group, double[] values, int groups) {
        double[] sums = new double[groups];
        for (int k = 0; k < values.length; k++) {
            sums[group[k]] += values[k];
        }
        return sums;
    }

    /** {@return the size of each group} */
    public int[] sizes() {
        return sizes.clone();
    }

    /** {@return the mean of each group} */
    public double[] means() {
        return means.clone();
    }

    /** {@return each value less the mean of its group} */
    public double[] deviations() {
        return deviations.clone();
    }

    /** {@return number of groups less one} */
    public int betweenDegreesOfFreedom() {
        return sizes.length - 1;
    }

    /** {@return number of values less number of groups} */
    public int withinDegreesOfFreedom() {
        return deviations.length - sizes.length;
    }

    /** {@return Σ n·(group mean − grand mean)²} */
    public double betweenSumOfSquares() {
        return betweenSumOfSquares;
    }

    /** {@return Σ (value − group mean)²} */
    public double withinSumOfSquares() {
        return withinSumOfSquares;
    }

    /** {@return the pooled variance within groups; NaN without degrees of freedom} */
    public double withinMeanSquare() {
        return withinDegreesOfFreedom() == 0 ? Double.NaN : withinSumOfSquares / withinDegreesOfFreedom();
    }

    /** {@return the ratio of mean squares between and within} */
    public double f() {
        return betweenSumOfSquares / betweenDegreesOfFreedom() / withinMeanSquare();
    }

    /** {@return the harmonic mean of the group sizes} */
    public double harmonicMeanSize() {
        double sum = 0;
        for (int size : sizes) {
            sum += 1.0 / size;
        }
        return sizes.length / sum;
    }
}
