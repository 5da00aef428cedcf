package fairpull.engine.heat;

import fairpull.domain.heat.CoolDownFit;
import fairpull.domain.heat.CoolDownLog;
import fairpull.domain.heat.FittedMode;
import fairpull.domain.pull.Samples;
import fairpull.engine.stats.LevenbergMarquardt;
import fairpull.engine.stats.NonlinearFit;
import fairpull.engine.stats.StudentT;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Fits ambient + Σ aₖ·e^(−t/τₖ) to a logged cool-down. One exponential is a body whose inside keeps up with its surface (Biot number
 * below 0.1); a car is several such bodies.
 *
 * <p>Intervals are symmetric in ln τ, by Student's t; where neighbouring residuals resemble each other, standard errors grow by
 * √((1 + r)/(1 − r)) and the degrees of freedom shrink as {@link SerialCorrelation} says.
 *
 * <p>Checked against: simulated logs with known constants (CoolDownFitterTest), NIST's MGH17 through the same code.
 *
 * @see "Incropera, DeWitt, Bergman and Lavine, Fundamentals of Heat and Mass Transfer, sections 5.1 and 5.2"
 */
final class CoolDownFitter {
    static final double LEVEL = 0.95;

    private final CoolDownLog log;
    private final Exponentials model;
    private final NonlinearFit fit;
    private final SerialCorrelation serial;

    private CoolDownFitter(CoolDownLog log, Exponentials model, NonlinearFit fit) {
        this.log = log;
        this.model = model;
        this.fit = fit;
        this.serial = SerialCorrelation.of(fit.residuals());
    }

    /**
     * Fits one or two exponentials.
     *
     * @param count 1 or 2
     * @param ambientK the ambient, where it is known
     * @return the fit with what decides over it
     * @throws IllegalArgumentException if there are no more readings than parameters
     */
    static CoolDownFitter fit(CoolDownLog log, int count, OptionalDouble ambientK) {
        double[] times = log.timesS().stream().toArray();
        double[] temperatures = log.temperaturesK().stream().toArray();
        Exponentials model = new Exponentials(times, count, ambientK);
        NonlinearFit fit = LevenbergMarquardt.fit(model, temperatures, StartingPoint.of(times, temperatures, count, ambientK));
        return new CoolDownFitter(log, model, fit);
    }

    NonlinearFit numbers() {
        return fit;
    }

    /** {@return whether the fit stands at a minimum at which the readings tell every parameter} */
    boolean isTold() {
        return fit.isMinimum() && fit.isDetermined();
    }

    SerialCorrelation serial() {
        return serial;
    }

    /** {@return degrees of freedom that the readings are worth, at least 1} */
    double degreesOfFreedom() {
        return Math.max(1, log.size() * serial.worth() - fit.size());
    }

    /** {@return the standard error of ln τ of an exponential} */
    double logTimeConstantError(int k) {
        return fit.standardError(k) / Math.sqrt(serial.worth());
    }

    double amplitude(int k) {
        return fit.parameter(model.count() + k);
    }

    /** {@return the fit as the domain holds it, the quicker exponential first} */
    CoolDownFit result() {
        List<Integer> order = order();
        double[] parameters = fit.parameters();
        List<FittedMode> modes = order.stream().map(this::mode).toList();
        boolean given = model.ambientK().isPresent();
        double ambientError = given ? 0 : fit.standardError(2 * model.count()) / Math.sqrt(serial.worth());
        return new CoolDownFit(modes, model.ambientK(parameters), ambientError, given, fit.residualDeviation(), degreesOfFreedom(),
                serial.firstLag(), LEVEL, isTold(), Samples.of(fit.residuals()), covariance(order));
    }

    private List<Integer> order() {
        List<Integer> order = new ArrayList<>();
        for (int k = 0; k < model.count(); k++) {
            order.add(k);
        }
        order.sort((one, other) -> Double.compare(fit.parameter(one), fit.parameter(other)));
        return order;
    }

    private FittedMode mode(int k) {
        double tau = Math.exp(fit.parameter(k));
        double error = logTimeConstantError(k);
        double reach = Math.exp(StudentT.upperQuantile((1 - LEVEL) / 2, degreesOfFreedom()) * error);
        return new FittedMode(tau, tau * error, tau / reach, tau * reach, amplitude(k),
                fit.standardError(model.count() + k) / Math.sqrt(serial.worth()));
    }

    private Samples covariance(List<Integer> order) {
        List<Integer> all = new ArrayList<>(order);
        order.forEach(k -> all.add(model.count() + k));
        if (model.ambientK().isEmpty()) {
            all.add(2 * model.count());
        }
        double[] covariance = new double[all.size() * all.size()];
        for (int i = 0; i < all.size(); i++) {
            for (int j = 0; j < all.size(); j++) {
                covariance[i * all.size() + j] = fit.covariance(all.get(i), all.get(j)) / serial.worth();
            }
        }
        return Samples.of(covariance);
    }
}
