package fairpull.engine.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.air.AirReading;
import fairpull.domain.air.AirSensors;
import fairpull.domain.air.AmbientWindow;
import fairpull.domain.air.AmbientWindow.Change;
import fairpull.domain.air.AmbientWindow.Obstacle;
import fairpull.domain.air.AmbientWindow.Range;
import fairpull.domain.air.Barometer;
import fairpull.domain.air.Humidity;
import fairpull.domain.air.Standard;
import fairpull.domain.air.WindowQuestion;
import fairpull.domain.plan.Correction;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WindowSearchTest {
    private static final Standard SAE = Standard.plain(Correction.SAE_J1349);
    private static final AirSensors PERFECT = new AirSensors(0, 0, 0, 0, 0);
    private static final AirReading REFERENCE = air(25, 990, 0);

    private static AirReading air(double celsius, double hectopascal, double humidity) {
        return new AirReading(celsius + 273.15, Barometer.station(100 * hectopascal), new Humidity.Relative(humidity));
    }

    private static AmbientWindow window(AirReading now, AirReading first, AirSensors sensors, double gain) {
        return WindowSearch.window(SAE, new WindowQuestion(gain, 0.25, 0.1, now, Optional.ofNullable(first), Optional.empty()), sensors);
    }

    /**
     * By hand, with perfect sensors and no first install: only the standard's own ranges bound the start. In dry air of 25 °C,
     * 1.18·990/p − 0.18 = 1.07 at p = 990·1.18/1.25 = 934.56 hPa; 0.93 would be at 1052.43 hPa, beyond the 1050 hPa of the standard. At
     * 990 hPa, 15 °C and 35 °C count, where the factor is 0.980 and 1.020.
     */
    @Test
    void theStartIsBoundedByTheStandard() {
        AmbientWindow window = window(REFERENCE, null, PERFECT, 0.015);
        Range pressure = window.ranges().pressurePa().orElseThrow();
        Range temperature = window.ranges().temperatureK().orElseThrow();

        assertThat(window.go()).isTrue();
        assertThat(window.modelError()).isZero();
        assertThat(pressure.low()).isCloseTo(93_456, within(0.5));
        assertThat(pressure.high()).isCloseTo(105_000, within(0.5));
        assertThat(temperature.low()).isCloseTo(288.15, within(1e-6));
        assertThat(temperature.high()).isCloseTo(308.15, within(1e-6));
    }

    /**
     * By hand, with perfect sensors: 1.5 % · 25 % = 0.375 % is allowed, a tenth of the change is wrong, so |f/f₁ − 1| ≤ 3.75 %. From
     * 990 hPa, 25 °C, dry, where f₁ = 1, 1.18·990/p − 0.18 = 1 ± 0.0375 at p = 959.51 and 1022.49 hPa.
     */
    @Test
    void onceTheFirstInstallHasRunTheModelErrorOfTheChangeBoundsTheStart() {
        Range pressure = window(REFERENCE, REFERENCE, PERFECT, 0.015).ranges().pressurePa().orElseThrow();

        assertThat(pressure.low()).isCloseTo(1.18 * 99_000 / (1.0375 + 0.18), within(0.5));
        assertThat(pressure.high()).isCloseTo(1.18 * 99_000 / (0.9625 + 0.18), within(0.5));
    }

    /**
     * 600 m above the sea the standard atmosphere has 943.2 hPa (1013.25·(1 − 0.0065·600/288.15)^5.25588). An ordinary day there, 12 hPa of
     * vapour and 20 °C, has a factor of 1.064: far from 1, and the same for A and B.
     */
    @ParameterizedTest
    @CsvSource({"16, 0.4", "18, 0.5", "20, 0.5", "21, 0.4"})
    void anOrdinaryDaySixHundredMetresUpIsGo(double celsius, double humidity) {
        AirReading day = air(celsius, 943.2, humidity);
        AmbientWindow window = window(day, null, AirSensors.STARTING_GUESS, 0.015);

        assertThat(window.obstacles()).isEmpty();
        Range later = window.change().orElseThrow().ranges().temperatureK().orElseThrow();
        assertThat(later.high() - later.low()).as("the standard itself spans 20 K").isBetween(3.0, 20.0);
        assertThat(window(day, day, AirSensors.STARTING_GUESS, 0.015).go()).isTrue();
    }

    /** At 25 °C and 50 % up there the dry pressure is 927.4 hPa and the factor 1.0797: beyond the 1.07 of the standard, not beyond 1.1. */
    @Test
    void aWarmDayUpThereIsBeyondTheStandardsFactorUnlessAnotherRangeIsTaken() {
        AirReading day = air(25, 943.2, 0.5);
        WindowQuestion wider = new WindowQuestion(0.015, 0.25, 0.1, day, Optional.empty(), Optional.of(new Range(0.9, 1.1)));

        assertThat(window(day, null, AirSensors.STARTING_GUESS, 0.015).obstacles()).containsExactly(Obstacle.FACTOR_OUTSIDE);
        assertThat(WindowSearch.window(SAE, wider, AirSensors.STARTING_GUESS).go()).isTrue();
    }

    /** By hand: 1.18·990/p − 0.18 = 1 ± 0.0375 as above; √(T/298) = (1.18 ± 0.0375)/1.18, with T = t + 273, goes beyond 15 and 35 °C. */
    @Test
    void theLargestChangeIsWhatTheModelErrorLeaves() {
        Change change = window(REFERENCE, null, PERFECT, 0.015).change().orElseThrow();
        Range narrow = window(REFERENCE, null, PERFECT, 0.004).change().orElseThrow().ranges().temperatureK().orElseThrow();

        assertThat(change.factor()).isCloseTo(0.0375, within(1e-9));
        assertThat(change.ranges().pressurePa().orElseThrow().low()).isCloseTo(1.18 * 99_000 / 1.2175, within(0.5));
        assertThat(change.ranges().pressurePa().orElseThrow().high()).isCloseTo(1.18 * 99_000 / 1.1425, within(0.5));
        assertThat(change.ranges().temperatureK().orElseThrow()).isEqualTo(new Range(288.15, 308.15));
        assertThat(narrow.high() - 0.15).isCloseTo(298 * Math.pow(1.19 / 1.18, 2), within(0.001));
        assertThat(narrow.low() - 0.15).isCloseTo(298 * Math.pow(1.17 / 1.18, 2), within(0.001));
    }

    @Test
    void whatIsPrintedAsAllowedIsAllowedAndNothingBeyondIs() {
        AmbientWindow window = window(air(24, 1000, 0.45), null, AirSensors.STARTING_GUESS, 0.015);

        assertThat(window.rows()).hasSize(15);
        for (AmbientWindow.Row row : window.rows()) {
            Range range = row.pressurePa().orElseThrow();
            double celsius = row.temperatureK() - 273.15;
            for (double pascal = 60_000; pascal <= 110_000; pascal += 333) {
                boolean inside = pascal >= range.low() && pascal <= range.high();
                assertThat(window(air(celsius, pascal / 100, row.humidity()), null, AirSensors.STARTING_GUESS, 0.015).go())
                        .as("%s at %s Pa", row, pascal).isEqualTo(inside);
            }
        }
    }

    @Test
    void noGoSaysWhy() {
        assertThat(window(air(36, 1000, 0.1), null, PERFECT, 0.05).obstacles()).containsExactly(Obstacle.TEMPERATURE_OUTSIDE);
        assertThat(window(air(25, 870, 0.1), null, PERFECT, 0.05).obstacles()).contains(Obstacle.DRY_PRESSURE_OUTSIDE,
                Obstacle.FACTOR_OUTSIDE);
        assertThat(window(REFERENCE, null, AirSensors.STARTING_GUESS, 0.001).obstacles()).containsExactly(Obstacle.SENSORS_TOO_COARSE);
    }

    @Test
    void sensorsThatTakeAllLeaveNoChange() {
        AmbientWindow window = window(REFERENCE, null, AirSensors.STARTING_GUESS, 0.001);

        assertThat(window.change()).isEmpty();
        assertThat(window.ranges().pressurePa()).isEmpty();
    }

    /** 965 and 1015 hPa are each within the window, and 6 % of factor apart, of which a tenth is more than the 0.375 % allowed. */
    @Test
    void airThatMovedTooFarSinceTheFirstInstallStopsAPull() {
        AirReading low = air(25, 965, 0);
        AirReading high = air(25, 1015, 0);

        assertThat(window(low, low, PERFECT, 0.015).go()).isTrue();
        assertThat(window(high, null, PERFECT, 0.015).go()).isTrue();
        assertThat(window(high, low, PERFECT, 0.015).obstacles()).containsExactly(Obstacle.MOVED_TOO_FAR);
        assertThat(window(high, low, PERFECT, 0.015).changeSoFar().orElseThrow())
                .isCloseTo((1.18 * 990 / 1015 - 0.18) / (1.18 * 990 / 965 - 0.18) - 1, within(1e-9));
    }
}
