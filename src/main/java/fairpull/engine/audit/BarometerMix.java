package fairpull.engine.audit;

import fairpull.domain.air.AirState;
import fairpull.domain.air.Standard;
import fairpull.domain.plan.Correction;
import fairpull.engine.air.Atmosphere;
import fairpull.engine.air.Factor;
import fairpull.engine.stats.Roots;
import java.util.OptionalDouble;

/**
 * The gain that appears where the correction of an unchanged car is reckoned before with a pressure reduced to sea level, after with the
 * one at the rig: f(p(H)) ÷ f(p₀) − 1 in standard atmosphere (p₀ 1013.25 hPa), at 25 °C with 10 hPa of vapour. With the two the other way
 * round a loss of 1 − 1 ÷ (1 + gain) appears.
 *
 * <p>Checked against: the tabulated U.S. Standard Atmosphere (1976) (BarometerMixTest).
 */
public final class BarometerMix {
    /** The highest rig that is thought of. */
    public static final double HIGHEST_M = 4000;
    private static final double TEMPERATURE = 298.15;
    private static final double VAPOUR = 1000;

    private BarometerMix() {
    }

    /**
     * The apparent gain.
     *
     * @param correction by which both are corrected; 0 for none. Compression ignition needs the fuel rate and is reckoned as SAE J1349
     * @param elevationM height of the rig above sea level, −500 to 6000 m
     * @return relative
     */
    public static double apparentGain(Correction correction, double elevationM) {
        Standard standard = Standard.plain(correction == Correction.ISO_1585_CI ? Correction.SAE_J1349 : correction);
        return factor(standard, elevationM) / factor(standard, 0) - 1;
    }

    private static double factor(Standard standard, double elevationM) {
        return Factor.of(standard, new AirState(TEMPERATURE, Atmosphere.standardPressure(elevationM), VAPOUR));
    }

    /** {@return the elevation in m at which that alone gives a relative gain; empty where none up to {@link #HIGHEST_M} does} */
    public static OptionalDouble elevationGiving(Correction correction, double gain) {
        boolean reached = gain > 0 && apparentGain(correction, HIGHEST_M) >= gain;
        return reached ? OptionalDouble.of(Roots.between(height -> apparentGain(correction, height) - gain, 0, HIGHEST_M))
                : OptionalDouble.empty();
    }
}
