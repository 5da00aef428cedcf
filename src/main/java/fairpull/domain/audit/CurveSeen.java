package fairpull.domain.audit;

import fairpull.domain.curve.SpeedRange;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Unit;

/**
 * A published curve as it was read, in the order of rising speed.
 *
 * @param unit in which its values were printed
 * @param speedUnit in which its speeds were printed
 * @param speedsRadPerS rising, above 0
 * @param values in SI, one a speed
 * @param speedErrors standard reading error of each speed in rad/s; 0 in a table
 * @param valueErrors standard reading error of each value in SI; 0 in a table
 */
public record CurveSeen(Unit unit, Unit speedUnit, Samples speedsRadPerS, Samples values, Samples speedErrors, Samples valueErrors) {
    public CurveSeen {
        int points = speedsRadPerS.size();
        if (points < 2 || values.size() != points || speedErrors.size() != points || valueErrors.size() != points) {
            throw new IllegalArgumentException("a curve has two points or more, each with its value and its errors");
        }
        for (int k = 0; k < points; k++) {
            boolean rising = k == 0 ? speedsRadPerS.at(0) > 0 : speedsRadPerS.at(k) > speedsRadPerS.at(k - 1);
            if (!rising || !Double.isFinite(values.at(k)) || !(speedErrors.at(k) >= 0 && valueErrors.at(k) >= 0)) {
                throw new IllegalArgumentException("the speeds of a curve rise from above 0, its values are finite, its errors 0 or more");
            }
        }
    }

    /** {@return whether it was read off a picture, so that its points have reading errors} */
    public boolean isTraced() {
        return valueErrors.stream().anyMatch(error -> error > 0);
    }

    /** {@return how many points it has} */
    public int size() {
        return values.size();
    }

    /** {@return the speeds that it covers} */
    public SpeedRange range() {
        return new SpeedRange(speedsRadPerS.at(0), speedsRadPerS.at(size() - 1));
    }
}
