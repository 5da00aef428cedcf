package fairpull.domain.air;

import java.util.OptionalDouble;

/**
 * How far sensor errors move a factor; all figures are standard uncertainties relative to the factor.
 *
 * @param temperature what the thermometer alone does, relative uncertainty of the factor
 * @param pressure what the barometer alone does
 * @param humidity what the humidity sensor alone does
 * @param single of one factor
 * @param sameSession of the ratio of two factors of one session, whose sensor errors mostly cancel
 * @param acrossDays of the ratio of two factors from different days, whose errors do not cancel
 * @param simulatedSingle {@code single} by Monte Carlo, where it was asked for
 * @param simulatedSameSession {@code sameSession} by Monte Carlo, where it was asked for
 */
public record FactorUncertainty(double temperature, double pressure, double humidity, double single, double sameSession, double acrossDays,
        OptionalDouble simulatedSingle, OptionalDouble simulatedSameSession) {
}
