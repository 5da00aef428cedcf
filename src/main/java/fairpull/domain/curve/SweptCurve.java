package fairpull.domain.curve;

import fairpull.domain.plan.Part;
import fairpull.domain.pull.PullId;
import fairpull.domain.pull.Samples;

/**
 * One pull as it was recorded: every row of its sweep, in the order of engine speed.
 *
 * @param pull which one
 * @param part what was fitted
 * @param used whether it counts
 * @param speedsRadPerS ascending
 * @param values one a speed, finite, in the unit of the curves
 */
public record SweptCurve(PullId pull, Part part, boolean used, Samples speedsRadPerS, Samples values) {
    public SweptCurve {
        if (speedsRadPerS.size() != values.size() || values.size() < 2) {
            throw new IllegalArgumentException("a curve needs two rows or more, and a value at each of its speeds");
        }
    }
}
