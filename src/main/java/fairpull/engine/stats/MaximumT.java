package fairpull.engine.stats;

import java.util.Arrays;
import java.util.List;

/**
 * The largest of many correlated t statistics that share one estimate of scatter: P(maxⱼ |Tⱼ| &gt; c) for T = Z/S, Z normal with unit
 * variances and a correlation of low rank, S² = χ²(ν)/ν.
 *
 * <p>With Z = r·Lᵀu, u a random direction in as many dimensions d as the correlation has rank and r² = χ²(d) independent of it, the event
 * given u is r²/(d·S²) &gt; c²/(d·m²), m = maxⱼ |uᵀlⱼ|, the left side an F(d, ν) variable. So only directions are drawn; length and
 * scatter are integrated exactly, and with one dimension the answer is Student's t whatever was drawn.
 *
 * <p>Checked against: mvtnorm in R (computed/maximum-t-mvtnorm), published tables (MaximumTTest).
 *
 * @see "Genz and Bretz (2009), Computation of Multivariate Normal and t Probabilities, Springer, section 4.1 (spherical–radial form)"
 */
public final class MaximumT {
    /** What of a unit variance may stay outside the dimensions kept. */
    private static final double SMALLEST_NEW_VARIANCE = 1e-7;
    /** Draws of nearly equal size stand for each other when the tail is summed: so many groups of them. */
    private static final int GROUPS = 500;
    private static final int ROWS_AT_ONCE = 4;

    private final int statistics;
    private final double[][] rows;

    private MaximumT(int statistics, double[][] rows) {
        this.statistics = statistics;
        this.rows = rows;
    }

    /**
     * Statistics whose correlation is the cosine between vectors.
     *
     * @param vectors one a statistic, of equal lengths, none of them 0
     * @return the statistics
     * @throws IllegalArgumentException if there is no vector, or one is 0 or not finite
     */
    public static MaximumT of(List<double[]> vectors) {
        if (vectors.isEmpty()) {
            throw new IllegalArgumentException("no statistics");
        }
        double[][] rest = vectors.stream().map(MaximumT::unit).toArray(double[][]::new);
        double[] variance = new double[rest.length];
        Arrays.fill(variance, 1);
        double[][] rows = new double[Math.min(rest.length, rest[0].length)][];
        int rank = 0;
        while (rank < rows.length) {
            int pivot = largest(variance);
            if (variance[pivot] < SMALLEST_NEW_VARIANCE) {
                break;
            }
            rows[rank++] = deflate(rest, variance, unit(rest[pivot]));
        }
        return new MaximumT(rest.length, withUnitVariances(Arrays.copyOf(rows, rank)));
    }

    private static double[] unit(double[] vector) {
        double length = Math.sqrt(Sums.product(vector, vector));
        if (!(length > 0) || Double.isInfinite(length)) {
            throw new IllegalArgumentException("a statistic needs a finite vector other than 0");
        }
        return Arrays.stream(vector).map(entry -> entry / length).toArray();
    }

    private static int largest(double[] variance) {
        int best = 0;
        for (int j = 1; j < variance.length; j++) {
            best = variance[j] > variance[best] ? j : best;
        }
        return best;
    }

    /** Takes a direction out of every vector; the shares taken are a row of the factor. */
    private static double[] deflate(double[][] rest, double[] variance, double[] direction) {
        double[] row = new double[rest.length];
        for (int j = 0; j < rest.length; j++) {
            row[j] = Sums.product(direction, rest[j]);
            Sums.subtract(rest[j], row[j], direction);
            variance[j] = Sums.product(rest[j], rest[j]);
        }
        return row;
    }

    private static double[][] withUnitVariances(double[][] rows) {
        for (int j = 0; j < rows[0].length; j++) {
            double squares = 0;
            for (double[] row : rows) {
                squares += row[j] * row[j];
            }
            for (double[] row : rows) {
                row[j] /= Math.sqrt(squares);
            }
        }
        return rows;
    }

    /** {@return the dimensions of the correlation} */
    public int rank() {
        return rows.length;
    }

    /** {@return how many statistics there are} */
    public int statistics() {
        return statistics;
    }

