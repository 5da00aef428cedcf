package fairpull.engine.stats;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The columns of a design made orthonormal one after the other (Gram–Schmidt, done twice so that rounding does not build up). A column
 * that lies in the span of those before it is left out.
 *
 * @see "Giraud, Langou, Rozložník (2005), The loss of orthogonality in the Gram–Schmidt orthogonalization process"
 */
final class Columns {
    /** A column of which less than this share is new counts as a combination of those before it. */
    static final double NEW_SHARE = 1e-9;

    private final List<double[]> orthonormal = new ArrayList<>();
    private final List<double[]> coefficients = new ArrayList<>();
    private final int[] place;

    private Columns(int count) {
        place = new int[count];
        Arrays.fill(place, -1);
    }

    static Columns of(List<double[]> columns) {
        Columns made = new Columns(columns.size());
        for (int k = 0; k < columns.size(); k++) {
            made.add(k, columns.get(k));
        }
        return made;
    }

    private void add(int k, double[] column) {
        double[] rest = column.clone();
        double[] shares = new double[orthonormal.size() + 1];
        double length = Sums.length(rest);
        for (int pass = 0; pass < 2; pass++) {
            for (int j = 0; j < orthonormal.size(); j++) {
                double share = Sums.product(orthonormal.get(j), rest);
                shares[j] += share;
                Sums.subtract(rest, share, orthonormal.get(j));
            }
        }
        double left = Sums.length(rest);
        if (!(left > NEW_SHARE * length)) {
            return;
        }
        shares[orthonormal.size()] = left;
        for (int i = 0; i < rest.length; i++) {
            rest[i] /= left;
        }
        place[k] = orthonormal.size();
        orthonormal.add(rest);
        coefficients.add(shares);
    }

    /** {@return the number of columns that are not combinations of others} */
    int rank() {
        return orthonormal.size();
    }

    boolean kept(int column) {
        return place[column] >= 0;
    }

    List<double[]> orthonormal() {
        return orthonormal;
    }

    /**
     * The combination of coefficients of the orthonormal columns that gives the coefficient of an original one: R⁻ᵀ e.
     *
     * @param column index of a kept column
     */
    double[] contrastFor(int column) {
        int p = rank();
        double[] contrast = new double[p];
        contrast[place[column]] = 1;
        // forward substitution in Rᵀ c = e; coefficients.get(j) is column j of R
        for (int j = 0; j < p; j++) {
            double[] r = coefficients.get(j);
            double sum = contrast[j];
            for (int i = 0; i < j; i++) {
                sum -= r[i] * contrast[i];
            }
            contrast[j] = sum / r[j];
        }
        return contrast;
    }
}
