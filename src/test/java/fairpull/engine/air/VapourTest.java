package fairpull.engine.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VapourTest {
    /** CRC Handbook of Chemistry and Physics, vapour pressure of water, hPa by °C. */
    @ParameterizedTest
    @CsvSource({"0, 6.1129", "5, 8.726", "10, 12.281", "15, 17.056", "20, 23.388", "25, 31.690", "30, 42.455", "35, 56.267", "40, 73.814"})
    void agreesWithTheTableOfTheHandbook(double celsius, double hectopascal) {
        assertThat(Vapour.saturationPressure(celsius + 273.15)).isCloseTo(100 * hectopascal, withPercentage(0.1));
    }

    /** Triple point of water, 611.657 Pa at 0.01 °C (IAPWS; from memory). */
    @Test
    void agreesAtTheTriplePoint() {
        assertThat(Vapour.saturationPressure(273.16)).isCloseTo(611.657, within(0.01));
    }

    /** 40 CFR 1065.645, examples: dew point 9.5 °C at 99.980 kPa → 1.186581 kPa, mole fraction 0.011868; 50.77 % at 20 °C → the same. */
    @Test
    void agreesWithTheExamplesOfTheRegulation() {
        double ofDewPoint = Vapour.saturationPressure(9.5 + 273.15);
        double ofHumidity = 0.5077 * Vapour.saturationPressure(20 + 273.15);

        assertThat(ofDewPoint).isCloseTo(1186.581, withPercentage(0.1));
        assertThat(ofDewPoint / 99_980).isCloseTo(0.011868, withPercentage(0.1));
        assertThat(ofHumidity / 99_980).isCloseTo(0.011868, withPercentage(0.1));
    }

    @ParameterizedTest
    @CsvSource({"-30", "-5", "0.01", "9.5", "20", "45"})
    void theDewPointOfASaturationPressureIsItsTemperature(double celsius) {
        double kelvin = celsius + 273.15;

        assertThat(Vapour.dewPoint(Vapour.saturationPressure(kelvin))).isCloseTo(kelvin, within(1e-6));
    }

    @Test
    void dryAirHasNoDewPoint() {
        assertThat(Vapour.dewPoint(0)).isNaN();
    }

    /** psychrolib 2.5, tests/test_psychrolib_si.py: 30 °C, wet bulb 25 °C, 95461 Pa → humidity ratio 0.0192281274241096, tolerance 3e-4. */
    @Test
    void agreesWithTheWetBulbOfAnotherProgram() {
        double vapour = Vapour.ofWetBulb(30 + 273.15, 25 + 273.15, 95_461);

        assertThat(Vapour.humidityRatio(vapour, 95_461)).isCloseTo(0.0192281274241096, withPercentage(0.03));
    }

    @Test
    void aWetBulbAtTheAirsTemperatureIsSaturation() {
        double saturated = Vapour.saturationPressure(295.15);

        assertThat(Vapour.ofWetBulb(295.15, 295.15, 100_000)).isCloseTo(saturated, withPercentage(1e-6));
    }

    @Test
    void humidityRatioAndItsInverseAgree() {
        assertThat(Vapour.ofHumidityRatio(Vapour.humidityRatio(1700, 98_000), 98_000)).isCloseTo(1700, within(1e-9));
    }
}
