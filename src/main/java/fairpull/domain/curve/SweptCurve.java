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

    /** {@return the row whose speed lies nearest; −1 outside of the speeds of the sweep} */
    public int nearest(double radPerS) {
        int last = speedsRadPerS.size() - 1;
        if (!(radPerS >= speedsRadPerS.at(0) && radPerS <= speedsRadPerS.at(last))) {
            return -1;
        }
        int above = first(radPerS);
        return above > 0 && radPerS - speedsRadPerS.at(above - 1) <= speedsRadPerS.at(above) - radPerS ? above - 1 : above;
    }

    /** {@return the first row at or above a speed; one behind the last where there is none} */
    public int first(double radPerS) {
        int low = 0;
        int high = speedsRadPerS.size();
        while (low < high) {
            int middle = low + high >>> 1;
            if (speedsRadPerS.at(middle) < radPerS) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
