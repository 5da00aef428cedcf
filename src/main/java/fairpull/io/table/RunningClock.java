package fairpull.io.table;

/**
 * Times of day in the order of a file, as seconds that run on: over midnight, and over the hour by which clocks are changed for summer
 * time. An hour is one of those only where the row follows on the one before it as those before did; pulls an hour apart stay apart.
 */
final class RunningClock {
    private static final double DAY_S = 86_400;
    private static final double HOUR_S = 3600;
    /** A row may come so many steps of the rows before after the one before it. */
    private static final double STEPS = 2.5;

    /** What is longer is a pause. */
    private static final double LONGEST_STEP_S = 60;

    private double shift;
    private double last = Double.NaN;
    private double step = Double.NaN;

    /** {@return the time of the next row, given the seconds since midnight} */
    double at(double seconds) {
        double ahead = seconds + shift - last;
        if (ahead < -DAY_S / 2) {
            shift += DAY_S;
        } else if (followsOn(ahead + HOUR_S)) {
            shift += HOUR_S;
        } else if (followsOn(ahead - HOUR_S)) {
            shift -= HOUR_S;
        }
        double now = seconds + shift;
        step = now > last && now - last <= LONGEST_STEP_S ? now - last : step;
        last = now;
        return now;
    }

    private boolean followsOn(double since) {
        return since > 0 && since <= STEPS * step;
    }
}
