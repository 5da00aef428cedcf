package fairpull.engine.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.air.AirReading;
import fairpull.domain.air.AirSensors;
import fairpull.domain.air.AmbientWindow;
import fairpull.domain.air.AmbientWindow.Obstacle;
import fairpull.domain.air.AmbientWindow.Range;
import fairpull.domain.air.AmbientWindow.Ranges;
import fairpull.domain.air.Barometer;
import fairpull.domain.air.Humidity;
import fairpull.domain.air.Standard;
import fairpull.domain.air.WindowQuestion;
import fairpull.domain.plan.Correction;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The decision and the ranges beside it say the same, whatever was read with whatever instruments. */
class WindowAgreesTest {
    private static final List<Correction> STANDARDS = List.of(Correction.SAE_J1349, Correction.ISO_1585, Correction.EEC_80_1269,
            Correction.DIN_70020);
    private static final int AIRS = 300;

    private final SplittableRandom random = new SplittableRandom(11);

    @Test
    void aPullMayStartExactlyWhenThePresentAirIsInEveryRange() {
        int go = 0;
        int stopped = 0;
        for (int i = 0; i < AIRS; i++) {
            AirReading now = air();
            Optional<AirReading> first = random.nextInt(3) == 0 ? Optional.empty() : Optional.of(near(now));
            WindowQuestion question = new WindowQuestion(random.nextDouble(0.004, 0.02), 0.25, 0.1, now, first, Optional.empty());
            AmbientWindow window = WindowSearch.window(Standard.plain(STANDARDS.get(random.nextInt(STANDARDS.size()))), question,
                    AirSensors.STARTING_GUESS);

            assertThat(List.of(holds(window.ranges().temperatureK(), now.temperatureK()),
                    holds(window.ranges().pressurePa(), Air.stationPressure(now.barometer(), 0)),
                    holds(window.ranges().humidity(), Hygrometer.value(now.humidity()))))
                    .as("%s, %s", question, window.obstacles()).containsOnly(window.go());
            go += window.go() ? 1 : 0;
            stopped += window.obstacles().contains(Obstacle.SENSORS_TOO_COARSE)
                    || window.obstacles().contains(Obstacle.MOVED_TOO_FAR) ? 1 : 0;
        }
        assertThat(go).isGreaterThan(AIRS / 6);
        assertThat(stopped).isGreaterThan(AIRS / 6);
    }

    /** With one reading moved alone, the ranges around the first air are those around the present one. */
    @Test
    void theRoomFromTheFirstAirIsWhatDecides() {
        AirReading first = new AirReading(297.15, Barometer.station(100_300), new Humidity.Relative(0.45));
        AirReading warmer = new AirReading(302.15, first.barometer(), first.humidity());
        AmbientWindow window = WindowSearch.window(Standard.plain(Correction.SAE_J1349), new WindowQuestion(0.01, 0.25, 0.1, warmer,
                Optional.of(first), Optional.empty()), AirSensors.STARTING_GUESS);
        Ranges later = window.change().orElseThrow().ranges();

        assertThat(holds(later.temperatureK(), warmer.temperatureK())).isEqualTo(window.go());
        assertThat(later.temperatureK().orElseThrow().high()).isCloseTo(window.ranges().temperatureK().orElseThrow().high(), within(1e-6));
        assertThat(later.temperatureK().orElseThrow().low()).isCloseTo(window.ranges().temperatureK().orElseThrow().low(), within(1e-6));
    }

    /**
     * Sensors whose errors are all offsets (ρ = 1): 2·|s − s₁|·u. The slope of SAE J1349 in dry air over pressure is
     * −1.18·990/p²/f with f = 1.18·990/p − 0.18, in hPa.
     */
    @Test
    void sensorsCountBetweenTheFirstInstallAndThePull() {
        AirReading now = new AirReading(298.15, Barometer.station(97_000), new Humidity.Relative(0));
        AirReading first = new AirReading(298.15, Barometer.station(101_000), new Humidity.Relative(0));
        AmbientWindow window = WindowSearch.window(Standard.plain(Correction.SAE_J1349), new WindowQuestion(0.015, 0.25, 0.1, now,
                Optional.of(first), Optional.empty()), new AirSensors(0, 1000, 0, 0, 1));

        assertThat(window.sensorError()).isCloseTo(2 * 10 * Math.abs(slope(970) - slope(1010)), within(1e-7));
    }

    private static double slope(double hectopascal) {
        return -1.18 * 990 / (hectopascal * hectopascal) / (1.18 * 990 / hectopascal - 0.18);
    }

    private static boolean holds(Optional<Range> range, double value) {
        return range.filter(ends -> ends.low() <= value && value <= ends.high()).isPresent();
    }

    private AirReading air() {
        double kelvin = random.nextDouble(286, 310);
        double station = random.nextDouble(92_000, 103_500);
        Barometer barometer = random.nextInt(3) == 0
                ? new Barometer(Barometer.Kind.SEA_LEVEL, station / Atmosphere.standardRatio(300), OptionalDouble.of(300))
                : Barometer.station(station);
        double share = random.nextDouble(0.05, 0.95);
        Humidity kind = List.of(new Humidity.Relative(0), new Humidity.DewPoint(280), new Humidity.WetBulb(280)).get(random.nextInt(3));
        AirReading reading = new AirReading(kelvin, barometer, new Hygrometer(kind).at(share, kelvin, station));
        boolean frozen = reading.humidity() instanceof Humidity.WetBulb wet && wet.temperatureK() <= 273.15;
        return frozen ? air() : reading;
    }

    private AirReading near(AirReading air) {
        return new AirReading(air.temperatureK() + random.nextDouble(-4, 4),
                air.barometer().reading(air.barometer().pressurePa() + random.nextDouble(-1500, 1500)), new Humidity.Relative(
                random.nextDouble(0.2, 0.8)));
    }
}
