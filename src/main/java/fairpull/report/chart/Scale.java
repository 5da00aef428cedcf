package fairpull.report.chart;

import java.util.ArrayList;
import java.util.List;

/**
 * A straight axis.
 *
 * @param from the value at the first place
 * @param to the value at the last place, not {@code from}
 * @param start the first place on the drawing
 * @param end the last place on the drawing
 */
public record Scale(double from, double to, double start, double end) {
    public Scale {
        if (!(to > from)) {
            throw new IllegalArgumentException("an axis needs from < to, was " + from + " … " + to);
        }
    }

    /** {@return the place of a value} */
    public double at(double value) {
        return start + (value - from) / (to - from) * (end - start);
    }

    /** {@return the distance between round values, at most {@code most} of them on the axis} */
    public double step(int most) {
        double rough = (to - from) / most;
        double power = Math.pow(10, Math.floor(Math.log10(rough)));
        for (double factor : new double[] {1, 2, 5}) {
            if (factor * power >= rough) {
                return factor * power;
            }
        }
        return 10 * power;
    }

    /** {@return the multiples of {@code step} on the axis} */
    public List<Double> multiples(double step) {
        List<Double> values = new ArrayList<>();
        for (long count = (long) Math.ceil(from / step - 1e-9); count * step <= to + step * 1e-9; count++) {
            values.add(count * step);
        }
        return values;
    }
}
