package fairpull.engine.judging;

import fairpull.domain.finding.JudgeSettings;
import fairpull.domain.plan.Sides;
import fairpull.engine.stats.ContrastFit;
import fairpull.engine.stats.LeastSquares;
import fairpull.engine.stats.Reml;
import fairpull.engine.stats.ResponseSums;
import fairpull.engine.stats.Roots;
import fairpull.engine.stats.ScatterKnowledge;
import fairpull.engine.stats.VarianceComponents;
import java.util.OptionalDouble;

/**
 * The refit scatter, were it known, at which the nearer end of the interval reaches 0. Pull scatter is what these data show given that
 * refit scatter, and the degrees of freedom are those of pull scatter alone; no record enters, so it is a property of the table. The
 * pulls of an install bound what pull scatter can be: a refit scatter that the data contradict must not be made up for by pulls.
 */
final class TippingScatter {
    private static final double ACCURACY = 1e-12;
    /** Pull variance is sought up to so many times the variance within installs. */
    private static final double PULL_VARIANCE_AT_MOST = Math.exp(4);

    /** So many steps by √2 without the interval beyond 0, and it will not come back. */
    private static final int CROSSING_FOR_GOOD = 12;

    private final JudgeSettings settings;
    private final ResponseSums sums;
    private final int column;
    private final double pullVarianceAtMost;

    private TippingScatter(ModelTable table, JudgeSettings settings) {
        this.settings = settings;
        boolean identical = table.pullsIdentical();
        sums = identical ? table.sumsOfMeansWithCovariates() : table.sums();
        column = table.partColumn();
        double within = table.oneWay().withinMeanSquare();
        pullVarianceAtMost = within > 0 ? PULL_VARIANCE_AT_MOST * within : Double.POSITIVE_INFINITY;
    }

    /** The scatter; empty where the interval holds 0 with none, or where pull scatter cannot be had. */
    static OptionalDouble of(ModelTable table, JudgeSettings settings) {
        TippingScatter tipping = new TippingScatter(table, settings);
        if (!tipping.sums.design().estimable(tipping.column)) {
            return OptionalDouble.empty();
        }
        if (table.pullsIdentical()) {
            return tipping.withoutPullScatter();
        }
        return table.pullDegreesOfFreedom() < 1 ? OptionalDouble.empty() : tipping.search();
    }

    private OptionalDouble withoutPullScatter() {
        LeastSquares fit = LeastSquares.of(sums, column);
        double reachOfOne = new TStatement(0, Math.sqrt(fit.unitVariance()), Double.POSITIVE_INFINITY).reach(settings);
        double towardsGain = nearness(fit.estimate());
        return towardsGain > 0 ? OptionalDouble.of(towardsGain / reachOfOne) : OptionalDouble.empty();
    }

    private OptionalDouble search() {
        if (!(beyondZero(0) > 0)) {
            return OptionalDouble.empty();
        }
        LeastSquares plain = LeastSquares.of(sums, column);
        double low = 0;
        double high = Math.max(Math.abs(plain.estimate()), Math.sqrt(plain.meanSquare())) / 1024;
        // pull scatter can jump between two minima of its likelihood and the interval with it: the last crossing is the one sought
        double next = high;
        for (int beyond = 0; beyond < CROSSING_FOR_GOOD; next *= Math.sqrt(2)) {
            if (beyondZero(next) > 0) {
                low = next;
                beyond = 0;
            } else {
                high = beyond == 0 ? next : high;
                beyond++;
            }
        }
        return OptionalDouble.of(Roots.between(this::beyondZero, low, high, ACCURACY));
    }

    /** How far the nearer end of the interval lies beyond 0 with a known refit scatter. */
    private double beyondZero(double refitScatter) {
        TStatement change;
        if (refitScatter == 0) {
            LeastSquares plain = LeastSquares.of(sums, column);
            double variance = Math.min(plain.meanSquare(), pullVarianceAtMost);
            change = new TStatement(plain.estimate(), Math.sqrt(variance * plain.unitVariance()), plain.degreesOfFreedom());
        } else {
            double refitVariance = refitScatter * refitScatter;
            VarianceComponents components = Reml.estimateWithin(sums, refitVariance, pullVarianceAtMost);
            ContrastFit fit = ContrastFit.of(sums, components, ScatterKnowledge.ofRefitKnown(refitVariance), column);
            change = new TStatement(fit.estimate(), fit.standardError(), fit.degreesOfFreedom());
        }
        return nearness(change.change()) - change.reach(settings);
    }

    /** Either direction counts in a two-sided test, only a gain in a one-sided one. */
    private double nearness(double change) {
        return settings.sides() == Sides.TWO ? Math.abs(change) : settings.better().gainOf(change);
    }
}