    /**
     * Draws directions.
     *
     * @param seed the same seed gives the same draws
     * @param directions how many
     * @param bothSides whether the sign of a statistic does not matter
     * @return for each direction the largest cosine m with a statistic; one-sided for the direction and for its opposite, not below 0
     */
    public double[] draw(long seed, int directions, boolean bothSides) {
        Deviates deviates = new Deviates(seed);
        double[] largest = new double[bothSides ? directions : 2 * directions];
        double[] direction = new double[rows.length];
        double[] projections = new double[statistics];
        for (int draw = 0; draw < directions; draw++) {
            double squares = 0;
            for (int k = 0; k < direction.length; k++) {
                direction[k] = deviates.normal();
                squares += direction[k] * direction[k];
            }
            project(direction, projections);
            double length = Math.sqrt(squares);
            double high = highest(projections) / length;
            double low = lowest(projections) / length;
            if (bothSides) {
                largest[draw] = Math.max(high, -low);
            } else {
                largest[2 * draw] = Math.max(0, high);
                largest[2 * draw + 1] = Math.max(0, -low);
            }
        }
        return largest;
    }

    /** Several rows at once, so that each projection is loaded and stored as seldom as may be. */
    private void project(double[] direction, double[] projections) {
        Arrays.fill(projections, 0);
        int k = 0;
        for (; k + ROWS_AT_ONCE <= direction.length; k += ROWS_AT_ONCE) {
            addFour(projections, direction, k);
        }
        for (; k < direction.length; k++) {
            Sums.subtract(projections, -direction[k], rows[k]);
        }
    }

    private void addFour(double[] projections, double[] direction, int k) {
        double a = direction[k];
        double b = direction[k + 1];
        double c = direction[k + 2];
        double d = direction[k + 3];
        double[] rowA = rows[k];
        double[] rowB = rows[k + 1];
        double[] rowC = rows[k + 2];
        double[] rowD = rows[k + 3];
        for (int j = 0; j < projections.length; j++) {
            projections[j] += a * rowA[j] + b * rowB[j] + (c * rowC[j] + d * rowD[j]);
        }
    }

    private static double highest(double[] values) {
        double best = values[0];
        for (double value : values) {
            best = value > best ? value : best;
        }
        return best;
    }

    private static double lowest(double[] values) {
        double best = values[0];
        for (double value : values) {
            best = value < best ? value : best;
        }
        return best;
    }

    /**
     * The value that the largest statistic passes with a given probability.
     *
     * @param drawn from {@link #draw}, of several calls with different seeds together; not changed
     * @param degreesOfFreedom ν, above 0; infinity where scatter is known
     * @param errorRate the probability, in (0, 0.5)
     * @param bothSides as the directions were drawn
     * @return c with P(max &gt; c) = {@code errorRate}; infinity where that passes what a double holds
     */
    public double criticalValue(double[] drawn, double degreesOfFreedom, double errorRate, boolean bothSides) {
        double tail = bothSides ? errorRate / 2 : errorRate;
        double one = StudentT.upperQuantile(tail, degreesOfFreedom);
        double all = StudentT.upperQuantile(tail / statistics, degreesOfFreedom);
        if (all > 1e100) {
            return all;
        }
        double[] cosines = grouped(drawn);
        return Math.exp(Roots.between(u -> passes(Math.exp(u), cosines, degreesOfFreedom) - errorRate, Math.log(one / 2),
                Math.log(2 * all), 1e-9));
    }

    private double passes(double c, double[] cosines, double degreesOfFreedom) {
        double sum = 0;
        for (double cosine : cosines) {
            if (cosine > 0) {
                double ratio = c / cosine;
                sum += FisherF.upperTail(ratio * ratio / rank(), rank(), degreesOfFreedom);
            }
        }
        return sum / cosines.length;
    }

    private static double[] grouped(double[] drawn) {
        double[] sorted = drawn.clone();
        Arrays.sort(sorted);
        double[] means = new double[Math.min(GROUPS, sorted.length)];
        for (int g = 0; g < means.length; g++) {
            int from = (int) ((long) g * sorted.length / means.length);
            int to = (int) ((long) (g + 1) * sorted.length / means.length);
            for (int k = from; k < to; k++) {
                means[g] += sorted[k] / (to - from);
            }
        }
        return means;
    }
}
