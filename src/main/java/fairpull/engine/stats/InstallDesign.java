package fairpull.engine.stats;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What the fixed part of the model y = Xβ + Zr + e is made of, reduced to the sums that the fit needs: for each number of pulls per
 * install the cross products of install means, and the cross products within installs. Everything of V = s_p²·I + s_r²·ZZᵀ splits per
 * install of n pulls into the mean direction, eigenvalue s_p² + n·s_r², and the rest, eigenvalue s_p²; so a fit costs as much as there
 * are different numbers of pulls, however many pulls there are. Sums are taken in a basis of the columns, orthonormal to begin with.
 * The constant is always among the columns.
 */
public final class InstallDesign {
    /** The index of the constant, which every design holds. */
    public static final int CONSTANT = -1;

    private final int[] install;
    private final int[] sizes;
    private final List<double[]> columns;
    private final List<double[]> basis;
    private final int[] groupOf;
    private final int[] groupSize;
    private final int[] groupCount;
    private final double[][] between;
    private final double[] within;
    private final double[][] installMeans;
    private final Cholesky gram;
    private final Optional<double[]> contrastOfLast;

    private InstallDesign(int[] install, List<double[]> columns, List<double[]> basis, Optional<double[]> contrastOfLast) {
        this.install = install.clone();
        this.columns = columns;
        this.basis = basis;
        this.contrastOfLast = contrastOfLast;
        sizes = sizes(install);
        int installs = sizes.length;
        groupSize = Arrays.stream(sizes).distinct().sorted().toArray();
        groupCount = new int[groupSize.length];
        groupOf = new int[installs];
        for (int i = 0; i < installs; i++) {
            groupOf[i] = Arrays.binarySearch(groupSize, sizes[i]);
            groupCount[groupOf[i]]++;
        }
        int p = basis.size();
        installMeans = new double[installs][p];
        between = new double[groupSize.length][p * p];
        within = new double[p * p];
        sumUp();
        gram = Cholesky.of(crossProducts(), p);
    }

    /**
     * A design.
     *
     * @param install for each pull the index of its install: 0 … number of installs − 1, each with at least one pull
     * @param columns the columns of X but for the constant, which is always there; they may depend on each other
     * @return the design
     * @throws IllegalArgumentException if an install has no pull or a column another length
     */
    public static InstallDesign of(int[] install, List<double[]> columns) {
        if (Arrays.stream(sizes(install)).anyMatch(size -> size == 0)) {
            throw new IllegalArgumentException("every install needs a pull");
        }
        for (double[] column : columns) {
            if (column.length != install.length) {
                throw new IllegalArgumentException("a column has " + column.length + " entries for " + install.length + " pulls");
            }
        }
        double[] constant = new double[install.length];
        Arrays.fill(constant, 1);
        List<double[]> all = new ArrayList<>();
        all.add(constant);
        all.addAll(columns);
        List<double[]> basis = GradedBasis.of(install, all);
        return new InstallDesign(install, all, basis, contrast(all, basis, all.size() - 1));
    }

    /**
     * The design of the install means: one row an install, the means of the columns, all installs weighted alike.
     *
     * @param install as in {@link #of}
     * @param columns as in {@link #of}
     * @return a design with one pull per install
     */
    public static InstallDesign ofMeans(int[] install, List<double[]> columns) {
        int[] index = new int[sizes(install).length];
        Arrays.setAll(index, i -> i);
        List<double[]> means = new ArrayList<>();
        for (double[] column : columns) {
            means.add(OneWay.of(install, column).means());
        }
        return of(index, means);
    }

    /**
     * This design without one pull. The basis stays, so that only sums have to be taken anew.
     *
     * @param pull index of the pull
     * @return the design; empty where the pull is its install's only one or a column can be told apart by it alone
     */
    public Optional<InstallDesign> without(int pull) {
        double[] row = basis.stream().mapToDouble(direction -> direction[pull]).toArray();
        double leverage = Sums.product(row, gram.solve(row));
        if (sizes[install[pull]] == 1 || 1 - leverage < Columns.NEW_SHARE) {
            return Optional.empty();
        }
        int[] rest = new int[install.length - 1];
        System.arraycopy(install, 0, rest, 0, pull);
        System.arraycopy(install, pull + 1, rest, pull, rest.length - pull);
        return Optional.of(new InstallDesign(rest, without(columns, pull), without(basis, pull), contrastOfLast));
    }

    private static List<double[]> without(List<double[]> columns, int pull) {
        List<double[]> rest = new ArrayList<>();
        for (double[] column : columns) {
            double[] shorter = Arrays.copyOf(column, column.length - 1);
            System.arraycopy(column, pull + 1, shorter, pull, shorter.length - pull);
            rest.add(shorter);
        }
        return rest;
    }

