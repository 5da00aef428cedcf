package fairpull.engine.stats;

import java.util.ArrayList;
import java.util.List;

/**
 * A basis for the span of the columns in which those combinations that are constant within installs come first and are so exactly, and
 * the others keep something of their own within installs. When one scatter is far larger than the other the two kinds are weighted
 * quite differently; kept apart, neither loses digits to the other.
 */
final class GradedBasis {
    private final int[] install;
    private final List<double[]> constant = new ArrayList<>();
    private final List<double[]> varying = new ArrayList<>();
    private final List<double[]> deviations = new ArrayList<>();

    private GradedBasis(int[] install) {
        this.install = install;
    }

    /** The orthonormal basis. */
    static List<double[]> of(int[] install, List<double[]> columns) {
        GradedBasis basis = new GradedBasis(install);
        columns.forEach(basis::add);
        List<double[]> ordered = new ArrayList<>(basis.constant);
        ordered.addAll(basis.varying);
        return Columns.of(ordered).orthonormal();
    }

    /** Takes out of a column what earlier ones do within installs; where nothing remains within, its install means are what is new. */
    private void add(double[] column) {
        double[] rest = column.clone();
        double[] within = OneWay.of(install, column).deviations();
        double length = Sums.length(within);
        for (int pass = 0; pass < 2; pass++) {
            for (int j = 0; j < varying.size(); j++) {
                double share = Sums.product(deviations.get(j), within) / Sums.product(deviations.get(j), deviations.get(j));
                Sums.subtract(within, share, deviations.get(j));
                Sums.subtract(rest, share, varying.get(j));
            }
        }
        if (Sums.length(within) > Columns.NEW_SHARE * length && length > Columns.NEW_SHARE * Sums.length(column)) {
            varying.add(rest);
            deviations.add(within);
        } else {
            double[] means = OneWay.of(install, rest).means();
            for (int k = 0; k < rest.length; k++) {
                rest[k] = means[install[k]];
            }
            constant.add(rest);
        }
    }
}
