package fairpull.engine.heat;

import fairpull.engine.stats.NonlinearModel;
import java.util.OptionalDouble;

/**
 * θ(t) = ambient + Σ aₖ·e^(−t/τₖ). Parameters in order: ln τ of each exponential, then each amplitude, then ambient where it is fitted.
 * In ln τ the curve is nearer to a plane than in τ, and no time constant can become negative.
 *
 * @param timesS seconds
 * @param count how many exponentials
 * @param ambientK the ambient, where it is given
 */
record Exponentials(double[] timesS, int count, OptionalDouble ambientK) implements NonlinearModel {
    int parameterCount() {
        return 2 * count + (ambientK.isPresent() ? 0 : 1);
    }

    double ambientK(double[] parameters) {
        return ambientK.orElseGet(() -> parameters[2 * count]);
    }

    @Override
    public Evaluation at(double[] parameters) {
        double[] values = new double[timesS.length];
        double[][] jacobian = new double[timesS.length][parameterCount()];
        for (int i = 0; i < timesS.length; i++) {
            values[i] = ambientK(parameters);
            for (int k = 0; k < count; k++) {
                double elapsed = timesS[i] / Math.exp(parameters[k]);
                double decay = Math.exp(-elapsed);
                values[i] += parameters[count + k] * decay;
                jacobian[i][k] = decay == 0 ? 0 : parameters[count + k] * decay * elapsed;
                jacobian[i][count + k] = decay;
            }
            if (ambientK.isEmpty()) {
                jacobian[i][2 * count] = 1;
            }
        }
        return new Evaluation(values, jacobian);
    }
}
