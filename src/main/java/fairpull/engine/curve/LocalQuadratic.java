package fairpull.engine.curve;

import fairpull.domain.pull.Samples;

/**
 * Value and slope of a channel over time by a local quadratic: around each row the least-squares fit of c0 + c1·τ + c2·τ², τ = t − t(row),
 * to the rows within half a window on either side, all weighing alike; c0 is the smoothed value, c1 the slope. A channel that is quadratic
 * in time is given back exactly, up to both ends (Savitzky and Golay, Anal. Chem. 36 (1964) 1627, from memory, for rows at any distance).
 * With fewer than three rows in the window there is no slope: NaN.
 */
final class LocalQuadratic {
    private static final double[] NOTHING = {Double.NaN, Double.NaN};

    private final double[] values;
    private final double[] slopes;

    private LocalQuadratic(double[] values, double[] slopes) {
        this.values = values;
        this.slopes = slopes;
    }

    /** Fits a channel; {@code time} must rise from row to row, {@code windowS} be above 0. */
    static LocalQuadratic of(Samples time, Samples samples, double windowS) {
        int rows = time.size();
        double[] values = new double[rows];
        double[] slopes = new double[rows];
        int from = 0;
        int end = 0;
        for (int row = 0; row < rows; row++) {
            while (time.at(from) < time.at(row) - windowS / 2) {
                from++;
            }
            while (end < rows && time.at(end) <= time.at(row) + windowS / 2) {
                end++;
            }
            double[] fitted = end - from < 3 ? NOTHING : fit(time, samples, row, from, end, windowS);
            values[row] = fitted[0];
            slopes[row] = fitted[1];
        }
        return new LocalQuadratic(values, slopes);
    }

    double value(int row) {
        return values[row];
    }

    double slope(int row) {
        return slopes[row];
    }

    /** Normal equations in τ ÷ window, which keeps them well scaled, solved by Cramer's rule. */
    private static double[] fit(Samples time, Samples samples, int row, int from, int end, double windowS) {
        double[] p = new double[5];
        double[] m = new double[3];
        for (int near = from; near < end; near++) {
            double tau = (time.at(near) - time.at(row)) / windowS;
            double step = 1;
            for (int degree = 0; degree < p.length; degree++) {
                p[degree] += step;
                if (degree < m.length) {
                    m[degree] += step * samples.at(near);
                }
                step *= tau;
            }
        }
        double[] first = {p[0], p[1], p[2]};
        double[] second = {p[1], p[2], p[3]};
        double[] third = {p[2], p[3], p[4]};
        double whole = determinant(first, second, third);
        return new double[] {determinant(m, second, third) / whole, determinant(first, m, third) / whole / windowS};
    }

    private static double determinant(double[] a, double[] b, double[] c) {
        return a[0] * (b[1] * c[2] - b[2] * c[1]) - a[1] * (b[0] * c[2] - b[2] * c[0]) + a[2] * (b[0] * c[1] - b[1] * c[0]);
    }
}
