package fairpull.engine.curve;

import fairpull.domain.pull.Samples;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * When the throttle is fully open: at {@value #FULL_SHARE} or more of its largest steady opening, the largest that
 * {@value #STEADY_ROWS} rows running do not fall below, so that one wild reading sets no standard. Common practice, no source.
 */
final class Throttle {
    static final double FULL_SHARE = 0.98;
    static final int STEADY_ROWS = 3;

    private final Samples opening;
    private final double full;

    private Throttle(Samples opening, double full) {
        this.opening = opening;
        this.full = full;
    }

    static Throttle of(Samples opening) {
        return new Throttle(opening, FULL_SHARE * steady(opening, 0, opening.size() - 1).orElse(Double.NaN));
    }

    /** {@return the largest value that some rows running between two rows do not fall below; empty if none is above 0} */
    static OptionalDouble steady(Samples samples, int first, int last) {
        double largest = 0;
        for (int row = first; row + STEADY_ROWS - 1 <= last; row++) {
            double least = Double.POSITIVE_INFINITY;
            for (int near = row; near < row + STEADY_ROWS; near++) {
                least = Double.isFinite(samples.at(near)) ? Math.min(least, samples.at(near)) : Double.NEGATIVE_INFINITY;
            }
            largest = Math.max(largest, least);
        }
        return largest > 0 ? OptionalDouble.of(largest) : OptionalDouble.empty();
    }

    /** {@return the opening that counts as full; NaN if it never opens} */
    double full() {
        return full;
    }

    /**
     * {@return the stretches of full throttle, first and last row of each, in order} A stretch ends where {@value #STEADY_ROWS} rows
     * running are below full; missing readings are passed over, and one row alone is none.
     */
    List<Sweep> stretches() {
        List<Sweep> stretches = new ArrayList<>();
        int first = -1;
        int last = -1;
        int below = 0;
        for (int row = 0; row < opening.size(); row++) {
            if (opening.at(row) >= full) {
                first = first < 0 ? row : first;
                last = row;
                below = 0;
            } else if (opening.at(row) < full && ++below == STEADY_ROWS) {
                add(stretches, first, last);
                first = -1;
                last = -1;
            }
        }
        add(stretches, first, last);
        return stretches;
    }

    private static void add(List<Sweep> stretches, int first, int last) {
        if (last > first) {
            stretches.add(new Sweep(first, last));
        }
    }
}
