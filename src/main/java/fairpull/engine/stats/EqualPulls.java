package fairpull.engine.stats;

import java.util.Optional;

/**
 * The mixed model in closed form, for equally many pulls in every install and columns that are constant within installs: with MS_b the
 * residual mean square of the install means times n, and MS_w that within installs, restricted maximum likelihood gives
 * s_p² + n·s_r² = MS_b where MS_b is above MS_w, and both pooled (s_r² = 0) where it is not. The coefficient is
 * that of the regression on install means, its variance (s_p² + n·s_r²)/n·Σw², its degrees of freedom those of the install means; the
 * adjustment of Kenward and Roger vanishes.
 *
 * <p>Checked against: {@link Reml} with {@link ContrastFit} (RepeatedJudgeTest), and through it lme4 and pbkrtest.
 *
 * @see "Searle, Casella and McCulloch (1992), Variance Components, section 3.8"
 */
public final class EqualPulls {
    private final int[] install;
    private final int pulls;
    private final double[][] basis;
    private final double[] weights;
    private final double sumOfSquaredWeights;
    private final int betweenDf;
    private final int withinDf;

    /**
     * The coefficient with its standard error.
     *
     * @param estimate the coefficient
     * @param standardError 0 or more
     * @param degreesOfFreedom installs less the rank of their mean design
     */
    public record Fit(double estimate, double standardError, double degreesOfFreedom) {
    }

    private EqualPulls(InstallDesign design, InstallDesign designOfMeans, int column) {
        install = new int[design.pulls()];
        for (int k = 0; k < install.length; k++) {
            install[k] = design.installOf(k);
        }
        pulls = design.equalPulls().orElseThrow();
        basis = designOfMeans.basis().toArray(double[][]::new);
        weights = new double[design.installs()];
        double[] contrast = designOfMeans.contrastFor(column);
        for (int j = 0; j < basis.length; j++) {
            for (int i = 0; i < weights.length; i++) {
                weights[i] += contrast[j] * basis[j][i];
            }
        }
        sumOfSquaredWeights = Sums.product(weights, weights);
        betweenDf = designOfMeans.installs() - designOfMeans.rank();
        withinDf = design.pulls() - design.installs();
    }

    /**
     * The closed form of a design.
     *
     * @param design of the pulls
     * @param designOfMeans the same columns on install means, its basis orthonormal as {@link InstallDesign#ofMeans} makes it
     * @param column index of the column in the design of means, not the constant
     * @return empty where the design has none: unequal or single pulls, columns that vary within installs, no degrees of freedom left,
     *     or a coefficient that cannot be told apart from others
     */
    public static Optional<EqualPulls> of(InstallDesign design, InstallDesign designOfMeans, int column) {
        boolean closed = design.equalPulls().orElse(1) > 1 && design.withinVanishes() && designOfMeans.installs() > designOfMeans.rank()
                && designOfMeans.estimable(column);
        return closed ? Optional.of(new EqualPulls(design, designOfMeans, column)) : Optional.empty();
    }

    /**
     * The fit of a response.
     *
     * @param values at least one a pull of the design, in its order; further ones are not looked at
     * @return the coefficient
     */
    public Fit fit(double[] values) {
        double[] means = new double[weights.length];
        double origin = values[0];
        for (int k = 0; k < install.length; k++) {
            means[install[k]] += values[k] - origin;
        }
        for (int i = 0; i < means.length; i++) {
            means[i] /= pulls;
        }
        double within = 0;
        for (int k = 0; k < install.length; k++) {
            double deviation = values[k] - origin - means[install[k]];
            within += deviation * deviation;
        }
        double estimate = Sums.product(weights, means);
        for (double[] direction : basis) {
            Sums.subtract(means, Sums.product(direction, means), direction);
        }
        double between = pulls * Sums.product(means, means);
        double meanSquare = between / betweenDf > within / withinDf ? between / betweenDf : (between + within) / (betweenDf + withinDf);
        return new Fit(estimate, Math.sqrt(meanSquare / pulls * sumOfSquaredWeights), betweenDf);
    }
}
