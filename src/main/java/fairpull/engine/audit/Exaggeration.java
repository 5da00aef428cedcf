package fairpull.engine.audit;

import fairpull.domain.audit.TypeErrors;
import fairpull.engine.stats.Normal;
import fairpull.engine.stats.Tails;
import java.util.function.DoubleUnaryOperator;

/**
 * How often a comparison that comes out has the wrong sign, and how much too large it is then, at a true gain θ with standard error s.
 *
 * <p>With λ = |θ|/s and z the two-sided critical value: power = Φ(λ − z) + Φ(−λ − z); wrong sign = Φ(−λ − z) ÷ power; exaggeration
 * = [φ(λ + z) + φ(λ − z) + λ·(Φ(λ + z) + Φ(λ − z) − 1)] ÷ (λ·power).
 *
 * <p>Checked against: both examples of the paper (ExaggerationTest).
 *
 * @see "Gelman and Carlin (2014), Beyond power calculations: assessing type S and type M errors, Perspectives on Psychological Science 9,
 *     641–651; closed form of the exaggeration: Lu, Qiu and Deng (2019), British Journal of Mathematical and Statistical
 *     Psychology 72, 1–17"
 */
public final class Exaggeration {
    private Exaggeration() {
    }

    /**
     * Type S and type M of a true gain.
     *
     * @param trueGain θ, not 0
     * @param standardError s, above 0, in the unit of the gain
     * @param errorRate two-sided, in (0, 1)
     * @return power, share of wrong signs, exaggeration ratio
     * @throws IllegalArgumentException if an argument is out of its range
     */
    public static TypeErrors at(double trueGain, double standardError, double errorRate) {
        if (trueGain == 0 || !Double.isFinite(trueGain) || !(standardError > 0)) {
            throw new IllegalArgumentException("a true gain other than 0 and a standard error above 0 are needed, were " + trueGain + ", "
                    + standardError);
        }
        double lambda = Math.abs(trueGain) / standardError;
        double z = Normal.upperQuantile(errorRate / 2);
        double right = Normal.cdf(lambda - z);
        double wrong = Normal.cdf(-lambda - z);
        double power = right + wrong;
        double size = density(lambda + z) + density(lambda - z) + lambda * (Normal.cdf(lambda + z) + Normal.cdf(lambda - z) - 1);
        return new TypeErrors(power, wrong / power, size / (lambda * power));
    }

    /**
     * The same where an unchanged pair is not normal: power = P(D ≥ c − θ) + P(−D ≥ c + θ), exaggeration = E(|D + θ|; |D + θ| ≥ c) ÷
     * (θ·power), with E(X; X ≥ c) = c·P(X ≥ c) + ∫ P(X ≥ x) dx from c on, by Gauss–Legendre quadrature over x = c + s·u/(1 − u).
     *
     * @param trueGain θ, above 0
     * @param critical c, above 0: what |D + θ| must reach to come out
     * @param above P(D ≥ d) of an unchanged pair
     * @param below P(−D ≥ d)
     * @param scale s, about a standard deviation of D
     * @return power, share of wrong signs, exaggeration ratio; that is infinite where D has no mean
     */
    static TypeErrors of(double trueGain, double critical, DoubleUnaryOperator above, DoubleUnaryOperator below, double scale) {
        double right = above.applyAsDouble(critical - trueGain);
        double wrong = below.applyAsDouble(critical + trueGain);
        double within = trueGain - critical;
        // ∫ P(D ≥ x − θ) from c on; where c lies below θ, the tail is turned round from c to θ, so that every tail begins at 0 or above
        double beyond = within <= 0 ? Tails.integral(above, -within, scale)
                : within - Tails.integral(below, 0, scale) + Tails.integral(below, within, scale) + Tails.integral(above, 0, scale);
        double size = critical * (right + wrong) + beyond + Tails.integral(below, critical + trueGain, scale);
        return new TypeErrors(right + wrong, wrong / (right + wrong), size / (trueGain * (right + wrong)));
    }

    private static double density(double x) {
        return Math.exp(-0.5 * x * x) / Math.sqrt(2 * Math.PI);
    }
}
