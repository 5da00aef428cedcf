package fairpull.engine.heat;

import fairpull.domain.heat.CoolDownFit;
import fairpull.domain.heat.CoolDownLog;
import fairpull.domain.heat.ModeChoice;
import fairpull.domain.heat.ModeChoice.Reason;
import fairpull.engine.stats.FisherF;
import java.util.OptionalDouble;

/**
 * Decides whether a log supports two time constants. It does only where all of these hold, tried in this order:
 * <ol>
 * <li>there are at least {@value #FEWEST_FOR_TWO} readings;
 * <li>the data tell all parameters of the second fit;
 * <li>both amplitudes are positive: a negative one is heat still arriving, not a cool-down;
 * <li>the F test of the extra sum of squares has p below {@value #F_LEVEL}, its F and degrees of freedom cut down for serial correlation;
 * <li>the corrected Akaike criterion falls;
 * <li>the correlation of the two amplitudes is within ±{@value #HIGHEST_CORRELATION};
 * <li>the standard error of ln τ is below {@value #LOOSEST} for both.
 * </ol>
 * The F test is an approximation where the second amplitude is near zero, which is why its level is strict.
 *
 * @see "Bates and Watts (1988), Nonlinear Regression Analysis and Its Applications, section 3.10 (extra sum of squares)"
 * @see "Hurvich and Tsai (1989), Regression and time series model selection in small samples, Biometrika 76, 297–307"
 */
public final class TimeConstants {
    static final int FEWEST_FOR_TWO = 12;
    static final double F_LEVEL = 0.01;
    static final double HIGHEST_CORRELATION = 0.99;
    static final double LOOSEST = 0.5;

    private final CoolDownFitter one;
    private final CoolDownFitter two;
    private final int readings;

    private TimeConstants(CoolDownFitter one, CoolDownFitter two, int readings) {
        this.one = one;
        this.two = two;
        this.readings = readings;
    }

    /**
     * Fits one and two time constants and chooses.
     *
     * @param log the cool-down
     * @param ambientK the ambient in kelvin, where it is known; else it is fitted
     * @return the choice with its reason
     */
    public static ModeChoice choose(CoolDownLog log, OptionalDouble ambientK) {
        CoolDownFitter one = CoolDownFitter.fit(log, 1, ambientK);
        if (log.size() < FEWEST_FOR_TWO) {
            return new ModeChoice(Reason.TOO_FEW_READINGS, OptionalDouble.empty(), OptionalDouble.empty(), one.result());
        }
        return new TimeConstants(one, CoolDownFitter.fit(log, 2, ambientK), log.size()).choice();
    }

    /** {@return a fit with so many time constants, whatever the log supports} */
    static CoolDownFit fit(CoolDownLog log, int count, OptionalDouble ambientK) {
        return CoolDownFitter.fit(log, count, ambientK).result();
    }

    private ModeChoice choice() {
        Reason reason = reason();
        CoolDownFitter chosen = reason == Reason.TWO_SUPPORTED ? two : one;
        return new ModeChoice(reason, OptionalDouble.of(pValue()), OptionalDouble.of(criterion(one) - criterion(two)), chosen.result());
    }

    private Reason reason() {
        if (!two.isTold()) {
            return Reason.NOT_TOLD_APART;
        }
        if (!(two.amplitude(0) > 0 && two.amplitude(1) > 0)) {
            return Reason.NEGATIVE_AMPLITUDE;
        }
        if (!(pValue() < F_LEVEL)) {
            return Reason.NO_BETTER_THAN_CHANCE;
        }
        if (!(criterion(two) < criterion(one))) {
            return Reason.NOT_WORTH_ITS_PARAMETERS;
        }
        if (!(Math.abs(two.numbers().correlation(2, 3)) <= HIGHEST_CORRELATION)) {
            return Reason.AMPLITUDES_CORRELATED;
        }
        boolean known = two.logTimeConstantError(0) < LOOSEST && two.logTimeConstantError(1) < LOOSEST;
        return known ? Reason.TWO_SUPPORTED : Reason.TIME_CONSTANT_LOOSE;
    }

    private double pValue() {
        double extra = one.numbers().residualSumOfSquares() - two.numbers().residualSumOfSquares();
        int df1 = one.numbers().degreesOfFreedom() - two.numbers().degreesOfFreedom();
        double meanSquare = two.numbers().residualSumOfSquares() / two.numbers().degreesOfFreedom();
        double f = Math.max(0, extra / df1 / meanSquare) * two.serial().worth();
        return Double.isNaN(f) ? 1 : FisherF.upperTail(f, df1, two.degreesOfFreedom());
    }

    /** n·ln(RSS/n) + 2k + 2k(k+1)/(n−k−1), k counting the scatter as a parameter; n is what the readings are worth. */
    private double criterion(CoolDownFitter fit) {
        double n = Math.max(readings * two.serial().worth(), fit.numbers().size() + 3.0);
        double k = fit.numbers().size() + 1.0;
        return n * Math.log(fit.numbers().residualSumOfSquares() / readings) + 2 * k + 2 * k * (k + 1) / (n - k - 1);
    }
}
