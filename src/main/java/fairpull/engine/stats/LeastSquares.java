package fairpull.engine.stats;

/**
 * One coefficient by plain least squares, all rows weighted alike: the regression on install means that anyone can redo.
 *
 * @param estimate the coefficient
 * @param unitVariance its variance where the residual variance is 1
 * @param residualSumOfSquares what the columns leave over
 * @param degreesOfFreedom rows less rank
 */
public record LeastSquares(double estimate, double unitVariance, double residualSumOfSquares, int degreesOfFreedom) {
    /**
     * The coefficient of a column.
     *
     * @param sums the data in their design
     * @param column index of the column
     * @return the fit
     * @throws IllegalArgumentException if the coefficient cannot be told apart from others
     */
    public static LeastSquares of(ResponseSums sums, int column) {
        InstallDesign design = sums.design();
        double[] contrast = design.contrastFor(column);
        double origin = column == InstallDesign.CONSTANT ? sums.origin() : 0;
        return new LeastSquares(origin + Sums.product(contrast, sums.leastSquares()), Sums.product(contrast, design.leastSquares(contrast)),
                sums.residualSumOfSquares(), design.pulls() - design.rank());
    }

    /** {@return the residual mean square; NaN without degrees of freedom} */
    public double meanSquare() {
        return degreesOfFreedom == 0 ? Double.NaN : residualSumOfSquares / degreesOfFreedom;
    }

    /** {@return the standard error of the coefficient; NaN without degrees of freedom} */
    public double standardError() {
        return Math.sqrt(meanSquare() * unitVariance);
    }
}