    private static int[] sizes(int[] install) {
        int[] sizes = new int[Arrays.stream(install).max().orElse(-1) + 1];
        for (int i : install) {
            sizes[i]++;
        }
        return sizes;
    }

    private double[] crossProducts() {
        double[] sum = within.clone();
        for (int g = 0; g < groups(); g++) {
            for (int i = 0; i < sum.length; i++) {
                sum[i] += groupSize[g] * between[g][i];
            }
        }
        return sum;
    }

    private void sumUp() {
        int p = rank();
        double[] row = new double[p];
        for (int k = 0; k < install.length; k++) {
            for (int j = 0; j < p; j++) {
                installMeans[install[k]][j] += basis.get(j)[k] / sizes[install[k]];
            }
        }
        for (int k = 0; k < install.length; k++) {
            for (int j = 0; j < p; j++) {
                row[j] = basis.get(j)[k] - installMeans[install[k]][j];
            }
            Sums.addOuter(within, 1, row, row);
        }
        for (int i = 0; i < sizes.length; i++) {
            Sums.addOuter(between[groupOf[i]], 1, installMeans[i], installMeans[i]);
        }
    }

    /** {@return the design of the install means with all columns of this one} */
    public InstallDesign ofMeans() {
        return ofMeans(install, columns.subList(1, columns.size()));
    }

    /** {@return number of pulls} */
    public int pulls() {
        return install.length;
    }

    /** {@return number of installs} */
    public int installs() {
        return sizes.length;
    }

    /** {@return rank of X} */
    public int rank() {
        return basis.size();
    }

    /** {@return whether the coefficient of a column can be told apart from the others} */
    public boolean estimable(int column) {
        return contrast(column).isPresent();
    }

    /** {@return pulls per install where all installs have equally many} */
    public OptionalInt equalPulls() {
        return groupSize.length == 1 ? OptionalInt.of(groupSize[0]) : OptionalInt.empty();
    }

    /** Whether every column is constant within installs: pulls then carry nothing on them beyond their mean. */
    boolean withinVanishes() {
        double largest = 0;
        for (double product : within) {
            largest = Math.max(largest, Math.abs(product));
        }
        return largest < 1e-24;
    }

    /**
     * The sums of a response, all of the data that a fit needs.
     *
     * @param values one a pull
     * @return its sums in this design
     */
    public ResponseSums sumsOf(double[] values) {
        return ResponseSums.of(this, values);
    }

    /**
     * What plain least squares leaves over.
     *
     * @param values one a pull
     * @return values less the fit of all columns
     */
    public double[] residuals(double[] values) {
        double[] rest = values.clone();
        // the second pass takes out the rounding of the first
        for (int pass = 0; pass < 2; pass++) {
            double[] products = basis.stream().mapToDouble(direction -> Sums.product(direction, rest)).toArray();
            double[] step = leastSquares(products);
            for (int j = 0; j < step.length; j++) {
                Sums.subtract(rest, step[j], basis.get(j));
            }
        }
        return rest;
    }

    /**
     * The combination of basis coefficients that gives the coefficient of a column: with z what of the column lies outside the span of
     * the others, the coefficient of any vector y of the whole span is zᵀy/zᵀz.
     */
    double[] contrastFor(int column) {
        return contrast(column).orElseThrow(
                () -> new IllegalArgumentException("the coefficient of column " + column + " cannot be told apart from others"));
    }

    /** The last column is the one usually asked about, and asked again for every set of values; its answer is kept. */
    private Optional<double[]> contrast(int column) {
        return column == columns.size() - 2 ? contrastOfLast : contrast(columns, basis, column + 1);
    }

    private static Optional<double[]> contrast(List<double[]> columns, List<double[]> basis, int column) {
        List<double[]> others = new ArrayList<>(columns);
        double[] asked = others.remove(column);
        double[] part = Columns.of(others).newPartOf(asked);
        double squares = Sums.product(part, part);
        return squares == 0 ? Optional.empty()
                : Optional.of(basis.stream().mapToDouble(direction -> Sums.product(direction, part) / squares).toArray());
    }

    /** Coefficients of least squares from the products of a vector with the basis. */
    double[] leastSquares(double[] products) {
        return gram.solve(products);
    }

    int installOf(int pull) {
        return install[pull];
    }

    int[] sizes() {
        return sizes;
    }

    int groupOf(int installIndex) {
        return groupOf[installIndex];
    }

    int groups() {
        return groupSize.length;
    }

    int groupSize(int group) {
        return groupSize[group];
    }

    int groupCount(int group) {
        return groupCount[group];
    }

    /** Sum over the group's installs of x̄x̄ᵀ. */
    double[] between(int group) {
        return between[group];
    }

    /** Sum over all pulls of (x − x̄)(x − x̄)ᵀ. */
    double[] within() {
        return within;
    }

    double[] meanOf(int installIndex) {
        return installMeans[installIndex];
    }

    List<double[]> basis() {
        return basis;
    }
}
