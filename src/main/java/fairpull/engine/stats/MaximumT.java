package fairpull.engine.stats;

import java.util.Arrays;
import java.util.List;

/**
 * The largest of many correlated t statistics: P(maxⱼ |Tⱼ| &gt; c) for Tⱼ = Zⱼ/Sⱼ, Z normal with unit variances and a correlation of low
 * rank, ν·Sⱼ² a χ² of ν degrees of freedom. Of these, m (a whole number) are estimated at each statistic from curves of their own that are
 * correlated as Z is, the others are one estimate that all share; with m = 0 this is the usual multivariate t.
 *
 * <p>With Z = r·Lᵀu, u a random direction in as many dimensions d as the correlation has rank, and all curves behind the estimates of
 * scatter likewise of one length s and one direction, r²/s² is independent of the directions and d⁻¹r²/(D⁻¹s²), D = m·d + ν − m, an
 * F(d, D) variable. So only directions are drawn; both lengths are integrated exactly, and with one dimension the answer is Student's t
 * whatever was drawn.
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
     * How the scatter behind the statistics is known.
     *
     * @param degreesOfFreedom ν, above 0; infinity where it is known
     * @param own how many of them each statistic has of its own, m; not above ν
     */
    public record Scatter(double degreesOfFreedom, int own) {
        public Scatter {
            if (!(degreesOfFreedom > 0 && own >= 0 && own <= degreesOfFreedom)) {
                throw new IllegalArgumentException("of " + degreesOfFreedom + " degrees of freedom, " + own + " cannot be its own");
            }
        }

        private boolean isKnown() {
            return Double.isInfinite(degreesOfFreedom);
        }

        private double shared() {
            return degreesOfFreedom - own;
        }
    }

    /**
     * Draws directions. The curves behind the scatter of a draw are those that follow it, so that each curve drawn serves several times.
     *
     * @param seed the same seed gives the same draws
     * @param directions how many
     * @param scatter how scatter is known
     * @param bothSides whether the sign of a statistic does not matter
     * @return for each direction the largest statistic for lengths of 1; one-sided for the direction and for its opposite, not below 0
     */
    public double[] draw(long seed, int directions, Scatter scatter, boolean bothSides) {
        Deviates deviates = new Deviates(seed);
        int own = scatter.isKnown() ? 0 : scatter.own();
        double[][] curves = new double[own + 1][statistics];
        double[] squares = new double[own + 1];
        for (int ahead = 0; ahead < own; ahead++) {
            squares[ahead] = next(deviates, curves[ahead]);
        }
        double[] largest = new double[bothSides ? directions : 2 * directions];
        double[] scales = new double[statistics];
        for (int draw = 0; draw < directions; draw++) {
            int newest = (draw + own) % (own + 1);
            squares[newest] = next(deviates, curves[newest]);
            double shared = shared(scatter, deviates);
            int oldest = draw % (own + 1);
            double total = shared;
            Arrays.fill(scales, shared);
            for (int k = 0; k <= own; k++) {
                if (k != oldest) {
                    total += squares[k];
                    addSquares(scales, curves[k]);
                }
            }
            double factor = Math.sqrt(total / squares[oldest]);
            double[] extremes = extremes(curves[oldest], scales);
            if (bothSides) {
                largest[draw] = factor * Math.max(extremes[1], -extremes[0]);
            } else {
                largest[2 * draw] = factor * Math.max(0, extremes[1]);
                largest[2 * draw + 1] = factor * Math.max(0, -extremes[0]);
            }
        }
        return largest;
    }

    /** Where scatter is known or shared altogether, its size drops out. */
    private static double shared(Scatter scatter, Deviates deviates) {
        if (scatter.own() == 0 || scatter.isKnown()) {
            return 1;
        }
        return scatter.shared() > 0 ? deviates.chiSquare(scatter.shared()) : 0;
    }

    private double next(Deviates deviates, double[] curve) {
        double[] direction = new double[rows.length];
        double squares = 0;
        for (int k = 0; k < direction.length; k++) {
            direction[k] = deviates.normal();
            squares += direction[k] * direction[k];
        }
        project(direction, curve);
        return squares;
    }

    private static void addSquares(double[] to, double[] curve) {
        for (int j = 0; j < to.length; j++) {
            to[j] += curve[j] * curve[j];
        }
    }

    /** The lowest and the highest of curve/√scale. */
    private static double[] extremes(double[] curve, double[] scales) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int j = 0; j < curve.length; j++) {
            double square = curve[j] * Math.abs(curve[j]) / scales[j];
            low = square < low ? square : low;
            high = square > high ? square : high;
        }
        return new double[] {Math.signum(low) * Math.sqrt(Math.abs(low)), Math.signum(high) * Math.sqrt(Math.abs(high))};
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

    /**
     * The value that the largest statistic passes with a given probability.
     *
     * @param drawn from {@link #draw}, of several calls with different seeds together; not changed
     * @param scatter as for the draws
     * @param errorRate the probability, in (0, 0.5)
     * @param bothSides as for the draws
     * @return c with P(max &gt; c) = {@code errorRate}; infinity where that passes what a double holds
     */
    public double criticalValue(double[] drawn, Scatter scatter, double errorRate, boolean bothSides) {
        double tail = bothSides ? errorRate / 2 : errorRate;
        double one = StudentT.upperQuantile(tail, scatter.degreesOfFreedom());
        double all = StudentT.upperQuantile(tail / statistics, scatter.degreesOfFreedom());
        if (all > 1e100) {
            return all;
        }
        double[] largest = grouped(drawn);
        return Math.exp(Roots.between(u -> passes(Math.exp(u), largest, scatter) - errorRate, Math.log(one / 2), Math.log(2 * all), 1e-9));
    }

    private double passes(double c, double[] largest, Scatter scatter) {
        double lower = scatter.isKnown() ? Double.POSITIVE_INFINITY : scatter.own() * rank() + scatter.shared();
        double perDegree = scatter.isKnown() ? 1.0 / rank() : lower / (scatter.degreesOfFreedom() * rank());
        double sum = 0;
        for (double one : largest) {
            if (one > 0) {
                double ratio = c / one;
                sum += FisherF.upperTail(ratio * ratio * perDegree, rank(), lower);
            }
        }
        return sum / largest.length;
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
