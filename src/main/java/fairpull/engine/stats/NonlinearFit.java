package fairpull.engine.stats;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularMatrixException;

/**
 * A curve fitted by nonlinear least squares: parameters, what they leave over, and how well they are known.
 *
 * <p>The covariance is the linear approximation s²·(JᵀJ)⁻¹ at the minimum, from the triangle of a QR decomposition of the Jacobian with
 * its columns scaled to length 1, never from JᵀJ itself.
 *
 * @see "Bates and Watts (1988), Nonlinear Regression Analysis and Its Applications, section 2.2"
 */
public final class NonlinearFit {
    /** A scaled column that is left with less than this beyond the others tells its parameter not at all. */
    private static final double COLLINEAR = 1e-12;
    private static final double HIGHEST_OFFSET = 1e-3;

    private final double[] parameters;
    private final double[] residuals;
    private final double[][] unitCovariance;
    private final double residualSumOfSquares;
    private final double relativeOffset;

    private NonlinearFit(double[] parameters, double[] residuals, double[][] unitCovariance, double alongTangent) {
        this.parameters = parameters;
        this.residuals = residuals;
        this.unitCovariance = unitCovariance;
        this.residualSumOfSquares = Sums.product(residuals, residuals);
        this.relativeOffset = alongTangent / Math.sqrt(parameters.length) / residualDeviation();
    }

    /** The fit at a minimum that has been found. */
    static NonlinearFit at(NonlinearModel model, double[] observed, double[] parameters) {
        NonlinearModel.Evaluation evaluation = model.at(parameters.clone());
        double[] residuals = observed.clone();
        Sums.subtract(residuals, 1, evaluation.values());
        int p = parameters.length;
        double[] length = columnLengths(evaluation.jacobian(), p);
        QRDecomposition tangent = new QRDecomposition(scaled(evaluation.jacobian(), length));
        return new NonlinearFit(parameters.clone(), residuals, unitCovariance(tangent.getR().getData(), length),
                alongTangent(tangent, residuals, p));
    }

    /** The length of the residuals' shadow on the tangent plane; infinite where the plane has lost a dimension. */
    private static double alongTangent(QRDecomposition tangent, double[] residuals, int p) {
        try {
            RealVector step = tangent.getSolver().solve(new ArrayRealVector(residuals, false));
            return tangent.getR().getSubMatrix(0, p - 1, 0, p - 1).operate(step).getNorm();
        } catch (SingularMatrixException flat) {
            return Double.POSITIVE_INFINITY;
        }
    }

    private static RealMatrix scaled(double[][] jacobian, double[] length) {
        RealMatrix scaled = new Array2DRowRealMatrix(jacobian.length, length.length);
        for (int i = 0; i < jacobian.length; i++) {
            for (int j = 0; j < length.length; j++) {
                scaled.setEntry(i, j, jacobian[i][j] / length[j]);
            }
        }
        return scaled;
    }

    private static double[][] unitCovariance(double[][] triangle, double[] length) {
        int p = length.length;
        double[][] inverse = inverseOfTriangle(triangle, p);
        double[][] covariance = new double[p][p];
        for (int j = 0; j < p; j++) {
            for (int k = 0; k < p; k++) {
                covariance[j][k] = Sums.product(inverse[j], inverse[k]) / (length[j] * length[k]);
            }
        }
        return covariance;
    }

    /** {@return the lengths of the columns of a matrix} */
    static double[] columnLengths(double[][] matrix, int columns) {
        double[] length = new double[columns];
        for (double[] row : matrix) {
            for (int j = 0; j < columns; j++) {
                length[j] = Math.hypot(length[j], row[j]);
            }
        }
        return length;
    }

    /** R⁻¹, or NaN throughout where a parameter cannot be told apart from the others. */
    private static double[][] inverseOfTriangle(double[][] r, int p) {
        double[][] inverse = new double[p][p];
        for (int column = 0; column < p; column++) {
            for (int i = column; i >= 0; i--) {
                double sum = i == column ? 1 : 0;
                for (int k = i + 1; k <= column; k++) {
                    sum -= r[i][k] * inverse[k][column];
                }
                inverse[i][column] = Math.abs(r[i][i]) > COLLINEAR ? sum / r[i][i] : Double.NaN;
            }
        }
        return inverse;
    }

    /** {@return how many parameters there are} */
    public int size() {
        return parameters.length;
    }

    /** {@return the estimate of a parameter} */
    public double parameter(int index) {
        return parameters[index];
    }

    /** {@return all estimates} */
    public double[] parameters() {
        return parameters.clone();
    }

    /** {@return observed less fitted, in the order of the observations} */
    public double[] residuals() {
        return residuals.clone();
    }

    /** {@return the sum of squared residuals} */
    public double residualSumOfSquares() {
        return residualSumOfSquares;
    }

    /** {@return observations less parameters} */
    public int degreesOfFreedom() {
        return residuals.length - parameters.length;
    }

    /** {@return the residual standard deviation √(RSS/df)} */
    public double residualDeviation() {
        return Math.sqrt(residualSumOfSquares / degreesOfFreedom());
    }

    /** {@return the standard error of a parameter; NaN where the data do not tell it} */
    public double standardError(int index) {
        return Math.sqrt(covariance(index, index));
    }

    /** {@return the covariance of two parameters; NaN where the data do not tell them} */
    public double covariance(int one, int other) {
        return residualSumOfSquares / degreesOfFreedom() * unitCovariance[one][other];
    }

    /** {@return the correlation of two parameters, from −1 to 1; it does not depend on the scatter} */
    public double correlation(int one, int other) {
        return unitCovariance[one][other] / Math.sqrt(unitCovariance[one][one] * unitCovariance[other][other]);
    }

    /**
     * {@return whether the fit stands at a minimum: what is left of the residuals along the tangent plane is below a thousandth of the
     * residual scatter, each per degree of freedom}
     *
     * @see "Bates and Watts (1981), A relative offset orthogonality convergence criterion for nonlinear least squares, Technometrics 23,
     *     179–183"
     */
    public boolean isMinimum() {
        return relativeOffset < HIGHEST_OFFSET || residualSumOfSquares == 0;
    }

    /** {@return whether the data tell every parameter} */
    public boolean isDetermined() {
        for (int j = 0; j < parameters.length; j++) {
            if (!Double.isFinite(unitCovariance[j][j])) {
                return false;
            }
        }
        return true;
    }
}
