package fairpull.engine.stats;

/**
 * The density of Z at one look over those that went on at every look before: Gauss–Legendre nodes over the region of going on, carried from
 * look to look by S(t₂) = S(t₁) + N(θ·(t₂ − t₁), t₂ − t₁) with S = Z·√t. Panels are no wider than the narrower of the two steps they
 * join, so that the integrand is smooth within each.
 *
 * @see "Armitage, McPherson and Rowe (1969), J. R. Statist. Soc. A 132, 235–244"
 * @see "Jennison and Turnbull (2000), Group Sequential Methods with Applications to Clinical Trials, chapter 19"
 */
final class SequentialDensity {
    /** Beyond so many standard deviations a normal density adds nothing to a double. */
    private static final double NEGLIGIBLE = 12;

    private final double fraction;
    private final double drift;
    private final double[] nodes;
    private final double[] weights;

    private SequentialDensity(double fraction, double drift, double[] nodes, double[] weights) {
        this.fraction = fraction;
        this.drift = drift;
        this.nodes = nodes;
        this.weights = weights;
    }

    /** Before the first look: S = 0 for certain. */
    static SequentialDensity start(double drift) {
        return new SequentialDensity(0, drift, new double[] {0}, new double[] {1});
    }

    /** P(gone on so far, and Z at the look at {@code next} above z). */
    double above(double z, double next) {
        double step = Math.sqrt(next - fraction);
        double sum = 0;
        for (int i = 0; i < nodes.length; i++) {
            sum += weights[i] * Normal.upperTail((z * Math.sqrt(next) - mean(i, next)) / step);
        }
        return sum;
    }

    /** P(gone on so far, and Z at the look at {@code next} below z). */
    double below(double z, double next) {
        double step = Math.sqrt(next - fraction);
        double sum = 0;
        for (int i = 0; i < nodes.length; i++) {
            sum += weights[i] * Normal.cdf((z * Math.sqrt(next) - mean(i, next)) / step);
        }
        return sum;
    }

    /** Where S is expected at {@code next}, from node i. */
    private double mean(int i, double next) {
        return nodes[i] * Math.sqrt(fraction) + drift * (next - fraction);
    }

    /** The density over those that go on at the look at {@code next}, between two bounds, the look after that coming at {@code after}. */
    SequentialDensity goingOn(double low, double high, double next, double after) {
        double centre = drift * Math.sqrt(next);
        double from = Math.max(low, centre - NEGLIGIBLE);
        double to = Math.min(high, centre + NEGLIGIBLE);
        double smooth = Math.min(Math.sqrt((next - fraction) / next), Math.sqrt((after - next) / next));
        int panels = Math.max(1, (int) Math.ceil((to - from) / smooth));
        double[] z = new double[panels * GaussLegendre.POINTS];
        double[] w = new double[z.length];
        GaussLegendre.fill(from, to, panels, z, w);
        for (int j = 0; j < z.length; j++) {
            w[j] *= density(z[j], next);
        }
        return new SequentialDensity(next, drift, z, w);
    }

    private double density(double z, double next) {
        double step = Math.sqrt(next - fraction);
        double sum = 0;
        for (int i = 0; i < nodes.length; i++) {
            double x = (z * Math.sqrt(next) - mean(i, next)) / step;
            sum += weights[i] * Math.exp(-0.5 * x * x);
        }
        return sum * Math.sqrt(next) / (step * Math.sqrt(2 * Math.PI));
    }
}
