package fairpull.engine.stats;

/**
 * Several looks at growing data: bounds for Z at each look that keep the error rate over all of them, and the chances of crossing
 * them. Z is normal with mean θ·√t and variance 1 at the share t of the information, and increments
 * of Z·√t are independent.
 *
 * <p>Checked against: published bounds and exit probabilities (published/group-sequential, GroupSequentialTest).
 *
 * @see "Lan and DeMets (1983), Biometrika 70, 659–663"
 * @see "Jennison and Turnbull (2000), Group Sequential Methods with Applications to Clinical Trials, chapters 2, 7, 19"
 */
public final class GroupSequential {
    private static final double LARGEST_BOUND = 37;
    private static final double ACCURACY = 1e-13;

    private GroupSequential() {
    }

    /**
     * The bounds that spend the error rate.
     *
     * @param fractions share of the information at each look, rising within (0, 1]; the last one is 1 for the whole error rate to be spent
     * @param errorRate over all looks, in (0, 0.5)
     * @param twoSided whether a change either way counts: each tail then spends half the error rate
     * @param spending how the error is spent
     * @return the bound for Z (for |Z| when two-sided) at each look
     * @throws IllegalArgumentException if fractions do not rise, or a look comes so early that nothing is left to spend there
     */
    public static double[] bounds(double[] fractions, double errorRate, boolean twoSided, ErrorSpending spending) {
        requireRising(fractions);
        double tail = twoSided ? errorRate / 2 : errorRate;
        double[] bounds = new double[fractions.length];
        SequentialDensity density = SequentialDensity.start(0);
        double spent = 0;
        for (int k = 0; k < fractions.length; k++) {
            double now = spending.spent(tail, fractions[k]);
            bounds[k] = bound(density, fractions[k], now - spent);
            spent = now;
            density = goOn(density, fractions, bounds, k, twoSided);
        }
        return bounds;
    }

    private static double bound(SequentialDensity density, double fraction, double toSpend) {
        if (!(toSpend > density.above(LARGEST_BOUND, fraction))) {
            throw new IllegalArgumentException("a look at " + fraction + " of the information has no error left to spend");
        }
        double target = Math.log(toSpend);
        return Roots.between(z -> Math.log(density.above(z, fraction)) - target, -LARGEST_BOUND, LARGEST_BOUND, ACCURACY);
    }

    private static SequentialDensity goOn(SequentialDensity density, double[] fractions, double[] bounds, int k, boolean twoSided) {
        return k + 1 == fractions.length ? density
                : density.goingOn(twoSided ? -bounds[k] : Double.NEGATIVE_INFINITY, bounds[k], fractions[k], fractions[k + 1]);
    }

    /**
     * The chance of stopping at each look.
     *
     * @param fractions share of the information at each look, rising within (0, 1]
     * @param bounds for Z, or |Z| when two-sided
     * @param twoSided whether a change either way stops
     * @param drift θ, the mean of Z at the whole information; 0 where there is no change
     * @return the chance of crossing first at each look, through either bound when two-sided
     */
    public static double[] exits(double[] fractions, double[] bounds, boolean twoSided, double drift) {
        requireRising(fractions);
        double[] exits = new double[fractions.length];
        SequentialDensity density = SequentialDensity.start(drift);
        for (int k = 0; k < fractions.length; k++) {
            exits[k] = density.above(bounds[k], fractions[k]) + (twoSided ? density.below(-bounds[k], fractions[k]) : 0);
            density = goOn(density, fractions, bounds, k, twoSided);
        }
        return exits;
    }

    private static void requireRising(double[] fractions) {
        double before = 0;
        for (double fraction : fractions) {
            if (!(fraction > before && fraction <= 1)) {
                throw new IllegalArgumentException("shares of the information must rise within 0 … 1, were " + before + ", " + fraction);
            }
            before = fraction;
        }
    }
}
