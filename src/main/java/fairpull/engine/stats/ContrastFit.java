package fairpull.engine.stats;

/**
 * One coefficient of the model at given variances: its value, variance and degrees of freedom.
 *
 * <p>Degrees of freedom are 2·v²/(gᵀI⁻¹g): v the variance of the contrast, g its slopes in the two variances, I the expected information
 * I_jk = ½·tr(P·V_j·P·V_k), with ν/(2·s⁴) added on the diagonal for a record. Both components stay in I where the refit variance is
 * estimated as 0.
 *
 * @see "Satterthwaite (1946), Biometrics Bulletin 2, 110–114; Fai and Cornelius (1996), J. Statist. Comput. Simul. 54, 363–378"
 * @see "Kenward and Roger (1997), Biometrics 53, 983–997, equations 1–5"
 */
public final class ContrastFit {
    private final double estimate;
    private final double variance;
    private final double adjustedVariance;
    private final double degreesOfFreedom;

    private ContrastFit(double estimate, double variance, double adjustedVariance, double degreesOfFreedom) {
        this.estimate = estimate;
        this.variance = variance;
        this.adjustedVariance = adjustedVariance;
        this.degreesOfFreedom = degreesOfFreedom;
    }

    /**
     * The coefficient of a column.
     *
     * @param sums the data in their design
     * @param components the variances
     * @param known what is known of them beforehand
     * @param column index of the column in the design
     * @return the coefficient
     * @throws IllegalArgumentException if the coefficient cannot be told apart from others
     */
    public static ContrastFit of(ResponseSums sums, VarianceComponents components, ScatterKnowledge known, int column) {
        double[] contrast = sums.design().contrastFor(column);
        double[] coefficients = new WeightedFit(sums, components.ratio()).coefficients();
        double estimate = Sums.product(contrast, sums.leastSquares()) + Sums.product(contrast, coefficients)
                + (column == InstallDesign.CONSTANT ? sums.origin() : 0);
        return expected(sums.design(), components, known, contrast).withEstimate(estimate);
    }

    /**
     * What a design is expected to give at given variances; the estimate is 0.
     *
     * @param design the design
     * @param components the variances
     * @param known what is known of them beforehand
     * @param column index of the column in the design
     * @return variance and degrees of freedom of its coefficient
     * @throws IllegalArgumentException if the coefficient cannot be told apart from others
     */
    public static ContrastFit expected(InstallDesign design, VarianceComponents components, ScatterKnowledge known, int column) {
        return expected(design, components, known, design.contrastFor(column));
    }

    private static ContrastFit expected(InstallDesign design, VarianceComponents components, ScatterKnowledge known, double[] contrast) {
        Information information = new Information(design, components.ratio(), contrast);
        double[] covariance = information.covarianceOfVariances(components, known);
        double s = components.pullVariance();
        return new ContrastFit(0, s * information.variance(), s * (information.variance() + 2 * information.adjustment(covariance)),
                information.degreesOfFreedom(covariance));
    }

    private ContrastFit withEstimate(double value) {
        return new ContrastFit(value, variance, adjustedVariance, degreesOfFreedom);
    }

    /** {@return the coefficient} */
    public double estimate() {
        return estimate;
    }

    /** {@return its standard error from (XᵀV⁻¹X)⁻¹} */
    public double standardError() {
        return Math.sqrt(variance);
    }

    /** {@return its standard error with the small-sample adjustment of Kenward and Roger} */
    public double adjustedStandardError() {
        return Math.sqrt(adjustedVariance);
    }

    /** {@return its degrees of freedom; infinity where both variances are known} */
    public double degreesOfFreedom() {
        return degreesOfFreedom;
    }
}
