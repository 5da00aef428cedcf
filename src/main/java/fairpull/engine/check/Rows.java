package fairpull.engine.check;

import fairpull.domain.pull.Samples;

/** What the checks do with rows of a channel: values, medians, robust deviations. */
final class Rows {
    private Rows() {
    }

    /** {@return the values of a channel in some rows} */
    static double[] values(Samples samples, int[] rows) {
        double[] values = new double[rows.length];
        for (int i = 0; i < rows.length; i++) {
            values[i] = samples.at(rows[i]);
        }
        return values;
    }

    /** {@return the median; NaN of nothing} */
    static double median(double[] values) {
        return Selection.median(values.clone(), values.length);
    }

    /** {@return the standard deviation of normal values by their median absolute deviation from a centre: 1.4826 × it} */
    static double robustDeviation(double[] values, double centre) {
        double[] deviations = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            deviations[i] = Math.abs(values[i] - centre);
        }
        return 1.4826 * Selection.median(deviations, deviations.length);
    }
}
