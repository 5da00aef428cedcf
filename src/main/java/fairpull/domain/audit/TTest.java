package fairpull.domain.audit;

import fairpull.domain.finding.Interval;

/**
 * A t test of values that were published one by one.
 *
 * @param paired whether each value before belongs to one after
 * @param difference mean after − mean before
 * @param standardError of the difference
 * @param degreesOfFreedom behind it
 * @param t difference ÷ standard error
 * @param pValue two-sided
 * @param interval of the difference, 95 %
 */
public record TTest(boolean paired, double difference, double standardError, double degreesOfFreedom, double t, double pValue,
        Interval interval) {
}
