package fairpull.engine.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.air.AirNotice;
import fairpull.domain.air.AirNotice.Code;
import fairpull.domain.air.AirReading;
import fairpull.domain.air.Barometer;
import fairpull.domain.air.Humidity;
import fairpull.domain.air.Induction;
import fairpull.domain.air.Standard;
import fairpull.domain.plan.Correction;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AirReviewTest {
    private static final double FOOT = 0.3048;
    private static final Barometer PLAIN = Barometer.station(99_000);

    private static List<AirNotice> notices(Correction correction, double celsius, Barometer barometer, Humidity humidity) {
        return AirReview.notices(Standard.plain(correction), new AirReading(celsius + 273.15, barometer, humidity), Optional.empty(), Optional.empty());
    }

    private static Barometer at(Barometer.Kind kind, double hectopascal, double feet) {
        return new Barometer(kind, 100 * hectopascal, OptionalDouble.of(feet * FOOT));
    }

    private static AirNotice only(Code code, List<AirNotice> notices) {
        return notices.stream().filter(notice -> notice.code() == code).findFirst().orElseThrow();
    }

    /** Computed outside: the standard atmosphere's sea-level pressure typed for station pressure, 25 °C, dry, SAE J1349, percent low. */
    @ParameterizedTest
    @CsvSource({"500, 2.1, 0.05", "1000, 4.19, 0.005", "2000, 8.2, 0.05", "5280, 20.3, 0.05"})
    void aSeaLevelBarometerIsNoticedWithItsSize(double feet, double percent, double half) {
        List<AirNotice> notices = notices(Correction.SAE_J1349, 25, at(Barometer.Kind.STATION, 1013.25, feet), new Humidity.Relative(0));

        assertThat(100 * only(Code.SEA_LEVEL_FOR_STATION, notices).figures().get(1)).isCloseTo(-percent, within(half));
    }

    @Test
    void aStationPressureThatFitsItsHeightIsNot() {
        Humidity moist = new Humidity.Relative(0.4);

        assertThat(notices(Correction.SAE_J1349, 25, at(Barometer.Kind.STATION, 977.2, 1000), moist)).isEmpty();
        assertThat(notices(Correction.SAE_J1349, 25, at(Barometer.Kind.STATION, 1013.25, 100), moist)).isEmpty();
        assertThat(notices(Correction.SAE_J1349, 25, at(Barometer.Kind.SEA_LEVEL, 1013.25, 1000), moist)).isEmpty();
    }

    @Test
    void aStationPressureTypedAsSeaLevelIsNoticed() {
        assertThat(notices(Correction.SAE_J1349, 25, at(Barometer.Kind.SEA_LEVEL, 920, 2600), new Humidity.Relative(0.4)))
                .extracting(AirNotice::code).contains(Code.STATION_FOR_SEA_LEVEL);
    }

    /** Computed outside: humidity forgotten at 25 °C, 990 hPa, 50 % makes SAE J1349 1.9 % low. */
    @Test
    void humidityLeftOutIsNoticedWithItsSize() {
        AirNotice notice = only(Code.HUMIDITY_LEFT_OUT, notices(Correction.SAE_J1349, 25, PLAIN, new Humidity.NotRead()));

        assertThat(notice.figures().get(0)).isEqualTo(0.5);
        assertThat(100 * notice.figures().get(1)).isCloseTo(-1.9, within(0.05));
        assertThat(notices(Correction.SAE_J1349, 25, PLAIN, new Humidity.Relative(0.5))).isEmpty();
        assertThat(notices(Correction.DIN_70020, 25, PLAIN, new Humidity.NotRead())).isEmpty();
    }

    /** The last of the vectors, 35 °C, 850 hPa, 20 %, breaks every limit but that of temperature; a hair more breaks that too. */
    @Test
    void eachLimitOfAStandardIsNoticed() {
        List<AirNotice> notices = notices(Correction.SAE_J1349, 35.1, Barometer.station(85_000), new Humidity.Relative(0.2));

        assertThat(notices).extracting(AirNotice::code).containsExactly(Code.TEMPERATURE_OUTSIDE, Code.DRY_PRESSURE_OUTSIDE,
                Code.FACTOR_OUTSIDE);
        assertThat(notices(Correction.SAE_J1349, 35, Barometer.station(100_000), new Humidity.Relative(0.2))).isEmpty();
        assertThat(notices(Correction.NONE, 45, Barometer.station(85_000), new Humidity.NotRead())).isEmpty();
    }

    @Test
    void hotAirMayHaveBeenReadInFahrenheit() {
        assertThat(notices(Correction.DIN_70020, 50, PLAIN, new Humidity.Relative(0.1))).extracting(AirNotice::code)
                .contains(Code.TEMPERATURE_LIKE_FAHRENHEIT);
    }

    @Test
    void boostAndAWithdrawnStandardAreNoticed() {
        AirReading reading = new AirReading(298.15, PLAIN, new Humidity.Relative(0.2));
        Standard sae = Standard.plain(Correction.SAE_J1349);

        assertThat(AirReview.notices(sae, reading, Optional.empty(), Optional.of(Induction.TURBOCHARGED))).extracting(AirNotice::code)
                .containsExactly(Code.BOOST_CAUTION);
        assertThat(AirReview.notices(sae, reading, Optional.empty(), Optional.of(Induction.NATURAL))).isEmpty();
        assertThat(notices(Correction.SAE_J607, 25, PLAIN, new Humidity.Relative(0.2))).extracting(AirNotice::code)
                .containsExactly(Code.WITHDRAWN);
    }

    /** Air of 2 % is the limit of common practice, no source. */
    @ParameterizedTest
    @CsvSource({"0.005, true", "0.0045, true", "0, true", "0.0199, true", "0.02, false", "0.4, false"})
    void airTooDryForAShopIsNoticed(double share, boolean noticed) {
        assertThat(notices(Correction.SAE_J1349, 25, PLAIN, new Humidity.Relative(share)).stream().map(AirNotice::code).toList()
                .contains(Code.HUMIDITY_TOO_LOW)).isEqualTo(noticed);
    }

    @Test
    void readingsOfTheFirstInstallAreReviewedToo() {
        AirReading now = new AirReading(298.15, at(Barometer.Kind.STATION, 977, 1000), new Humidity.Relative(0.4));
        AirReading first = new AirReading(298.15, at(Barometer.Kind.STATION, 1013, 1000), new Humidity.Relative(0.005));

        List<AirNotice> notices = AirReview.notices(Standard.plain(Correction.SAE_J1349), now, Optional.of(first), Optional.empty());

        assertThat(notices).extracting(AirNotice::code).containsExactly(Code.SEA_LEVEL_FOR_STATION, Code.HUMIDITY_TOO_LOW);
        assertThat(notices).allMatch(AirNotice::ofFirst);
    }
}
