package fairpull.report.chart;

import fairpull.domain.curve.SpeedGrid;
import fairpull.domain.curve.SweptCurve;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A line of the overlay: values in the order of engine speed.
 *
 * @param curve the pull that it is of
 * @param speedsRadPerS ascending
 * @param values one a speed; NaN where there is none
 */
public record OverlayLine(SweptCurve curve, Samples speedsRadPerS, Samples values) {
    /** More rows than this in a column of the panel are drawn as their least and largest. */
    private static final int MOST_A_COLUMN = 4;

    /** {@return the rows of a pull} */
    static OverlayLine rows(SweptCurve curve) {
        return new OverlayLine(curve, curve.speedsRadPerS(), curve.values());
    }

    /** {@return other values of a pull, on a grid} */
    static OverlayLine onGrid(SweptCurve curve, SpeedGrid grid, Samples values) {
        return new OverlayLine(curve, speeds(grid), values);
    }

    private static Samples speeds(SpeedGrid grid) {
        return Samples.of(IntStream.range(0, grid.size()).mapToDouble(grid::at).toArray());
    }

    /** {@return the least and largest value between two speeds; the least above the largest where there is none} */
    double[] range(double lowRadPerS, double highRadPerS) {
        double[] range = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (int row = first(lowRadPerS); row < values.size() && speedsRadPerS.at(row) <= highRadPerS; row++) {
            if (Double.isFinite(values.at(row))) {
                range[0] = Math.min(range[0], values.at(row));
                range[1] = Math.max(range[1], values.at(row));
            }
        }
        return range;
    }

    /** {@return the row whose speed lies nearest; −1 outside of the speeds of the line} */
    public int nearest(double radPerS) {
        int last = speedsRadPerS.size() - 1;
        if (last < 0 || !(radPerS >= speedsRadPerS.at(0) && radPerS <= speedsRadPerS.at(last))) {
            return -1;
        }
        int above = first(radPerS);
        return above > 0 && radPerS - speedsRadPerS.at(above - 1) <= speedsRadPerS.at(above) - radPerS ? above - 1 : above;
    }

    private int first(double radPerS) {
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

    /** {@return the line through values on a grid, one list a stretch without gaps} */
    static List<List<Point>> points(SpeedGrid grid, Samples values, Scale across, Scale up) {
        return points(speeds(grid), values, 0, values.size(), across, up);
    }

    /** {@return the line on a panel, one list a stretch without gaps} */
    List<List<Point>> points(Scale across, Scale up) {
        int from = Math.max(0, first(Units.RPM.toSi(across.from())) - 1);
        int to = Math.min(values.size(), first(Units.RPM.toSi(across.to())) + 1);
        return points(speedsRadPerS, values, from, to, across, up);
    }

    private static List<List<Point>> points(Samples speeds, Samples values, int from, int to, Scale across, Scale up) {
        List<List<Point>> stretches = new ArrayList<>();
        List<Point> stretch = new ArrayList<>();
        int row = from;
        while (row < to) {
            if (!Double.isFinite(values.at(row)) || !isWithin(speeds.at(row), across)) {
                end(stretches, stretch);
                stretch = new ArrayList<>();
                row++;
                continue;
            }
            double x = across.at(Units.RPM.fromSi(speeds.at(row)));
            int behind = row;
            int least = row;
            int largest = row;
            while (behind < to && Double.isFinite(values.at(behind)) && isWithin(speeds.at(behind), across)
                    && across.at(Units.RPM.fromSi(speeds.at(behind))) < Math.floor(x) + 1) {
                least = values.at(behind) < values.at(least) ? behind : least;
                largest = values.at(behind) > values.at(largest) ? behind : largest;
                behind++;
            }
            behind = Math.max(behind, row + 1);
            if (behind - row <= MOST_A_COLUMN) {
                for (int each = row; each < behind; each++) {
                    stretch.add(at(speeds, values, each, across, up));
                }
            } else {
                stretch.add(at(speeds, values, Math.min(least, largest), across, up));
                stretch.add(at(speeds, values, Math.max(least, largest), across, up));
            }
            row = behind;
        }
        end(stretches, stretch);
        return stretches;
    }

    private static boolean isWithin(double radPerS, Scale across) {
        double rpm = Units.RPM.fromSi(radPerS);
        return rpm >= across.from() && rpm <= across.to();
    }

    private static Point at(Samples speeds, Samples values, int row, Scale across, Scale up) {
        return new Point(across.at(Units.RPM.fromSi(speeds.at(row))), up.at(values.at(row)));
    }

    private static void end(List<List<Point>> stretches, List<Point> stretch) {
        if (stretch.size() > 1) {
            stretches.add(Thinning.of(stretch));
        }
    }
}
