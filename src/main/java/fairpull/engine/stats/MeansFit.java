package fairpull.engine.stats;

/**
 * One coefficient of a design on install means with equally many pulls: its value by least squares on the means, which is that of the
 * mixed model whatever the scatters are, its variance and degrees of freedom by {@link BalancedScatter}. The adjustment of Kenward and
 * Roger vanishes.
 *
 * <p>Exact for columns that are constant within installs. A drift has a little more to go by within installs; taken from the means alone
 * it costs a fraction of the last degree of freedom.
 */
public final class MeansFit {
    private final double[][] basis;
    private final double[] weights;
    private final double sumOfSquaredWeights;
    private final BalancedScatter scatter;

    /**
     * The coefficient with its standard error.
     *
     * @param estimate the coefficient
     * @param standardError 0 or more
     * @param degreesOfFreedom above 0
     */
    public record Fit(double estimate, double standardError, double degreesOfFreedom) {
    }

    /**
     * The fit of a design.
     *
     * @param designOfMeans its basis orthonormal as {@link InstallDesign#ofMeans} makes it
     * @param column index of the column, not the constant
     * @param pulls of each install
     * @param known what is known of the scatters
     * @throws IllegalArgumentException if the coefficient cannot be told apart from others
     */
    public MeansFit(InstallDesign designOfMeans, int column, int pulls, ScatterKnowledge known) {
        basis = designOfMeans.basis().toArray(double[][]::new);
        weights = new double[designOfMeans.installs()];
        double[] contrast = designOfMeans.contrastFor(column);
        for (int j = 0; j < basis.length; j++) {
            for (int i = 0; i < weights.length; i++) {
                weights[i] += contrast[j] * basis[j][i];
            }
        }
        sumOfSquaredWeights = Sums.product(weights, weights);
        scatter = new BalancedScatter(pulls, designOfMeans.installs() - designOfMeans.rank(),
                (pulls - 1.0) * designOfMeans.installs(), known);
    }

    /** {@return whether there is anything to judge the coefficient by} */
    public boolean canBeJudged() {
        return scatter.canBeJudged();
    }

    /**
     * The fit of install means.
     *
     * @param means at least one an install of the design, in its order; further ones are not looked at
     * @param withinSquares sum of squares of the pulls about their install's mean
     * @return the coefficient
     */
    public Fit fit(double[] means, double withinSquares) {
        double[] rest = new double[weights.length];
        System.arraycopy(means, 0, rest, 0, rest.length);
        double estimate = Sums.product(weights, rest);
        for (double[] direction : basis) {
            Sums.subtract(rest, Sums.product(direction, rest), direction);
        }
        BalancedScatter.OfMeans found = scatter.of(Sums.product(rest, rest), withinSquares);
        return new Fit(estimate, Math.sqrt(found.variance() * sumOfSquaredWeights), found.degreesOfFreedom());
    }
}
