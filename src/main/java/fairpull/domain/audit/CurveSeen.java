package fairpull.domain.audit;

import fairpull.domain.curve.SpeedRange;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Unit;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * A published curve as it was read, in the order of rising speed.
 *
 * @param unit in which its values were printed
 * @param speedUnit in which its speeds were printed
 * @param speedsRadPerS rising, above 0
 * @param values in SI, one a speed
 * @param speedErrors standard reading error of each speed in rad/s; 0 in a table
 * @param valueErrors standard reading error of each value in SI; 0 in a table
 * @param publishedPoints how many points it was published with; more than it has where it was thinned
 */
public record CurveSeen(Unit unit, Unit speedUnit, Samples speedsRadPerS, Samples values, Samples speedErrors, Samples valueErrors,
        int publishedPoints) {
    public CurveSeen {
        int points = speedsRadPerS.size();
        if (points < 2 || values.size() != points || speedErrors.size() != points || valueErrors.size() != points) {
            throw new IllegalArgumentException("a curve has two points or more, each with its value and its errors");
        }
        if (publishedPoints < points) {
            throw new IllegalArgumentException("a curve has no more points than were published, were " + points + " of "
                    + publishedPoints);
        }
        for (int k = 0; k < points; k++) {
            boolean rising = k == 0 ? speedsRadPerS.at(0) > 0 : speedsRadPerS.at(k) > speedsRadPerS.at(k - 1);
            if (!rising || !Double.isFinite(values.at(k)) || !(speedErrors.at(k) >= 0 && valueErrors.at(k) >= 0)) {
                throw new IllegalArgumentException("the speeds of a curve rise from above 0, its values are finite, its errors 0 or more");
            }
        }
    }

    /** A curve with all of its points. */
    public CurveSeen(Unit unit, Unit speedUnit, Samples speedsRadPerS, Samples values, Samples speedErrors, Samples valueErrors) {
        this(unit, speedUnit, speedsRadPerS, values, speedErrors, valueErrors, values.size());
    }

    /**
     * {@return the curve with no more than so many points, and a few: of a longer one every second, third and so on, its highest point and
     * its last}
     */
    public CurveSeen thinned(int most) {
        int step = (size() + most - 1) / most;
        if (step <= 1) {
            return this;
        }
        int highest = IntStream.range(0, size()).reduce(0, (top, point) -> values.at(point) > values.at(top) ? point : top);
        int[] kept = IntStream.range(0, size()).filter(point -> point % step == 0 || point == highest || point == size() - 1).toArray();
        return new CurveSeen(unit, speedUnit, of(speedsRadPerS, kept), of(values, kept), of(speedErrors, kept), of(valueErrors, kept),
                publishedPoints);
    }

    private static Samples of(Samples samples, int... points) {
        return Samples.of(Arrays.stream(points).mapToDouble(samples::at).toArray());
    }

    /** {@return whether it was read off a picture, so that its points have reading errors} */
    public boolean isTraced() {
        return valueErrors.stream().anyMatch(error -> error > 0);
    }

    /** {@return whether points of it were left out} */
    public boolean isThinned() {
        return size() < publishedPoints;
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
