package fairpull.engine.stats;

import java.util.Arrays;

/**
 * Ordinary least squares on few out of many columns, quickly: the sums of products of all pairs are taken once. Good for starting values;
 * near-parallel columns cost digits.
 */
public final class LinearColumns {
    private final double[][] products;
    private final double[] withResponse;
    private final double responseSquared;

    private LinearColumns(double[][] products, double[] withResponse, double responseSquared) {
        this.products = products;
        this.withResponse = withResponse;
        this.responseSquared = responseSquared;
    }

    /**
     * Takes the sums of products.
     *
     * @param columns each as long as the response
     * @param response what is to be explained
     * @return the sums, ready for any choice of columns
     */
    public static LinearColumns of(double[][] columns, double[] response) {
        int count = columns.length;
        double[][] products = new double[count][count];
        double[] withResponse = new double[count];
        for (int j = 0; j < count; j++) {
            withResponse[j] = Sums.product(columns[j], response);
            for (int k = 0; k <= j; k++) {
                products[j][k] = Sums.product(columns[j], columns[k]);
                products[k][j] = products[j][k];
            }
        }
        return new LinearColumns(products, withResponse, Sums.product(response, response));
    }

    /**
     * {@return the coefficients of the chosen columns; NaN where they are parallel}
     *
     * @param chosen indices of columns
     */
    public double[] coefficients(int[] chosen) {
        int p = chosen.length;
        double[] matrix = new double[p * p];
        double[] right = new double[p];
        for (int j = 0; j < p; j++) {
            right[j] = withResponse[chosen[j]];
            for (int k = 0; k < p; k++) {
                matrix[j * p + k] = products[chosen[j]][chosen[k]];
            }
        }
        try {
            return Cholesky.of(matrix, p).solve(right);
        } catch (IllegalArgumentException parallel) {
            double[] unknown = new double[p];
            Arrays.fill(unknown, Double.NaN);
            return unknown;
        }
    }

    /**
     * {@return what the chosen columns leave over; infinity where they are parallel}
     *
     * @param chosen indices of columns
     */
    public double residualSumOfSquares(int[] chosen) {
        double sum = responseSquared;
        double[] coefficients = coefficients(chosen);
        for (int j = 0; j < chosen.length; j++) {
            sum -= coefficients[j] * withResponse[chosen[j]];
        }
        return Double.isNaN(sum) ? Double.POSITIVE_INFINITY : sum;
    }
}
