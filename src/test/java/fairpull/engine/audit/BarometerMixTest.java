package fairpull.engine.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.plan.Correction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** U.S. Standard Atmosphere (1976), pressure in hPa at geopotential heights (from memory), with 10 hPa of it vapour. */
class BarometerMixTest {
    private static final double SEA_LEVEL = 1013.25;
    private static final double VAPOUR = 10;

    /** 80/1269/EEC goes by the pressure of dry air alone, ISO 1585 by its power of 1.2. */
    @ParameterizedTest
    @CsvSource({"500, 954.61", "1000, 898.75", "2000, 794.95"})
    void theGainIsTheRatioOfTabulatedPressures(double elevation, double tabulated) {
        double ratio = (SEA_LEVEL - VAPOUR) / (tabulated - VAPOUR);

        assertThat(BarometerMix.apparentGain(Correction.EEC_80_1269, elevation)).isCloseTo(ratio - 1, within(2e-5));
        assertThat(BarometerMix.apparentGain(Correction.ISO_1585, elevation)).isCloseTo(Math.pow(ratio, 1.2) - 1, within(3e-5));
    }

    @Test
    void theElevationThatExplainsAGainGivesIt() {
        double height = BarometerMix.elevationGiving(Correction.SAE_J1349, 0.03).orElseThrow();

        assertThat(BarometerMix.apparentGain(Correction.SAE_J1349, height)).isCloseTo(0.03, within(1e-9));
        assertThat(height).isBetween(150.0, 300.0);
        assertThat(BarometerMix.elevationGiving(Correction.NONE, 0.03)).isEmpty();
        assertThat(BarometerMix.elevationGiving(Correction.SAE_J1349, -0.03)).isEmpty();
    }
}
