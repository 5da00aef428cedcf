package fairpull.engine.stats;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * Restricted maximum likelihood for pulls within installs within sessions. s_p² = rᵀH⁻¹r/(N − 1) is closed form given the ratios
 * a = s_r²/s_p² and b = s_d²/s_p². For every a the criterion is searched for all its minima over b, zero among them, and the best is
 * taken; along that path it is searched for all its minima over a, zero among them. The best value of a grid never rises where two
 * minima over b change places, so a change of its slope from falling to rising is always a minimum.
 *
 * <p>Checked against: published nested fits (NestedModelPublishedTest) and lme4 with dense matrices in R (NestedModelAgainstRTest).
 */
public final class NestedReml {
    private static final double HALF_WIDTH = 18;
    private static final double STEP = 0.5;

    private final NestedSums sums;
    private final boolean installsVary;
    private final boolean sessionsVary;
    private final double halfWidth;

    private NestedReml(NestedSums sums) {
        this.sums = sums;
        this.installsVary = sums.repeatsPulls() && sums.installs() > 1;
        this.sessionsVary = sums.repeatsInstalls() && sums.repeatsSessions();
        this.halfWidth = halfWidth(sums);
    }

    /**
     * Estimates the variances that the table can tell apart.
     *
     * @param sums the table
     * @return the variances at the best value of the criterion
     * @throws IllegalArgumentException if there is one value only, or pulls are repeated and never differ within an install: then
     *     there is no pull scatter to measure the others by
     */
    public static NestedEstimate estimate(NestedSums sums) {
        if (sums.values() < 2) {
            throw new IllegalArgumentException("one value has no scatter");
        }
        if (sums.repeatsPulls() && sums.withinSquares() == 0) {
            throw new IllegalArgumentException("the pulls of every install are equal: there is no pull scatter");
        }
        NestedReml search = new NestedReml(sums);
        double a = search.installsVary ? search.best(logA -> search.slopeInRefit(Math.exp(logA)), search.slopeInRefit(0),
                ratio -> search.criterion(ratio, search.bestDay(ratio))) : 0;
        return search.estimate(a, search.bestDay(a));
    }

    private double bestDay(double a) {
        return sessionsVary ? best(logB -> slopeInDay(a, Math.exp(logB)), slopeInDay(a, 0), ratio -> criterion(a, ratio)) : 0;
    }

    /** The ratio with the least criterion among all minima on the grid, zero among them. */
    private double best(DoubleUnaryOperator slope, double slopeAtZero, DoubleUnaryOperator criterion) {
        double best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (double ratio : minima(slope, slopeAtZero)) {
            double value = criterion.applyAsDouble(ratio);
            if (value < least) {
                least = value;
                best = ratio;
            }
        }
        return best;
    }

    private List<Double> minima(DoubleUnaryOperator slope, double slopeAtZero) {
        List<Double> minima = new ArrayList<>();
        double left = -halfWidth;
        double leftSlope = slope.applyAsDouble(left);
        if (slopeAtZero >= 0 || leftSlope >= 0) {
            minima.add(0.0);
        }
        while (left < halfWidth) {
            double right = left + STEP;
            double rightSlope = slope.applyAsDouble(right);
            if (leftSlope < 0 && rightSlope >= 0) {
                minima.add(Math.exp(Roots.between(slope, left, right)));
            }
            left = right;
            leftSlope = rightSlope;
        }
        if (leftSlope < 0) {
            minima.add(Math.exp(left));
        }
        return minima;
    }

    /** Wide enough for the scatter of the means to be all of one layer, however small that of the pulls. */
    private static double halfWidth(NestedSums sums) {
        NestedFit together = new NestedFit(sums, 0, 0);
        double lowest = sums.repeatsPulls() ? sums.withinSquares() / (sums.values() - sums.installs()) : 0;
        double all = together.quadraticForm() / (sums.values() - 1);
        return lowest > 0 ? Math.max(HALF_WIDTH, Math.log(all / lowest) + HALF_WIDTH / 2) : HALF_WIDTH;
    }

    private double lowest(NestedFit fit) {
        return fit.quadraticForm() / (sums.values() - 1);
    }

    private double slopeInRefit(double a) {
        NestedFit fit = new NestedFit(sums, a, bestDay(a));
        double[] slopes = fit.slopesInRefit();
        return slopes[0] + slopes[1] / lowest(fit);
    }

    private double slopeInDay(double a, double b) {
        NestedFit fit = new NestedFit(sums, a, b);
        double[] slopes = fit.slopesInDay();
        return slopes[0] + slopes[1] / lowest(fit);
    }

    private double criterion(double a, double b) {
        NestedFit fit = new NestedFit(sums, a, b);
        int df = sums.values() - 1;
        return df * (Math.log(2 * Math.PI * lowest(fit)) + 1) + fit.logDeterminants();
    }

    private NestedEstimate estimate(double a, double b) {
        NestedFit fit = new NestedFit(sums, a, b);
        double lowest = lowest(fit);
        double[] spread = spread(fit.information());
        return new NestedEstimate(new NestedEstimate.Component(lowest, lowest * spread[0]),
                installsVary ? Optional.of(new NestedEstimate.Component(a * lowest, lowest * spread[1])) : Optional.empty(),
                sessionsVary ? Optional.of(new NestedEstimate.Component(b * lowest, lowest * spread[2])) : Optional.empty(),
                fit.mean(), Math.sqrt(lowest / fit.total()), criterion(a, b));
    }

    /** Standard errors of the variances in units of s_p²: roots of the diagonal of the inverse information on those in the model. */
    private double[] spread(double[] information) {
        List<Integer> inModel = new ArrayList<>(List.of(0));
        if (installsVary) {
            inModel.add(1);
        }
        if (sessionsVary) {
            inModel.add(2);
        }
        int p = inModel.size();
        double[] matrix = new double[p * p];
        for (int j = 0; j < p; j++) {
            for (int k = 0; k < p; k++) {
                matrix[j * p + k] = information[3 * inModel.get(j) + inModel.get(k)];
            }
        }
        Cholesky factored = Cholesky.of(matrix, p);
        double[] spread = {Double.NaN, Double.NaN, Double.NaN};
        for (int j = 0; j < p; j++) {
            double[] unit = new double[p];
            unit[j] = 1;
            spread[inModel.get(j)] = Math.sqrt(factored.solve(unit)[j]);
        }
        return spread;
    }
}
