package fairpull.engine.stats;

/**
 * A response reduced to sums in a design. The least-squares fit is taken out first, so that neither an offset nor a large effect costs
 * digits of the scatter; its coefficients are kept and added back to what generalised least squares finds in the rest.
 */
public final class ResponseSums {
    private final InstallDesign design;
    private final double origin;
    private final double[] leastSquares;
    private final double[] withinProducts;
    private final double[][] betweenProducts;
    private final double[] betweenSquares;
    private double withinSquares;
    private double pureSquares;

    private ResponseSums(InstallDesign design, double origin, double[] leastSquares) {
        this.design = design;
        this.origin = origin;
        this.leastSquares = leastSquares;
        withinProducts = new double[design.rank()];
        betweenProducts = new double[design.groups()][design.rank()];
        betweenSquares = new double[design.groups()];
    }

    static ResponseSums of(InstallDesign design, double[] values) {
        double origin = Sums.mean(values);
        double[] rest = new double[values.length];
        for (int k = 0; k < rest.length; k++) {
            rest[k] = values[k] - origin;
        }
        double[] fit = new double[design.rank()];
        // the second pass takes out the rounding of the first
        for (int pass = 0; pass < 2; pass++) {
            double[] products = new double[fit.length];
            for (int j = 0; j < fit.length; j++) {
                products[j] = Sums.product(design.basis().get(j), rest);
            }
            double[] step = design.leastSquares(products);
            for (int j = 0; j < fit.length; j++) {
                fit[j] += step[j];
                Sums.subtract(rest, step[j], design.basis().get(j));
            }
        }
        ResponseSums sums = new ResponseSums(design, origin, fit);
        sums.add(rest);
        return sums;
    }

    private void add(double[] rest) {
        int p = design.rank();
        int[] sizes = design.sizes();
        double[] means = new double[sizes.length];
        for (int k = 0; k < rest.length; k++) {
            means[design.installOf(k)] += rest[k] / sizes[design.installOf(k)];
        }
        for (int k = 0; k < rest.length; k++) {
            int i = design.installOf(k);
            double deviation = rest[k] - means[i];
            withinSquares += deviation * deviation;
            for (int j = 0; j < p; j++) {
                withinProducts[j] += deviation * (design.basis().get(j)[k] - design.meanOf(i)[j]);
            }
        }
        for (int i = 0; i < sizes.length; i++) {
            int group = design.groupOf(i);
            betweenSquares[group] += means[i] * means[i];
            for (int j = 0; j < p; j++) {
                betweenProducts[group][j] += means[i] * design.meanOf(i)[j];
            }
        }
        pureSquares = Sums.product(rest, rest);
    }

    /** {@return the residual sum of squares of the plain least-squares fit} */
    public double residualSumOfSquares() {
        return pureSquares;
    }

    /** {@return the sum of squares within installs that remains once the columns are fitted by least squares over all} */
    double withinSquares() {
        return withinSquares;
    }

    /** {@return the design they are taken in} */
    public InstallDesign design() {
        return design;
    }

    /** What was taken off every value before anything else; it belongs to the constant alone. */
    double origin() {
        return origin;
    }

    double[] leastSquares() {
        return leastSquares;
    }

    double[] withinProducts() {
        return withinProducts;
    }

    double[] betweenProducts(int group) {
        return betweenProducts[group];
    }

    double betweenSquares(int group) {
        return betweenSquares[group];
    }
}
