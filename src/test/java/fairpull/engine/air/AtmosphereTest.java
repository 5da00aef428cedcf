package fairpull.engine.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import fairpull.domain.air.AirReading;
import fairpull.domain.air.AirState;
import fairpull.domain.air.Barometer;
import fairpull.domain.air.Humidity;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AtmosphereTest {
    private static final double FOOT = 0.3048;

    /** U.S. Standard Atmosphere (1976), pressure in Pa by height in m. */
    @ParameterizedTest
    @CsvSource({"0, 101325", "500, 95461", "1000, 89875", "4000, 61640"})
    void agreesWithTheStandardAtmosphere(double metres, double pascal) {
        assertThat(Atmosphere.standardPressure(metres)).isCloseTo(pascal, within(1.0));
    }

    /** MetPy, tests of altimeter_to_station_pressure: hPa at m → hPa; 29.8 inHg is 1009.1439 hPa. */
    @ParameterizedTest
    @CsvSource({"1009.143922, 500, 950.965", "1000, 2000, 784.263", "1005, 1500, 838.652", "1010, 1000, 896.038", "1013, 500, 954.639"})
    void agreesWithAnotherProgramOnTheStationPressure(double altimeter, double metres, double station) {
        assertThat(Atmosphere.stationPressure(100 * altimeter, metres) / 100).isCloseTo(station, within(0.001));
    }

    /** US National Weather Service, calculator of pressure altitude: 899 hPa → 3271.8 ft (also MetPy). */
    @Test
    void agreesOnThePressureAltitude() {
        assertThat(Atmosphere.pressureAltitude(89_900) / FOOT).isCloseTo(3271.8, within(0.1));
    }

    /** US National Weather Service, calculator of density altitude: 30 °C, dew point 15 °C, 29.92 inHg → 1957 ft. */
    @Test
    void agreesOnTheDensityAltitude() {
        AirState air = Air.at(new AirReading(303.15, Barometer.station(29.92 * 3386.389), new Humidity.DewPoint(288.15)));

        assertThat(Atmosphere.densityAltitude(air) / FOOT).isCloseTo(1957, within(1.0));
    }

    /** CIPM-2007, computed from Picard et al., Metrologia 45 (2008) 149–155; a mixture of ideal gases is within 5e-4. */
    @ParameterizedTest
    @CsvSource({"20, 101325, 0.5, 1.199314", "15, 101325, 0, 1.225521", "25, 99000, 0, 1.157118"})
    void densityIsWithinTheErrorOfIdealGases(double celsius, double pascal, double humidity, double density) {
        AirState air = Air.at(new AirReading(celsius + 273.15, Barometer.station(pascal), new Humidity.Relative(humidity)));

        assertThat(Air.density(air)).isCloseTo(density, withPercentage(0.05));
    }

    /** ASHRAE, as in psychrolib's tests: 30 °C, humidity ratio 0.02, 95461 Pa → 1.0841199 kg/m³ of moist air, tolerance 3e-4. */
    @Test
    void densityAgreesWithAnotherProgram() {
        AirState air = new AirState(303.15, 95_461, Vapour.ofHumidityRatio(0.02, 95_461));
        double moist = Air.density(air);

        assertThat(moist).isCloseTo(1.0841199, withPercentage(0.03));
    }

    @Test
    void aSeaLevelReadingIsBroughtToTheStation() {
        AirState air = Air.at(new AirReading(298.15, new Barometer(Barometer.Kind.SEA_LEVEL, 101_300, OptionalDouble.of(500)),
                new Humidity.NotRead()));

        assertThat(air.pressurePa()).isCloseTo(95_463.9, within(1.0));
        assertThat(air.dryPressurePa()).isEqualTo(air.pressurePa());
    }
}
