package fairpull.engine.stats;

import java.util.ArrayList;
import java.util.List;

/**
 * Columns made orthonormal one after the other (Gram–Schmidt, done twice so that rounding does not build up). A column that lies in the
 * span of those before it is left out.
 *
 * @see "Giraud, Langou, Rozložník (2005), The loss of orthogonality in the Gram–Schmidt orthogonalization process"
 */
final class Columns {
    /** A column of which less than this share is new counts as a combination of those before it. */
    static final double NEW_SHARE = 1e-9;

    private final List<double[]> orthonormal = new ArrayList<>();

    private Columns() {
    }

    static Columns of(List<double[]> columns) {
        Columns made = new Columns();
        columns.forEach(made::add);
        return made;
    }

    private void add(double[] column) {
        double[] rest = newPartOf(column);
        double length = Sums.length(rest);
        if (length > 0) {
            for (int i = 0; i < rest.length; i++) {
                rest[i] /= length;
            }
            orthonormal.add(rest);
        }
    }

    /** What of a column lies outside the span; all zero where that is next to nothing. */
    double[] newPartOf(double[] column) {
        double[] rest = column.clone();
        for (int pass = 0; pass < 2; pass++) {
            for (double[] direction : orthonormal) {
                Sums.subtract(rest, Sums.product(direction, rest), direction);
            }
        }
        return Sums.length(rest) > NEW_SHARE * Sums.length(column) ? rest : new double[column.length];
    }

    List<double[]> orthonormal() {
        return orthonormal;
    }
}
