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
 * refit scatter, and the degrees of freedom are those of pull scatter alone; no record enters, so it is a property of the table.
 */
final class TippingScatter {
    private static final double ACCURACY = 1e-12;

    private final JudgeSettings settings;
    private final ResponseSums sums;
    private final int column;

    private TippingScatter(ModelTable table, JudgeSettings settings) {
        this.settings = settings;
        boolean identical = table.pullsIdentical();
        sums = identical ? table.sumsOfMeansWithCovariates() : table.sums();
        column = table.partColumn();
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
        while (beyondZero(high) > 0) {
            low = high;
            high *= 2;
        }
        return OptionalDouble.of(Roots.between(this::beyondZero, low, high, ACCURACY));
    }

    /** How far the nearer end of the interval lies beyond 0 with a known refit scatter. */
    private double beyondZero(double refitScatter) {
        TStatement change;
        if (refitScatter == 0) {
            LeastSquares plain = LeastSquares.of(sums, column);
            change = new TStatement(plain.estimate(), plain.standardError(), plain.degreesOfFreedom());
        } else {
            ScatterKnowledge known = ScatterKnowledge.ofRefitKnown(refitScatter * refitScatter);
            VarianceComponents components = Reml.estimate(sums, known);
            ContrastFit fit = ContrastFit.of(sums, components, known, column);
            change = new TStatement(fit.estimate(), fit.standardError(), fit.degreesOfFreedom());
        }
        return nearness(change.change()) - change.reach(settings);
    }

    /** Either direction counts in a two-sided test, only a gain in a one-sided one. */
    private double nearness(double change) {
        return settings.sides() == Sides.TWO ? Math.abs(change) : settings.better().gainOf(change);
    }
}
