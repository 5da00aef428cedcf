package fairpull.engine.stats;

import java.util.ArrayList;
import java.util.List;

/**
 * Restricted maximum likelihood for the two variances, with what is known of them beforehand. The search is over γ = s_r²/s_p² alone:
 * for a given γ the best s_p² is (rᵀH⁻¹r + ν_r·s₀r²/γ + ν_p·s₀p²) / (N − p + ν_r + ν_p), or follows from a known variance. Every local
 * minimum of the criterion on a wide grid of ln γ (and γ = 0 where no record of refit scatter forbids it) is refined to the last digit by
 * the root of its slope; the best is taken.
 *
 * <p>Checked against: lme4 and dense matrices in R (JudgeAgainstRTest), published mixed-model fits (MixedModelPublishedTest).
 */
public final class Reml {
    /** Half the width of the grid in ln γ, where the figures at hand do not ask for a wider one. */
    private static final double HALF_WIDTH = 18;
    private static final double STEP = 0.5;

    private final ResponseSums sums;
    private final ScatterKnowledge known;
    private final double smallestLogRatio;
    private final double degreesOfFreedom;

    private Reml(ResponseSums sums, ScatterKnowledge known, double smallestLogRatio) {
        this.sums = sums;
        this.known = known;
        this.smallestLogRatio = smallestLogRatio;
        this.degreesOfFreedom = sums.design().pulls() - sums.design().rank()
                + (known.refitKnown() ? 0 : known.refitDf()) + (known.pullKnown() ? 0 : known.pullDf());
    }

    /**
     * Estimates the variances.
     *
     * @param sums the data in their design
     * @param known what is known of the two scatters
     * @return the variances at the best value of the criterion
     * @throws IllegalArgumentException if there is nothing to estimate them from: no residual degree of freedom, no scatter within
     *     installs and no record of it
     */
    public static VarianceComponents estimate(ResponseSums sums, ScatterKnowledge known) {
        if (known.refitKnown() && known.pullKnown()) {
            return new VarianceComponents(known.pullVariance(), known.refitVariance() / known.pullVariance());
        }
        Reml search = new Reml(sums, known, Double.NEGATIVE_INFINITY);
        if (!(search.degreesOfFreedom > 0)) {
            throw new IllegalArgumentException("no degrees of freedom are left for the scatter");
        }
        return known.isNone() && sums.design().equalPulls().isPresent() && sums.design().withinVanishes() ? search.balanced()
                : search.best();
    }

    /**
     * Estimates the pull variance where refit variance is known and pull variance cannot pass a bound.
     *
     * @param sums the data in their design
     * @param refitVariance known, above 0
     * @param pullVarianceAtMost the bound, above 0; infinity for none
     * @return the variances at the best value of the criterion within the bound
     * @throws IllegalArgumentException if no residual degree of freedom is left
     */
    public static VarianceComponents estimateWithin(ResponseSums sums, double refitVariance, double pullVarianceAtMost) {
        Reml search = new Reml(sums, ScatterKnowledge.ofRefitKnown(refitVariance), Math.log(refitVariance / pullVarianceAtMost));
        if (!(search.degreesOfFreedom > 0)) {
            throw new IllegalArgumentException("no degrees of freedom are left for the scatter");
        }
        return search.best();
    }

    /** Equal pulls and columns that are constant within installs: the mean squares give the answer. */
    private VarianceComponents balanced() {
        InstallDesign design = sums.design();
        int n = design.equalPulls().orElseThrow();
        double between = n * sums.betweenSquares(0);
        int betweenDf = design.installs() - design.rank();
        int withinDf = design.pulls() - design.installs();
        if (betweenDf <= 0 || withinDf <= 0) {
            return best();
        }
        double within = sums.withinSquares() / withinDf;
        double excess = between / betweenDf - within;
        return excess > 0 ? new VarianceComponents(within, excess / within / n)
                : new VarianceComponents((between + sums.withinSquares()) / (betweenDf + withinDf), 0);
    }

