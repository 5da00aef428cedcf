package fairpull.engine.judging;

import fairpull.domain.finding.JudgeSettings;
import fairpull.domain.plan.Sides;
import fairpull.engine.stats.StudentT;

/**
 * How many standard errors an interval reaches and an equivalence test needs. The last degrees of freedom asked for are remembered, since
 * campaigns of one plan mostly share them; so it is not to be shared between threads.
 */
final class CriticalValues {
    private final double intervalTail;
    private final double equivalenceTail;
    private double intervalDf = Double.NaN;
    private double interval;
    private double equivalenceDf = Double.NaN;
    private double equivalence;

    CriticalValues(JudgeSettings settings) {
        equivalenceTail = settings.errorRate();
        intervalTail = settings.sides() == Sides.TWO ? settings.errorRate() / 2 : settings.errorRate();
    }

    /** t(1 − α/2; ν) when two-sided, t(1 − α; ν) when one-sided. */
    double ofInterval(double degreesOfFreedom) {
        if (degreesOfFreedom != intervalDf) {
            interval = StudentT.upperQuantile(intervalTail, degreesOfFreedom);
            intervalDf = degreesOfFreedom;
        }
        return interval;
    }

    /** t(1 − α; ν): each of the two one-sided tests. */
    double ofEquivalence(double degreesOfFreedom) {
        if (degreesOfFreedom != equivalenceDf) {
            equivalence = StudentT.upperQuantile(equivalenceTail, degreesOfFreedom);
            equivalenceDf = degreesOfFreedom;
        }
        return equivalence;
    }
}
