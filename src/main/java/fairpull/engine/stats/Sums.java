package fairpull.engine.stats;

/** Sums over arrays. */
final class Sums {
    private Sums() {
    }

    static double product(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    static double length(double[] a) {
        return Math.sqrt(product(a, a));
    }

    static void subtract(double[] from, double factor, double[] what) {
        for (int i = 0; i < from.length; i++) {
            from[i] -= factor * what[i];
        }
    }

    /** The mean, with a second pass that takes out the rounding of the first. */
    static double mean(double[] values) {
        double first = 0;
        for (double value : values) {
            first += value - values[0];
        }
        double mean = values[0] + first / values.length;
        double rest = 0;
        for (double value : values) {
            rest += value - mean;
        }
        return mean + rest / values.length;
    }

    /** Adds factor·a·aᵀ to a square matrix held row by row. */
    static void addOuter(double[] matrix, double factor, double[] a, double[] b) {
        int p = a.length;
        for (int i = 0; i < p; i++) {
            double f = factor * a[i];
            for (int j = 0; j < p; j++) {
                matrix[i * p + j] += f * b[j];
            }
        }
    }

    /** aᵀ·M·b for a square matrix held row by row. */
    static double quadratic(double[] a, double[] matrix, double[] b) {
        int p = a.length;
        double sum = 0;
        for (int i = 0; i < p; i++) {
            double row = 0;
            for (int j = 0; j < p; j++) {
                row += matrix[i * p + j] * b[j];
            }
            sum += a[i] * row;
        }
        return sum;
    }
}
