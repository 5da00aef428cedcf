package fairpull.engine.stats;

/** A symmetric positive definite matrix of the size of the fixed effects, held row by row, as L·Lᵀ. */
final class Cholesky {
    private final int p;
    private final double[] lower;

    private Cholesky(int p, double[] lower) {
        this.p = p;
        this.lower = lower;
    }

    /** Factors a matrix; throws IllegalArgumentException where it is not positive definite. */
    static Cholesky of(double[] matrix, int p) {
        double[] l = new double[p * p];
        for (int j = 0; j < p; j++) {
            for (int i = j; i < p; i++) {
                double sum = matrix[i * p + j];
                for (int k = 0; k < j; k++) {
                    sum -= l[i * p + k] * l[j * p + k];
                }
                if (i > j) {
                    l[i * p + j] = sum / l[j * p + j];
                } else if (sum > 0) {
                    l[j * p + j] = Math.sqrt(sum);
                } else {
                    throw new IllegalArgumentException("a matrix of fixed effects is not positive definite");
                }
            }
        }
        return new Cholesky(p, l);
    }

    double logDeterminant() {
        double product = 1;
        double sum = 0;
        for (int j = 0; j < p; j++) {
            product *= lower[j * p + j];
            if (product < 1e-100 || product > 1e100) {
                sum += Math.log(product);
                product = 1;
            }
        }
        return 2 * (sum + Math.log(product));
    }

    double[] solve(double[] right) {
        double[] x = right.clone();
        for (int i = 0; i < p; i++) {
            for (int k = 0; k < i; k++) {
                x[i] -= lower[i * p + k] * x[k];
            }
            x[i] /= lower[i * p + i];
        }
        for (int i = p - 1; i >= 0; i--) {
            for (int k = i + 1; k < p; k++) {
                x[i] -= lower[k * p + i] * x[k];
            }
            x[i] /= lower[i * p + i];
        }
        return x;
    }

    /** The product inverse·matrix, row by row. */
    double[] solveAll(double[] matrix) {
        double[] result = new double[p * p];
        double[] column = new double[p];
        for (int j = 0; j < p; j++) {
            for (int i = 0; i < p; i++) {
                column[i] = matrix[i * p + j];
            }
            double[] solved = solve(column);
            for (int i = 0; i < p; i++) {
                result[i * p + j] = solved[i];
            }
        }
        return result;
    }

    /** Trace of inverse·matrix. */
    double traceOfInverseTimes(double[] matrix) {
        double[] product = solveAll(matrix);
        double trace = 0;
        for (int i = 0; i < p; i++) {
            trace += product[i * p + i];
        }
        return trace;
    }
}
