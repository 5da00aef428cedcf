package fairpull.engine.curve;

import fairpull.domain.curve.SpeedGrid;
import fairpull.domain.plan.CurveSettings;
import fairpull.domain.unit.Units;
import java.util.Arrays;
import java.util.Collection;
import java.util.Optional;
import java.util.stream.IntStream;

/** The grid on which pulls are compared: the one of the plan, or one over the speeds that all of them cover. */
public final class CommonGrid {
    /** The bandwidth where the plan declares none. */
    public static final double BANDWIDTH_RAD_PER_S = Units.RPM.toSi(100);

    private static final double STEP_RAD_PER_S = Units.RPM.toSi(50);
    /** Sweeps shorter than this many steps, or longer than so many grids of a moderate size, get a step of their own. */
    private static final int FEWEST_STEPS = 20;
    private static final int MOST_STEPS = 400;
    /** What rounding may take from the last step. */
    private static final double ROUNDING = 1e-9;
    private static final double OFF_GRID = 1e-3;

    private CommonGrid() {
    }

    /**
     * The grid of a plan.
     *
     * @throws IllegalArgumentException if it has more speeds than a grid can hold
     */
    public static SpeedGrid of(CurveSettings.Grid declared) {
        double first = declared.fromRadPerS() > 0 ? declared.fromRadPerS() : declared.stepRadPerS();
        return new SpeedGrid(first, declared.stepRadPerS(), size(first, declared.toRadPerS(), declared.stepRadPerS()));
    }

    /**
     * A grid over the speeds that all curves cover, at round speeds: every 50 rpm, finer in a short range and coarser in a long one.
     *
     * @return the grid; empty where there are no two such speeds
     */
    public static Optional<SpeedGrid> over(Collection<Resampled> curves) {
        double low = curves.stream().mapToDouble(Resampled::lowestRadPerS).max().orElse(Double.NaN);
        double high = curves.stream().mapToDouble(Resampled::highestRadPerS).min().orElse(Double.NaN);
        if (!(high > low && high > 0)) {
            return Optional.empty();
        }
        double step = step(high - low);
        double first = Math.max(1, Math.ceil(low / step - ROUNDING)) * step;
        int size = first > high ? 0 : size(first, high, step);
        return size < 2 ? Optional.empty() : Optional.of(new SpeedGrid(first, step, size));
    }

    /**
     * The grid on which points stand: equally spaced speeds, each within a thousandth of a step.
     *
     * @param speedsRadPerS ascending, as often as they come
     * @return the grid; empty where the speeds stand on none
     */
    public static Optional<SpeedGrid> ofPoints(double[] speedsRadPerS) {
        double range = speedsRadPerS[speedsRadPerS.length - 1] - speedsRadPerS[0];
        double least = IntStream.range(1, speedsRadPerS.length).mapToDouble(k -> speedsRadPerS[k] - speedsRadPerS[k - 1])
                .filter(difference -> difference > ROUNDING * range).min().orElse(Double.NaN);
        long steps = Math.round(range / least);
        if (!(steps >= 1) || steps >= SpeedGrid.MOST) {
            return Optional.empty();
        }
        SpeedGrid grid = new SpeedGrid(speedsRadPerS[0], range / steps, (int) steps + 1);
        boolean onGrid = Arrays.stream(speedsRadPerS)
                .allMatch(speed -> Math.abs(speed - grid.at(grid.nearest(speed))) <= OFF_GRID * grid.stepRadPerS());
        return onGrid ? Optional.of(grid) : Optional.empty();
    }

    private static double step(double range) {
        double step = STEP_RAD_PER_S;
        while (range / step > MOST_STEPS) {
            step *= 2;
        }
        while (range / step < FEWEST_STEPS) {
            step /= step == STEP_RAD_PER_S ? 5 : 2;
        }
        return step;
    }

    private static int size(double first, double last, double step) {
        double steps = Math.floor((last - first) / step + ROUNDING);
        return steps >= SpeedGrid.MOST ? Integer.MAX_VALUE : (int) steps + 1;
    }
}
