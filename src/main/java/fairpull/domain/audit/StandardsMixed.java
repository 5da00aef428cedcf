package fairpull.domain.audit;

import fairpull.domain.plan.Correction;

/**
 * What quoting one correction before and another after makes of an unchanged car.
 *
 * @param before the correction of the figure before
 * @param after the correction of the figure after
 * @param apparentGain relative, such as 0.04
 */
public record StandardsMixed(Correction before, Correction after, double apparentGain) {
}
