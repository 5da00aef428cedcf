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
        return interval(settings, new CriticalValues(settings));
    }

    Interval interval(JudgeSettings settings, CriticalValues criticals) {
        double level = 1 - settings.errorRate();
        double reach = reach(criticals);
        if (settings.sides() == Sides.TWO) {
            return new Interval(level, change - reach, change + reach);
        }
        return settings.better() == Better.MORE ? new Interval(level, change - reach, Double.POSITIVE_INFINITY)
                : new Interval(level, Double.NEGATIVE_INFINITY, change + reach);
    }

    /** How far the interval reaches from the change. */
    double reach(JudgeSettings settings) {
        return reach(new CriticalValues(settings));
    }

    private double reach(CriticalValues criticals) {
        return standardError == 0 ? 0 : criticals.ofInterval(degreesOfFreedom) * standardError;
    }

    /** Whether both one-sided tests of {@link #equivalence} stay below the error rate: |change| + t(1 − α)·se below the margin. */
    boolean isWithin(double margin, CriticalValues criticals) {
        double reach = standardError == 0 ? 0 : criticals.ofEquivalence(degreesOfFreedom) * standardError;
        return Math.abs(change) + reach < margin;
    }

    /** The statement if every pull of B were higher by so much. */
    TStatement plus(double added) {
        return new TStatement(change + added, standardError, degreesOfFreedom);
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
