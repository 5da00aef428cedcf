package fairpull.engine.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import fairpull.domain.air.AirReading;
import fairpull.domain.air.AirSensors;
import fairpull.domain.air.Barometer;
import fairpull.domain.air.Humidity;
import fairpull.domain.air.Standard;
import fairpull.domain.plan.Correction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class FactorErrorTest {
    private static final Standard SAE = Standard.plain(Correction.SAE_J1349);
    private static final AirSensors SENSORS = new AirSensors(0.5, 100, 0.03, 0.5, 0.9);
    private static final int DRAWS = 200_000;

    private static AirReading air(double celsius, double hectopascal, Humidity humidity) {
        return new AirReading(celsius + 273.15, Barometer.station(100 * hectopascal), humidity);
    }

    /** Computed from the formula's own derivatives at 25 °C, 990 hPa, dry: 0.198 % per K, 0.119 % per hPa, 0.381 % per 10 points. */
    @Test
    void eachSensorCountsByItsSensitivity() {
        FactorError error = FactorError.of(SAE, air(25, 990, new Humidity.Relative(0)), SENSORS);

        assertThat(error.temperature()).isCloseTo(0.5 * 1.18 * 0.5 / 298, within(1e-7));
        assertThat(error.pressure()).isCloseTo(1.18 / 990, within(1e-7));
        assertThat(error.humidity()).isCloseTo(0.03 * 31.698 * 1.18 / 990, within(1e-6));
        assertThat(error.single()).isCloseTo(Math.sqrt(0.00099 * 0.00099 + 0.001192 * 0.001192 + 0.001133 * 0.001133), within(2e-6));
    }

    static Stream<Arguments> readings() {
        return Stream.of(
                Arguments.of(Correction.SAE_J1349, air(30, 1000, new Humidity.Relative(0.6))),
                Arguments.of(Correction.SAE_J1349, air(30, 1000, new Humidity.DewPoint(294.5))),
                Arguments.of(Correction.ISO_1585, air(18, 960, new Humidity.WetBulb(286))),
                Arguments.of(Correction.DIN_70020, air(18, 960, new Humidity.NotRead())),
                Arguments.of(Correction.SAE_J607, air(35, 940, new Humidity.Relative(0.9))));
    }

    /** First order against Monte Carlo; its own error is 1/√(2·draws), 0.16 %, so 1 % is six of them. */
    @ParameterizedTest
    @MethodSource("readings")
    void firstOrderAgreesWithMonteCarlo(Correction standard, AirReading reading) {
        FactorError now = FactorError.of(Standard.plain(standard), reading, SENSORS);
        FactorError first = FactorError.of(Standard.plain(standard), air(22, 1005, new Humidity.Relative(0.4)), SENSORS);

        assertThat(now.simulatedSingle(DRAWS, 11)).isCloseTo(now.single(), withPercentage(1));
        if (reading.humidity() instanceof Humidity.Relative) {
            assertThat(now.simulatedRatioTo(first, 0.9, DRAWS, 12)).isCloseTo(now.ratioTo(first, 0.9), withPercentage(1));
        }
        assertThat(now.simulatedRatioTo(now, 0.5, DRAWS, 13)).isCloseTo(now.ratioTo(now, 0.5), withPercentage(1));
    }

    @Test
    void offsetsCancelWithinASessionAndNotAcrossDays() {
        FactorError error = FactorError.of(SAE, air(24, 1003, new Humidity.Relative(0.45)), SENSORS);

        assertThat(error.ratioTo(error, 1)).isCloseTo(0, within(1e-12));
        assertThat(error.ratioTo(error, 0.9)).isCloseTo(Math.sqrt(0.2) * error.single(), within(1e-12));
        assertThat(error.ratioTo(error, 0)).isCloseTo(Math.sqrt(2) * error.single(), within(1e-12));
    }

    /** An offset does not cancel whole where the air has changed: 1 K of offset counts by the difference of two sensitivities. */
    @Test
    void anOffsetLeavesTheDifferenceOfItsEffects() {
        AirSensors thermometer = new AirSensors(1, 0, 0, 0, 1);
        FactorError cool = FactorError.of(SAE, air(15, 1000, new Humidity.NotRead()), thermometer);
        FactorError warm = FactorError.of(SAE, air(35, 1000, new Humidity.NotRead()), thermometer);

        assertThat(warm.ratioTo(cool, 1)).isCloseTo(cool.single() - warm.single(), within(1e-12)).isPositive();
    }

    @Test
    void theSameSeedDrawsTheSame() {
        FactorError error = FactorError.of(SAE, air(24, 1003, new Humidity.Relative(0.45)), SENSORS);

        assertThat(error.simulatedSingle(1000, 7)).isEqualTo(error.simulatedSingle(1000, 7)).isNotEqualTo(error.simulatedSingle(1000, 8));
    }
}
