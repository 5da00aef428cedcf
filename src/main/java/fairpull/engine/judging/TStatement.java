package fairpull.engine.judging;

import fairpull.domain.finding.Checks.Equivalence;
import fairpull.domain.finding.Estimate;
import fairpull.domain.finding.Interval;
import fairpull.domain.finding.JudgeSettings;
import fairpull.domain.plan.Better;
import fairpull.domain.plan.Sides;
import fairpull.engine.stats.StudentT;

/**
 * A change B − A with its standard error and degrees of freedom, and what follows from them.
 *
 * @param change B − A
 * @param standardError 0 or more
 * @param degreesOfFreedom above 0; infinity is the normal distribution
 */
record TStatement(double change, double standardError, double degreesOfFreedom) {

    Estimate estimate(JudgeSettings settings) {
        double t = ratio(change);
        double p = settings.sides() == Sides.TWO ? StudentT.bothTails(t, degreesOfFreedom)
                : StudentT.upperTail(settings.better().gainOf(t), degreesOfFreedom);
        return new Estimate(change, standardError, degreesOfFreedom, t, p);
    }

    /** Two-sided: change ± t(1 − α/2)·se. One-sided: the near end at 1 − α, no far end. */
    Interval interval(JudgeSettings settings) {
        double level = 1 - settings.errorRate();
        double reach = reach(settings);
        if (settings.sides() == Sides.TWO) {
            return new Interval(level, change - reach, change + reach);
        }
        return settings.better() == Better.MORE ? new Interval(level, change - reach, Double.POSITIVE_INFINITY)
                : new Interval(level, Double.NEGATIVE_INFINITY, change + reach);
    }

    /** How far the interval reaches from the change. */
    double reach(JudgeSettings settings) {
        double tail = settings.sides() == Sides.TWO ? settings.errorRate() / 2 : settings.errorRate();
        return standardError == 0 ? 0 : StudentT.upperQuantile(tail, degreesOfFreedom) * standardError;
    }

    /** The larger p of the tests that the change is above −margin and below +margin. */
    Equivalence equivalence(double margin) {
        double above = StudentT.upperTail(ratio(change + margin), degreesOfFreedom);
        double below = StudentT.cdf(ratio(change - margin), degreesOfFreedom);
        return new Equivalence(margin, Math.max(above, below));
    }

    private double ratio(double difference) {
        return difference == 0 ? 0 : difference / standardError;
    }
}
