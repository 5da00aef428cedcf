package fairpull.engine.stats;

/**
 * Generalised least squares at one ratio γ = s_r²/s_p², with s_p² = 1: the pieces of the restricted likelihood and of its slope in γ.
 * H = I + γ·ZZᵀ has on the mean direction of an install of n pulls the eigenvalue λ = 1 + n·γ.
 */
final class WeightedFit {
    private final ResponseSums sums;
    private final double ratio;
    private final Cholesky crossProducts;
    private final double[] coefficients;
    private final double quadraticForm;

    /** XᵀH⁻¹X = W + Σ n/λ·x̄x̄ᵀ, likewise for the response; r = y − Xb. */
    WeightedFit(ResponseSums sums, double ratio) {
        this.sums = sums;
        this.ratio = ratio;
        InstallDesign design = sums.design();
        int p = design.rank();
        double[] matrix = design.within().clone();
        double[] right = sums.withinProducts().clone();
        double squares = sums.withinSquares();
        for (int g = 0; g < design.groups(); g++) {
            double weight = design.groupSize(g) / lambda(g);
            addTimes(matrix, weight, design.between(g));
            addTimes(right, weight, sums.betweenProducts(g));
            squares += weight * sums.betweenSquares(g);
        }
        crossProducts = Cholesky.of(matrix, p);
        coefficients = crossProducts.solve(right);
        quadraticForm = Math.max(0, squares - Sums.product(coefficients, right));
    }

    private static void addTimes(double[] to, double factor, double[] what) {
        for (int i = 0; i < to.length; i++) {
            to[i] += factor * what[i];
        }
    }

    private double lambda(int group) {
        return 1 + sums.design().groupSize(group) * ratio;
    }

    double ratio() {
        return ratio;
    }

    /** Coefficients of the basis, to be added to those of least squares. */
    double[] coefficients() {
        return coefficients;
    }

    /** rᵀH⁻¹r. */
    double quadraticForm() {
        return quadraticForm;
    }

    /** ln|H| + ln|XᵀH⁻¹X|. */
    double logDeterminants() {
        double sum = crossProducts.logDeterminant();
        for (int g = 0; g < sums.design().groups(); g++) {
            sum += sums.design().groupCount(g) * Math.log(lambda(g));
        }
        return sum;
    }

    /** Slope of {@link #quadraticForm()} in γ: −Σ n²/λ²·r̄², by the envelope theorem. */
    double quadraticFormSlope() {
        double slope = 0;
        InstallDesign design = sums.design();
        for (int g = 0; g < design.groups(); g++) {
            double weight = design.groupSize(g) / lambda(g);
            double squares = sums.betweenSquares(g) - 2 * Sums.product(coefficients, sums.betweenProducts(g))
                    + Sums.quadratic(coefficients, design.between(g), coefficients);
            slope -= weight * weight * Math.max(0, squares);
        }
        return slope;
    }

    /** Slope of {@link #logDeterminants()} in γ: Σ n/λ − tr((XᵀH⁻¹X)⁻¹·Σ n²/λ²·x̄x̄ᵀ). */
    double logDeterminantsSlope() {
        double slope = 0;
        InstallDesign design = sums.design();
        double[] matrix = new double[design.rank() * design.rank()];
        for (int g = 0; g < design.groups(); g++) {
            double weight = design.groupSize(g) / lambda(g);
            slope += design.groupCount(g) * weight;
            addTimes(matrix, weight * weight, design.between(g));
        }
        return slope - crossProducts.traceOfInverseTimes(matrix);
    }
}
