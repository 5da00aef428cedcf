package fairpull.engine.stats;

import java.util.function.DoubleUnaryOperator;

/**
 * D = s·(max of m normals − max of n normals) + σ·Z, all independent and standard normal: the difference of two best-of-several figures
 * where nothing differs. A side that is no maximum has n = 0; what scatters there belongs to σ.
 *
 * <p>P(D ≥ d) = ∫ φ(z)·P(M ≥ (d − σz)/s) dz with M the difference of the maxima, by the trapezoid rule; P(M ≥ u) is 1 − Φ(u)ᵐ or Φ(−u)ⁿ
 * where only one side is a maximum, and that of {@link BestAgainstBest} where both are. With no maximum D is normal.
 *
 * <p>Checked against: simulated and exact figures of best against best (BestOfPullsTest).
 */
public final class DifferenceOfMaxima {
    private static final double STEP = 0.1;
    private static final int REACH = 80;
    /** Sums of tails lose their digits below. */
    private static final double LEAST_TAIL = 1e-9;
    private static final double FARTHEST = Normal.upperQuantile(LEAST_TAIL);
    private static final double[] WEIGHTS = weights();

    private final double scatter;
    private final double rest;
    private final int before;
    private final int after;
    private final DoubleUnaryOperator tailOfMaxima;
    private final double[] ends = {Double.NaN, Double.NaN};

    /**
     * The difference of two figures.
     *
     * @param scatter s, above 0 where there is a maximum
     * @param rest σ, 0 or more; above 0 where there is no maximum
     * @param before n, of the figure that is taken off; 0 where it is no maximum
     * @param after m, of the figure it is taken off from; 0 where it is no maximum
     * @throws IllegalArgumentException if an argument is out of its range
     */
    public DifferenceOfMaxima(double scatter, double rest, int before, int after) {
        boolean maximum = before > 0 || after > 0;
        if (before < 0 || after < 0 || !(rest >= 0) || maximum && !(scatter > 0) || !maximum && !(rest > 0)) {
            throw new IllegalArgumentException("no scatter: " + scatter + ", " + rest + " with maxima of " + before + " and " + after);
        }
        this.scatter = scatter;
        this.rest = rest;
        this.before = before;
        this.after = after;
        this.tailOfMaxima = tailOfMaxima(before, after);
    }

    private static DoubleUnaryOperator tailOfMaxima(int before, int after) {
        if (before > 0 && after > 0) {
            return new BestAgainstBest(before, after)::upperTail;
        }
        return after > 0 ? u -> 1 - Math.pow(Normal.cdf(u), after) : u -> Math.pow(Normal.cdf(-u), before);
    }

    private static double[] weights() {
        double[] weights = new double[2 * REACH + 1];
        for (int k = -REACH; k <= REACH; k++) {
            weights[k + REACH] = STEP * ExpectedMaximum.density(k * STEP);
        }
        return weights;
    }

    /** {@return E(D) = s·(e(m) − e(n)), e the expected maximum: what picking alone gives} */
    public double mean() {
        return scatter * ((after > 0 ? ExpectedMaximum.of(after) : 0) - (before > 0 ? ExpectedMaximum.of(before) : 0));
    }

    /** {@return −D} */
    public DifferenceOfMaxima mirrored() {
        return new DifferenceOfMaxima(scatter, rest, after, before);
    }

    /** {@return P(D ≥ d)} */
    public double upperTail(double d) {
        if (before == 0 && after == 0) {
            return Normal.upperTail(d / rest);
        }
        if (rest == 0) {
            return tailOfMaxima.applyAsDouble(d / scatter);
        }
        double sum = 0;
        for (int k = -REACH; k <= REACH; k++) {
            sum += WEIGHTS[k + REACH] * tailOfMaxima.applyAsDouble((d - rest * k * STEP) / scatter);
        }
        return Math.min(1, sum);
    }

    /** {@return P(|D| ≥ |d|)} */
    public double bothTails(double d) {
        double size = Math.abs(d);
        return Math.min(1, upperTail(size) + mirrored().upperTail(size));
    }

    /**
     * {@return the normal deviate that is passed as seldom as d: d ÷ σ where there is no maximum; beyond what sums can tell, as far in
     * standard deviations of D as d is}
     */
    public double deviate(double d) {
        if (before == 0 && after == 0) {
            return d / rest;
        }
        double tail = upperTail(d);
        boolean told = tail > LEAST_TAIL && tail < 1 - LEAST_TAIL;
        return told ? Normal.upperQuantile(tail) : FARTHEST * (d - mean()) / Math.abs(end(d > mean()) - mean());
    }

    /** The last value on a side whose tail sums can tell; found once, as it is looked for. */
    private double end(boolean upper) {
        int side = upper ? 1 : 0;
        if (Double.isNaN(ends[side])) {
            ends[side] = upperQuantile(upper ? LEAST_TAIL : 1 - LEAST_TAIL);
        }
        return ends[side];
    }

    /** {@return the d with P(D ≥ d) = {@code probability}, in (0, 1)} */
    public double upperQuantile(double probability) {
        double reach = 12 * (rest + 2 * scatter);
        return Roots.between(d -> upperTail(d) - probability, -reach, reach, 1e-10);
    }

    /** {@return the size that |D| reaches or passes with {@code probability}, in (0, 1)} */
    public double sizeReached(double probability) {
        return Roots.between(d -> bothTails(d) - probability, 0, 12 * (rest + 2 * scatter), 1e-10);
    }
}
