package fairpull.engine.stats;

import java.util.Optional;

/**
 * The mixed model without a search over a matrix, for equally many pulls in every install and columns that are constant within installs:
 * pulls reduce to install means and one sum of squares, and {@link MeansFit} is exact.
 *
 * <p>Checked against: {@link Reml} with {@link ContrastFit} (RepeatedJudgeTest), and through it lme4 and pbkrtest.
 */
public final class EqualPulls {
    private final int[] install;
    private final int installs;
    private final int pulls;
    private final MeansFit fit;

    private EqualPulls(InstallDesign design, MeansFit fit) {
        install = new int[design.pulls()];
        for (int k = 0; k < install.length; k++) {
            install[k] = design.installOf(k);
        }
        installs = design.installs();
        pulls = design.equalPulls().orElseThrow();
        this.fit = fit;
    }

    /**
     * The short way of a design.
     *
     * @param design of the pulls
     * @param designOfMeans the same columns on install means
     * @param column index of the column in the design of means, not the constant
     * @param known what is known of the scatters
     * @return empty where the design has none: unequal or single pulls, columns that vary within installs, nothing to judge by, or a
     *     coefficient that cannot be told apart from others
     */
    public static Optional<EqualPulls> of(InstallDesign design, InstallDesign designOfMeans, int column, ScatterKnowledge known) {
        int pulls = design.equalPulls().orElse(1);
        if (pulls == 1 || !design.withinVanishes() || !designOfMeans.estimable(column)) {
            return Optional.empty();
        }
        MeansFit fit = new MeansFit(designOfMeans, column, pulls, known);
        return fit.canBeJudged() ? Optional.of(new EqualPulls(design, fit)) : Optional.empty();
    }

    /**
     * The fit of a response.
     *
     * @param values at least one a pull of the design, in its order; further ones are not looked at
     * @return the coefficient
     */
    public MeansFit.Fit fit(double[] values) {
        double[] means = new double[installs];
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
        return fit.fit(means, within);
    }
}
