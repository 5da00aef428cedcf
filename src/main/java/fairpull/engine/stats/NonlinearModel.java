package fairpull.engine.stats;

/** A curve with parameters that do not enter linearly, together with its analytic derivatives. */
@FunctionalInterface
public interface NonlinearModel {
    /**
     * The curve at every observation.
     *
     * @param values one an observation
     * @param jacobian one row an observation, one column a parameter: the derivative of the value by the parameter
     */
    record Evaluation(double[] values, double[][] jacobian) {
    }

    /**
     * Evaluates the curve.
     *
     * @param parameters any numbers; they are not to be changed
     * @return values and derivatives; they may overflow, which counts as a bad fit
     */
    Evaluation at(double[] parameters);
}
