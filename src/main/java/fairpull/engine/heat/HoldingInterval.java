package fairpull.engine.heat;

import fairpull.domain.heat.CoolDownFit;
import fairpull.domain.heat.FittedMode;
import fairpull.domain.heat.Mode;
import fairpull.domain.heat.SoakPlan.OptionalEnds;
import fairpull.engine.stats.StudentT;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How well the interval that holds is known: the fit's covariance carried to ln P by its gradient (first order, GUM 5.2), the ends by
 * Student's t. In ln P one time constant enters exactly linearly.
 *
 * @see "JCGM 100:2008, Evaluation of measurement data – Guide to the expression of uncertainty in measurement, section 5.2"
 */
public final class HoldingInterval {
    private static final double STEP = 1e-5;

    private HoldingInterval() {
    }

    /**
     * The ends of the interval that holds without warm-ups.
     *
     * @param fit the fitted cool-down
     * @param riseK what a pull adds; empty where the fitted excess at the first reading stands for it
     * @param toleranceK above 0
     * @return both ends in seconds; none where any interval holds or an amplitude leaves no shares
     */
    public static OptionalEnds of(CoolDownFit fit, OptionalDouble riseK, double toleranceK) {
        double[] at = parameters(fit);
        double middle = logInterval(at, fit.modes().size(), riseK, toleranceK);
        double variance = variance(fit, at, riseK, toleranceK);
        if (!Double.isFinite(middle) || !(variance >= 0)) {
            return OptionalEnds.none();
        }
        double reach = StudentT.upperQuantile((1 - fit.level()) / 2, fit.degreesOfFreedom()) * Math.sqrt(variance);
        return new OptionalEnds(OptionalDouble.of(Math.exp(middle - reach)), OptionalDouble.of(Math.exp(middle + reach)));
    }

    private static double[] parameters(CoolDownFit fit) {
        int count = fit.modes().size();
        double[] parameters = new double[2 * count];
        for (int k = 0; k < count; k++) {
            FittedMode mode = fit.modes().get(k);
            parameters[k] = Math.log(mode.timeConstantS());
            parameters[count + k] = mode.amplitudeK();
        }
        return parameters;
    }

    private static double variance(CoolDownFit fit, double[] at, OptionalDouble riseK, double toleranceK) {
        int all = (int) Math.round(Math.sqrt(fit.covariance().size()));
        double[] gradient = new double[at.length];
        for (int j = 0; j < at.length; j++) {
            double step = STEP * Math.max(1, Math.abs(at[j]));
            double[] up = at.clone();
            up[j] += step;
            double[] down = at.clone();
            down[j] -= step;
            gradient[j] = (logInterval(up, at.length / 2, riseK, toleranceK) - logInterval(down, at.length / 2, riseK, toleranceK))
                    / (2 * step);
        }
        double variance = 0;
        for (int i = 0; i < at.length; i++) {
            for (int j = 0; j < at.length; j++) {
                variance += gradient[i] * gradient[j] * fit.covariance().at(i * all + j);
            }
        }
        return variance;
    }

    private static double logInterval(double[] parameters, int count, OptionalDouble riseK, double toleranceK) {
        double whole = 0;
        for (int k = 0; k < count; k++) {
            whole += parameters[count + k];
        }
        List<Mode> modes = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            modes.add(new Mode(Math.exp(parameters[k]), Math.min(1, parameters[count + k] / whole)));
        }
        return Math.log(new RepeatedPulls(modes, riseK.orElse(whole)).shortestInterval(0, toleranceK));
    }
}
