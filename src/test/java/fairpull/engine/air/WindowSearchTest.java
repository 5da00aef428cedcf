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

class WindowSearchTest {
    private static final Standard SAE = Standard.plain(Correction.SAE_J1349);
    private static final AirSensors PERFECT = new AirSensors(0, 0, 0, 0, 0);
    private static final AirReading REFERENCE = air(25, 990, 0);

    private static AirReading air(double celsius, double hectopascal, double humidity) {
        return new AirReading(celsius + 273.15, Barometer.station(100 * hectopascal), new Humidity.Relative(humidity));
    }

    private static AmbientWindow window(AirReading now, AirReading first, AirSensors sensors, double gain) {
        return WindowSearch.window(SAE, new WindowQuestion(gain, 0.25, 0.1, now, Optional.ofNullable(first)), sensors);
    }

    /**
     * By hand, with perfect sensors: 1.5 % · 25 % = 0.375 % is allowed, a tenth of the distance from 1 is wrong, so |f − 1| ≤ 3.75 %.
     * In dry air of 25 °C, 1.18·990/p − 0.18 = 1 ± 0.0375 at p = 990·1.18/1.2175 = 959.507 and 990·1.18/1.1425 = 1022.495 hPa. At 990 hPa
     * 1.18·√(T/298) = 1.2175 is far beyond the standard's 35 °C, and so its end counts; below, 15 °C counts.
     */
    @Test
    void theRangesAreThoseOfTheFormulaAndOfTheStandard() {
        AmbientWindow window = window(REFERENCE, null, PERFECT, 0.015);
        Range pressure = window.pressurePa().orElseThrow();
        Range temperature = window.temperatureK().orElseThrow();

        assertThat(window.go()).isTrue();
        assertThat(pressure.low()).isCloseTo(95_950.7, within(0.5));
        assertThat(pressure.high()).isCloseTo(102_249.5, within(0.5));
        assertThat(temperature.low()).isCloseTo(288.15, within(1e-6));
        assertThat(temperature.high()).isCloseTo(308.15, within(1e-6));
    }

    /** By hand: 3.75 % over 0.198 % per K, and over 0.1192 % per hPa (the sensitivities at reference). */
    @Test
    void theLargestChangeIsWhatTheModelErrorLeaves() {
        Change change = window(REFERENCE, null, PERFECT, 0.015).change().orElseThrow();

        assertThat(change.factor()).isCloseTo(0.0375, within(1e-9));
        assertThat(change.temperatureK()).isCloseTo(0.0375 / (1.18 * 0.5 / 298), within(0.01));
        assertThat(change.pressurePa()).isCloseTo(0.0375 / (1.18 / 99_000), within(1.0));
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
        assertThat(window(air(25, 950, 0.1), null, PERFECT, 0.015).obstacles()).containsExactly(Obstacle.CORRECTION_TOO_LARGE);
        assertThat(window(REFERENCE, null, AirSensors.STARTING_GUESS, 0.001).obstacles()).containsExactly(Obstacle.SENSORS_TOO_COARSE);
    }

    @Test
    void sensorsThatTakeAllLeaveNoChange() {
        AmbientWindow window = window(REFERENCE, null, AirSensors.STARTING_GUESS, 0.001);

        assertThat(window.change()).isEmpty();
        assertThat(window.pressurePa()).isEmpty();
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
