package fairpull.engine.stats;

/**
 * D = s·(max of m normals − max of n normals) + σ·Z, all independent and standard normal: the difference of two best-of-several figures
 * where nothing differs. A side that is no maximum has n = 0; what scatters there belongs to σ.
 *
 * <p>P(D ≥ d) = ∫ φ(z) ∫ n·φ(y)·Φ(y)ⁿ⁻¹ · [1 − Φ(y + (d − σz)/s)ᵐ] dy dz, by the trapezoid rule; with one maximum one of the integrals
 * falls away, with none it is the normal tail.
 *
 * <p>Checked against: simulated and exact figures of best against best (BestOfPullsTest).
 *
 * @param scatter s, above 0 where there is a maximum
 * @param rest σ, 0 or more; above 0 where there is no maximum
 * @param before n, of the figure that is taken off; 0 where it is no maximum
 * @param after m, of the figure it is taken off from; 0 where it is no maximum
 */
public record DifferenceOfMaxima(double scatter, double rest, int before, int after) {
    private static final double STEP = 0.1;
    private static final int REACH = 80;

    public DifferenceOfMaxima {
        boolean maximum = before > 0 || after > 0;
        if (before < 0 || after < 0 || !(rest >= 0) || maximum && !(scatter > 0) || !maximum && !(rest > 0)) {
            throw new IllegalArgumentException("no scatter: " + scatter + ", " + rest + " with maxima of " + before + " and " + after);
        }
    }

    /** {@return E(D) = s·(e(m) − e(n)), e the expected maximum: what picking alone gives} */
    public double mean() {
        return scatter * ((after > 0 ? ExpectedMaximum.of(after) : 0) - (before > 0 ? ExpectedMaximum.of(before) : 0));
    }

    /** {@return P(D ≥ d)} */
    public double upperTail(double d) {
        if (before == 0 && after == 0) {
            return Normal.upperTail(d / rest);
        }
        if (rest == 0) {
            return tailOfMaxima(d / scatter);
        }
        double sum = 0;
        for (int k = -REACH; k <= REACH; k++) {
            double z = k * STEP;
            sum += ExpectedMaximum.density(z) * tailOfMaxima((d - rest * z) / scatter);
        }
        return Math.min(1, sum * STEP);
    }

    /** {@return P(|D| ≥ |d|)} */
    public double bothTails(double d) {
        double size = Math.abs(d);
        return Math.min(1, upperTail(size) + 1 - upperTail(-size));
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

    private double tailOfMaxima(double u) {
        if (before == 0) {
            return 1 - Math.pow(Normal.cdf(u), after);
        }
        if (after == 0) {
            return Math.pow(Normal.cdf(-u), before);
        }
        double sum = 0;
        for (int k = -REACH; k <= REACH; k++) {
            double y = k * STEP;
            sum += before * ExpectedMaximum.density(y) * Math.pow(Normal.cdf(y), before - 1) * (1 - Math.pow(Normal.cdf(y + u), after));
        }
        return Math.min(1, sum * STEP);
    }
}
