package fairpull.report.chart;

/** Steps between the labels of a clock. */
final class ClockSteps {
    private static final int[] MINUTES = {1, 2, 5, 10, 15, 30, 60, 120, 240, 480, 1440};

    private ClockSteps() {
    }

    /** {@return the shortest step that is at least so long, in minutes; a day where none is} */
    static int atLeast(double minutes) {
        for (int step : MINUTES) {
            if (step >= minutes) {
                return step;
            }
        }
        return MINUTES[MINUTES.length - 1];
    }
}