    private VarianceComponents best() {
        double best = Double.POSITIVE_INFINITY;
        double bestRatio = Double.NaN;
        for (double ratio : localMinima()) {
            double criterion = criterion(new WeightedFit(sums, ratio));
            if (criterion < best) {
                best = criterion;
                bestRatio = ratio;
            }
        }
        return new VarianceComponents(pullVariance(new WeightedFit(sums, bestRatio)), bestRatio);
    }

    private List<Double> localMinima() {
        double halfWidth = halfWidth();
        List<Double> minima = new ArrayList<>();
        double left = Math.max(-halfWidth, smallestLogRatio);
        double leftSlope = slope(left);
        if (leftSlope >= 0) {
            minima.add(known.refitDf() == 0 ? 0 : Math.exp(left));
        }
        while (left < halfWidth) {
            double right = left + STEP;
            double rightSlope = slope(right);
            if (leftSlope < 0 && rightSlope >= 0) {
                minima.add(Math.exp(Roots.between(this::slope, left, right)));
            }
            left = right;
            leftSlope = rightSlope;
        }
        if (leftSlope < 0) {
            minima.add(Math.exp(left));
        }
        return minima;
    }

    /** Wide enough for any two of the variances at hand to be those sought. */
    private double halfWidth() {
        double smallest = Double.POSITIVE_INFINITY;
        double largest = 0;
        InstallDesign design = sums.design();
        double[] variances = {sums.residualSumOfSquares() / Math.max(1, design.pulls() - design.rank()),
            sums.withinSquares() / Math.max(1, design.pulls() - design.installs()),
            known.refitDf() > 0 ? known.refitVariance() : 0, known.pullDf() > 0 ? known.pullVariance() : 0};
        for (double variance : variances) {
            if (variance > 0) {
                smallest = Math.min(smallest, variance);
                largest = Math.max(largest, variance);
            }
        }
        return largest > 0 ? Math.max(HALF_WIDTH, Math.log(largest / smallest) + HALF_WIDTH / 2) : HALF_WIDTH;
    }

    private double pullVariance(WeightedFit fit) {
        if (known.pullKnown()) {
            return known.pullVariance();
        }
        return known.refitKnown() ? known.refitVariance() / fit.ratio() : squares(fit) / degreesOfFreedom;
    }

    /** rᵀH⁻¹r and what the records add to it, all to be divided by s_p². */
    private double squares(WeightedFit fit) {
        double sum = fit.quadraticForm();
        if (known.refitDf() > 0 && !known.refitKnown()) {
            sum += known.refitDf() * known.refitVariance() / fit.ratio();
        }
        if (known.pullDf() > 0 && !known.pullKnown()) {
            sum += known.pullDf() * known.pullVariance();
        }
        return sum;
    }

    /** −2·log of the restricted likelihood with the terms of the records, but for constants. */
    private double criterion(WeightedFit fit) {
        double s = pullVariance(fit);
        double refitTerm = known.refitKnown() || known.refitDf() == 0 ? 0 : known.refitDf() * Math.log(fit.ratio());
        return degreesOfFreedom * Math.log(s) + squares(fit) / s + fit.logDeterminants() + refitTerm;
    }

    /** Slope of the criterion in ln γ along the path that s_p² takes. */
    private double slope(double logRatio) {
        double ratio = Math.exp(logRatio);
        WeightedFit fit = new WeightedFit(sums, ratio);
        double s = pullVariance(fit);
        double atFixedPull = ratio * (fit.logDeterminantsSlope() + fit.quadraticFormSlope() / s);
        if (known.refitDf() > 0 && !known.refitKnown()) {
            atFixedPull += known.refitDf() * (1 - known.refitVariance() / (ratio * s));
        }
        // with s_r² known, ln s_p² = ln s_r² − ln γ moves along; otherwise s_p² is either known or at its best, where its slope is 0
        return known.refitKnown() ? atFixedPull - (degreesOfFreedom - squares(fit) / s) : atFixedPull;
    }
}
