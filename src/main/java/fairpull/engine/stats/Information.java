package fairpull.engine.stats;

/**
 * The expected information on (s_r², s_p²) and the slopes of one contrast's variance, in units of s_p². Index 0 is refit, 1 is pull.
 * With λ = 1 + n·γ, per install: A_r = Σ n²/λ²·x̄x̄ᵀ, A_p = W + Σ n/λ²·x̄x̄ᵀ, and XᵀV⁻¹V_jV⁻¹V_kV⁻¹X = Σ n³/λ³, Σ n²/λ³, W + Σ n/λ³.
 */
final class Information {
    private static final int REFIT = 0;
    private static final int PULL = 1;

    private final double ratio;
    private final double[] weighted;
    private final double variance;
    private final double[] slopes = new double[2];
    private final double[][] information = new double[2][2];
    private final double[][] first;
    private final double[][] second;
    private final Cholesky crossProducts;

    Information(InstallDesign design, double ratio, double[] contrast) {
        this.ratio = ratio;
        crossProducts = Cholesky.of(weighted(design, 1, 1, true), design.rank());
        weighted = crossProducts.solve(contrast);
        variance = Sums.product(contrast, weighted);
        first = new double[][] {weighted(design, 2, 2, false), weighted(design, 1, 2, true)};
        second = new double[][] {weighted(design, 3, 3, false), weighted(design, 2, 3, false), weighted(design, 1, 3, true)};
        double[] traces = traces(design);
        double[][] solved = {crossProducts.solveAll(first[REFIT]), crossProducts.solveAll(first[PULL])};
        for (int j = 0; j < 2; j++) {
            slopes[j] = Sums.quadratic(weighted, first[j], weighted);
            for (int k = 0; k < 2; k++) {
                information[j][k] = 0.5 * (traces[j + k] - 2 * crossProducts.traceOfInverseTimes(second[j + k])
                        + traceOfProduct(solved[j], solved[k], design.rank()));
            }
        }
    }

    /** Σ n^a/λ^b·x̄x̄ᵀ, with the cross products within installs or without. */
    private double[] weighted(InstallDesign design, int a, int b, boolean withinToo) {
        double[] matrix = withinToo ? design.within().clone() : new double[design.rank() * design.rank()];
        for (int g = 0; g < design.groups(); g++) {
            double weight = weight(design.groupSize(g), a, b);
            double[] between = design.between(g);
            for (int i = 0; i < matrix.length; i++) {
                matrix[i] += weight * between[i];
            }
        }
        return matrix;
    }

    private double weight(int n, int a, int b) {
        double lambda = 1 + n * ratio;
        double weight = 1;
        for (int i = 0; i < b; i++) {
            weight *= (i < a ? n : 1) / lambda;
        }
        return weight;
    }

    /** tr(V⁻¹V_jV⁻¹V_k) for refit-refit, refit-pull, pull-pull. */
    private double[] traces(InstallDesign design) {
        double[] traces = new double[3];
        for (int g = 0; g < design.groups(); g++) {
            int n = design.groupSize(g);
            int installs = design.groupCount(g);
            traces[0] += installs * weight(n, 2, 2);
            traces[1] += installs * weight(n, 1, 2);
            traces[2] += installs * (n - 1 + weight(n, 0, 2));
        }
        return traces;
    }

    private static double traceOfProduct(double[] a, double[] b, int p) {
        double trace = 0;
        for (int i = 0; i < p; i++) {
            for (int j = 0; j < p; j++) {
                trace += a[i * p + j] * b[j * p + i];
            }
        }
        return trace;
    }

    /** Variance of the contrast, in units of s_p². */
    double variance() {
        return variance;
    }

    /** Inverse of the information with the records' share, as {rr, rp, pp}; a known component has no variance. */
    double[] covarianceOfVariances(VarianceComponents components, ScatterKnowledge known) {
        double rr = information[REFIT][REFIT]
                + (known.refitDf() > 0 && !known.refitKnown() ? known.refitDf() / (2 * ratio * ratio) : 0);
        double pp = information[PULL][PULL] + (known.pullKnown() ? 0 : known.pullDf() / 2);
        if (known.refitKnown()) {
            return new double[] {0, 0, known.pullKnown() ? 0 : 1 / pp};
        }
        if (known.pullKnown()) {
            return new double[] {1 / rr, 0, 0};
        }
        double rp = information[REFIT][PULL];
        double determinant = rr * pp - rp * rp;
        return new double[] {pp / determinant, -rp / determinant, rr / determinant};
    }

    /** 2·v²/(gᵀ·covariance·g). */
    double degreesOfFreedom(double[] covariance) {
        double spread = slopes[0] * slopes[0] * covariance[0] + 2 * slopes[0] * slopes[1] * covariance[1]
                + slopes[1] * slopes[1] * covariance[2];
        return 2 * variance * variance / spread;
    }

    /** uᵀ·Σ covariance_jk·(Q_jk − A_j·(XᵀV⁻¹X)⁻¹·A_k)·u with u = (XᵀV⁻¹X)⁻¹·contrast, in units of s_p². */
    double adjustment(double[] covariance) {
        double sum = 0;
        for (int j = 0; j < 2; j++) {
            for (int k = 0; k < 2; k++) {
                double[] left = times(first[j]);
                double[] right = crossProducts.solve(times(first[k]));
                sum += covariance[j + k] * (Sums.quadratic(weighted, second[j + k], weighted) - Sums.product(left, right));
            }
        }
        return sum;
    }

    private double[] times(double[] matrix) {
        int p = weighted.length;
        double[] product = new double[p];
        for (int i = 0; i < p; i++) {
            for (int j = 0; j < p; j++) {
                product[i] += matrix[i * p + j] * weighted[j];
            }
        }
        return product;
    }
}
