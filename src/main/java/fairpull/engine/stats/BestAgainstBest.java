package fairpull.engine.stats;

/**
 * M = max of m normals − max of n normals, all independent and standard normal: its upper tail at any place.
 *
 * <p>P(M ≥ u) = ∫ f(y)·[1 − Φ(y + u)ᵐ] dy and its slope −∫ f(y)·m·φ(y + u)·Φ(y + u)ᵐ⁻¹ dy with f(y) = n·φ(y)·Φ(y)ⁿ⁻¹, by the trapezoid
 * rule at places 0.05 apart, once; between them the cubic that has both values and both slopes, which is off by less than 1e-7.
 *
 * <p>Checked against: the double integral itself, exact and simulated figures (BestOfPullsTest).
 */
final class BestAgainstBest {
    private static final double STEP = 0.05;
    /** The trapezoid rule takes every second place: finer ones change nothing in sixteen digits. */
    private static final int STRIDE = 2;
    private static final int NORMAL_REACH = 160;
    private static final int REACH = 2 * NORMAL_REACH;

    private final double[] tails = new double[2 * REACH + 1];
    private final double[] slopes = new double[2 * REACH + 1];

    /** The difference of the best of {@code after} and the best of {@code before}, both 1 or more. */
    BestAgainstBest(int before, int after) {
        Maximum taken = new Maximum(before, NORMAL_REACH);
        Maximum from = new Maximum(after, NORMAL_REACH + REACH);
        for (int place = -REACH; place <= REACH; place++) {
            double tail = 0;
            double slope = 0;
            for (int y = -NORMAL_REACH; y <= NORMAL_REACH; y += STRIDE) {
                double density = taken.densities[y + taken.reach];
                tail += density * (1 - from.distribution[y + place + from.reach]);
                slope -= density * from.densities[y + place + from.reach];
            }
            tails[place + REACH] = tail * STRIDE * STEP;
            slopes[place + REACH] = slope * STRIDE * STEP;
        }
    }

    /** {@return P(M ≥ u)} */
    double upperTail(double u) {
        double place = u / STEP + REACH;
        int left = (int) Math.floor(place);
        if (left < 0 || left >= 2 * REACH) {
            return left < 0 ? 1 : 0;
        }
        double s = place - left;
        double r = 1 - s;
        double values = tails[left] * r * r * (1 + 2 * s) + tails[left + 1] * s * s * (1 + 2 * r);
        return Math.min(1, values + STEP * s * r * (slopes[left] * r - slopes[left + 1] * s));
    }

    /** The largest of some standard normals at the places from −reach to reach. */
    private static final class Maximum {
        private final int reach;
        private final double[] distribution;
        private final double[] densities;

        Maximum(int of, int reach) {
            this.reach = reach;
            distribution = new double[2 * reach + 1];
            densities = new double[2 * reach + 1];
            for (int k = 0; k < densities.length; k++) {
                double x = (k - reach) * STEP;
                double others = Math.pow(Normal.cdf(x), of - 1);
                distribution[k] = others * Normal.cdf(x);
                densities[k] = of * ExpectedMaximum.density(x) * others;
            }
        }
    }
}
