package fairpull.engine.stats;

import org.apache.commons.numbers.gamma.RegularizedGamma;

/**
 * The non-central t distribution: T = (Z + δ) / s, s² = χ²/ν. To 1e-10 absolute, for any ν above 0 (infinity is the normal
 * distribution) and any δ.
 *
 * <p>Written as an integral over one of the two independent parts and summed by the trapezoid rule on an equidistant grid, which
 * converges exponentially for these analytic integrands. The normalising constant is the same sum without the other part, so that no
 * gamma function of a large argument has to cancel.
 *
 * <p>Checked against: values by 30-digit integration and published power tables (NoncentralTTest).
 */
public final class NoncentralT {
    /** Beyond e^−NEGLIGIBLE of its peak a density adds nothing to a double. */
    private static final double NEGLIGIBLE = 42;

    private NoncentralT() {
    }

    /**
     * P(T ≤ t).
     *
     * @param t any number
     * @param degreesOfFreedom ν, above 0
     * @param noncentrality δ, finite
     * @return the lower tail
     * @throws IllegalArgumentException if the degrees of freedom are not above 0 or δ is not finite
     */
    public static double cdf(double t, double degreesOfFreedom, double noncentrality) {
        if (!(degreesOfFreedom > 0) || !Double.isFinite(noncentrality)) {
            throw new IllegalArgumentException(
                    "degrees of freedom above 0 and a finite noncentrality are needed, were " + degreesOfFreedom + ", " + noncentrality);
        }
        if (Double.isInfinite(degreesOfFreedom) || Double.isInfinite(t)) {
            return Normal.cdf(t - noncentrality);
        }
        if (noncentrality < 0) {
            return 1 - cdf(-t, degreesOfFreedom, -noncentrality);
        }
        // the sum runs over the part whose density the other one varies little across
        return noncentrality * noncentrality > 2 * degreesOfFreedom + 100
                ? overNormal(t, degreesOfFreedom, noncentrality)
                : overLogScale(t, degreesOfFreedom, noncentrality);
    }

    /** ∫ φ(z)·P(s ≥ (z+δ)/t) dz; δ is above 10 here, so that z + δ is positive but for 1e-23. */
    private static double overNormal(double t, double nu, double delta) {
        if (t <= 0) {
            return 0;
        }
        double step = 0.125;
        double sum = 0;
        double weights = 0;
        for (int k = -74; k <= 74; k++) {
            double z = k * step;
            double weight = Math.exp(-0.5 * z * z);
            double s = Math.max(0, z + delta) / t;
            weights += weight;
            sum += weight * RegularizedGamma.Q.value(0.5 * nu, 0.5 * nu * s * s);
        }
        return sum / weights;
    }

    /** ∫ Φ(t·e^u − δ)·g(u) du with g the density of u = ln s, proportional to exp(νu − ν(e^(2u) − 1)/2). */
    private static double overLogScale(double t, double nu, double delta) {
        double step = Math.min(0.1, 0.5 / Math.sqrt(4 + 2 * nu + delta * delta));
        double flat = -45 - Math.log(Math.max(1, Math.abs(t)) * Math.max(1, nu));
        double sum = 0;
        double weights = 0;
        for (double u = 0; logDensity(u, nu) > -NEGLIGIBLE; u += step) {
            double weight = Math.exp(logDensity(u, nu));
            weights += weight;
            sum += weight * Normal.cdf(t * Math.exp(u) - delta);
        }
        double u = -step;
        for (; u > flat && logDensity(u, nu) > -NEGLIGIBLE; u -= step) {
            double weight = Math.exp(logDensity(u, nu));
            weights += weight;
            sum += weight * Normal.cdf(t * Math.exp(u) - delta);
        }
        // where the grid was left before the density died out both factors are exponentials: what remains is a geometric series
        double rest = u <= flat ? Math.exp(nu * (u + 0.5)) / -Math.expm1(-nu * step) : 0;
        return (sum + rest * Normal.cdf(-delta)) / (weights + rest);
    }

    private static double logDensity(double u, double nu) {
        return nu * u - 0.5 * nu * Math.expm1(2 * u);
    }
}
