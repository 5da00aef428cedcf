package fairpull.engine.stats;

import java.util.Arrays;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresProblem;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularMatrixException;
import org.apache.commons.math3.util.Pair;

/**
 * Nonlinear least squares by Levenberg–Marquardt with analytic derivatives.
 *
 * <p>Parameters are scaled by their starting values. A first step that is too long can throw an exponential into a flat far field from
 * which no step returns, so the search is made with several bounds on the first step and the lowest minimum is kept; Gauss–Newton
 * steps then take it to the digits that the data hold.
 *
 * <p>Checked against: published/nist-strd-nonlinear.
 *
 * @see "Moré (1978), The Levenberg–Marquardt algorithm: implementation and theory, Lecture Notes in Mathematics 630, 105–116"
 */
public final class LevenbergMarquardt {
    private static final double[] FIRST_STEP_BOUNDS = {100, 10, 1, 0.1};
    private static final double COST_TOLERANCE = 1e-14;
    private static final double PARAMETER_TOLERANCE = 1e-13;
    private static final double ORTHOGONALITY_TOLERANCE = 1e-14;
    private static final double RANK_THRESHOLD = Double.MIN_NORMAL;
    private static final int MOST_EVALUATIONS = 1500;
    private static final int MOST_POLISHING_STEPS = 40;
    private static final double STEP_TOLERANCE = 1e-13;
    private static final int MOST_HALVINGS = 12;

    private final NonlinearModel model;
    private final double[] observed;
    private final double[] scale;
    private double[] best;
    private double least = Double.POSITIVE_INFINITY;

    private LevenbergMarquardt(NonlinearModel model, double[] observed, double[] start) {
        this.model = model;
        this.observed = observed;
        this.best = start.clone();
        this.scale = Arrays.stream(start).map(value -> value == 0 ? 1 : Math.abs(value)).toArray();
    }

    /**
     * Fits a curve.
     *
     * @param model the curve and its derivatives
     * @param observed what was observed, finite, more values than parameters
     * @param start starting values, finite, at which the curve is finite too
     * @return the fit at the lowest point found from there; {@link NonlinearFit#isMinimum()} says whether it is a minimum
     * @throws IllegalArgumentException if there are too few observations or a number is not finite
     */
    public static NonlinearFit fit(NonlinearModel model, double[] observed, double[] start) {
        if (observed.length <= start.length) {
            throw new IllegalArgumentException(start.length + " parameters need more observations than " + observed.length);
        }
        if (!isFinite(observed) || !isFinite(start) || !isFinite(model.at(start.clone()).values())) {
            throw new IllegalArgumentException("observations, starting values and the curve at them must be finite");
        }
        return new LevenbergMarquardt(model, observed.clone(), start).search(start);
    }

    private NonlinearFit search(double[] start) {
        for (double bound : FIRST_STEP_BOUNDS) {
            descend(start, bound);
        }
        return NonlinearFit.at(model, observed, polished(best));
    }

    /** One search with a bound on its first step. In a valley without a floor it never ends; what it has seen counts. */
    private void descend(double[] start, double firstStepBound) {
        LeastSquaresProblem problem = new LeastSquaresBuilder().start(scaled(start)).target(observed).model(this::evaluated)
                .lazyEvaluation(false).maxEvaluations(MOST_EVALUATIONS).maxIterations(MOST_EVALUATIONS).build();
        try {
            new LevenbergMarquardtOptimizer(firstStepBound, COST_TOLERANCE, PARAMETER_TOLERANCE, ORTHOGONALITY_TOLERANCE, RANK_THRESHOLD)
                    .optimize(problem);
        } catch (MathIllegalStateException endless) {
            return;
        }
    }

    private Pair<RealVector, RealMatrix> evaluated(RealVector point) {
        double[] parameters = unscaled(point.toArray());
        NonlinearModel.Evaluation evaluation = model.at(parameters.clone());
        remember(parameters, evaluation.values());
        return new Pair<>(new ArrayRealVector(evaluation.values(), false), new Array2DRowRealMatrix(scaledColumns(evaluation.jacobian()),
                false));
    }

    private void remember(double[] parameters, double[] values) {
        double[] residuals = observed.clone();
        Sums.subtract(residuals, 1, values);
        double sum = Sums.product(residuals, residuals);
        if (sum < least) {
            least = sum;
            best = parameters;
        }
    }

    /** Gauss–Newton steps, halved where they lead upwards, until they no longer move anything. */
    private double[] polished(double[] found) {
        double[] at = found;
        double sum = sumOfSquares(at);
        for (int count = 0; count < MOST_POLISHING_STEPS; count++) {
            double[] step = gaussNewtonStep(at);
            double share = 1;
            double[] next = moved(at, step, share);
            for (int halving = 0; halving < MOST_HALVINGS && !(sumOfSquares(next) <= sum); halving++) {
                share /= 2;
                next = moved(at, step, share);
            }
            double after = sumOfSquares(next);
            if (!(after <= sum)) {
                return at;
            }
            at = next;
            sum = after;
            if (share * largest(step) < STEP_TOLERANCE) {
                return at;
            }
        }
        return at;
    }

    /** The step in scaled parameters; zero where the data do not tell the parameters apart. */
    private double[] gaussNewtonStep(double[] at) {
        NonlinearModel.Evaluation evaluation = model.at(at.clone());
        double[] residuals = observed.clone();
        Sums.subtract(residuals, 1, evaluation.values());
        double[][] jacobian = scaledColumns(evaluation.jacobian());
        double[] length = NonlinearFit.columnLengths(jacobian, scale.length);
        for (double[] row : jacobian) {
            for (int j = 0; j < row.length; j++) {
                row[j] /= length[j];
            }
        }
        try {
            DecompositionSolver solver = new QRDecomposition(new Array2DRowRealMatrix(jacobian, false)).getSolver();
            double[] step = solver.solve(new ArrayRealVector(residuals, false)).toArray();
            for (int j = 0; j < step.length; j++) {
                step[j] /= length[j];
            }
            return isFinite(step) ? step : new double[scale.length];
        } catch (SingularMatrixException undetermined) {
            return new double[scale.length];
        }
    }

    private double[] moved(double[] from, double[] step, double share) {
        double[] to = from.clone();
        for (int j = 0; j < to.length; j++) {
            to[j] += share * step[j] * scale[j];
        }
        return to;
    }

    /** The largest move of a parameter relative to its scale. */
    private static double largest(double[] step) {
        return Arrays.stream(step).map(Math::abs).max().orElse(0);
    }

    private double sumOfSquares(double[] parameters) {
        double[] residuals = observed.clone();
        Sums.subtract(residuals, 1, model.at(parameters.clone()).values());
        return Sums.product(residuals, residuals);
    }

    private double[][] scaledColumns(double[][] jacobian) {
        double[][] scaledJacobian = new double[jacobian.length][];
        for (int i = 0; i < jacobian.length; i++) {
            scaledJacobian[i] = jacobian[i].clone();
            for (int j = 0; j < scale.length; j++) {
                scaledJacobian[i][j] *= scale[j];
            }
        }
        return scaledJacobian;
    }

    private double[] scaled(double[] parameters) {
        double[] result = parameters.clone();
        for (int j = 0; j < result.length; j++) {
            result[j] /= scale[j];
        }
        return result;
    }

    private double[] unscaled(double[] point) {
        double[] result = point.clone();
        for (int j = 0; j < result.length; j++) {
            result[j] *= scale[j];
        }
        return result;
    }

    private static boolean isFinite(double[] values) {
        return Arrays.stream(values).allMatch(Double::isFinite);
    }
}
