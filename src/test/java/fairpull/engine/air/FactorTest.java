package fairpull.engine.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.air.AirState;
import fairpull.domain.air.FuelDelivery;
import fairpull.domain.air.Induction;
import fairpull.domain.air.Standard;
import fairpull.domain.plan.Correction;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The factors against figures computed outside the program from the printed formulas (UN R85 annex 5 for ISO 1585; SAE J1349 and DIN
 * 70020 second-hand; the others from memory), with the IAPWS saturation pressure.
 */
class FactorTest {
    private static final double TOLERANCE = 1e-4;

    private static AirState air(double celsius, double hectopascal, double humidity) {
        double kelvin = celsius + 273.15;
        return new AirState(kelvin, 100 * hectopascal, humidity * Vapour.saturationPressure(kelvin));
    }

    @ParameterizedTest
    @CsvSource({
        "25, 990, 0, 990.000, 1.00000, 1.00000, 1.00000, 1.03193, 1.04004, 1.00000, 1.00000",
        "25, 990, .5, 974.151, 1.01920, 1.01956, 1.01627, 1.03193, 1.05696, 1.01627, 1.01136",
        "30, 1000, .6, 974.519, 1.02876, 1.02932, 1.02437, 1.03014, 1.06538, 1.02779, 1.03665",
        "15, 1013.25, .5, 1004.722, 0.96304, 0.96253, 0.96867, 0.99119, 1.00748, 0.96208, 0.94032",
        "20, 1013, 0, 1013.000, 0.96349, 0.96299, 0.96906, 1.00000, 1.00787, 0.96579, 0.95939",
        "35, 850, .2, 838.742, 1.23598, 1.24454, 1.19998, 1.22189, 1.24800, 1.20793, 1.18007"})
    void agreesWithTheVectors(double celsius, double pressure, double humidity, double dry, double sae, double iso, double eec, double din,
                              double old, double natural, double turbo) {
        AirState air = air(celsius, pressure, humidity);

        assertThat(air.dryPressurePa() / 100).isCloseTo(dry, within(0.002));
        assertThat(factor(Correction.SAE_J1349, air)).isCloseTo(sae, within(TOLERANCE));
        assertThat(factor(Correction.ISO_1585, air)).isCloseTo(iso, within(TOLERANCE));
        assertThat(factor(Correction.EEC_80_1269, air)).isCloseTo(eec, within(TOLERANCE));
        assertThat(factor(Correction.DIN_70020, air)).isCloseTo(din, within(TOLERANCE));
        assertThat(factor(Correction.SAE_J607, air)).isCloseTo(old, within(TOLERANCE));
        assertThat(Math.pow(diesel(Induction.NATURAL, 50, air), 1 / 0.66)).isCloseTo(natural, within(TOLERANCE));
        assertThat(Math.pow(diesel(Induction.TURBOCHARGED, 50, air), 1 / 0.66)).isCloseTo(turbo, within(TOLERANCE));
        assertThat(factor(Correction.NONE, air)).isEqualTo(1);
    }

    /** The exponent of UN R85 and the factors of 30 °C, 1000 hPa, 60 %: fuel in mg per litre, cycle and boost ratio. */
    @ParameterizedTest
    @CsvSource({"30, 0.3, 1.00826", "40, 0.3, NaN", "50, 0.66, 1.01825", "65, 1.2, 1.03344", "70, 1.2, 1.03344"})
    void theDieselExponentFollowsTheFuel(double fuel, double exponent, double factor) {
        assertThat(Factor.engineFactor(delivery(Induction.NATURAL, fuel))).isCloseTo(exponent, within(1e-9));
        if (!Double.isNaN(factor)) {
            assertThat(diesel(Induction.NATURAL, fuel, air(30, 1000, 0.6))).isCloseTo(factor, within(TOLERANCE));
        }
    }

    /** By hand: 120 000·8 g/s over 4 L·2000 1/min is 120 mg per litre and cycle, 60 at a boost ratio of 2: 0.036·60 − 1.14 = 1.02. */
    @Test
    void strokesAndBoostCountInTheExponent() {
        FuelDelivery four = new FuelDelivery(Induction.TURBOCHARGED, 0.008, 0.004, 2000 * Math.PI / 30, 4, 2);
        FuelDelivery two = new FuelDelivery(Induction.TURBOCHARGED, 0.016, 0.004, 2000 * Math.PI / 30, 2, 2);

        assertThat(Factor.engineFactor(four)).isCloseTo(1.02, within(1e-9));
        assertThat(Factor.engineFactor(two)).isCloseTo(1.02, within(1e-9));
    }

    @Test
    void anEfficiencyReplacesThePrintedFriction() {
        AirState air = air(30, 1000, 0.6);

        assertThat(Factor.of(new Standard(Correction.SAE_J1349, OptionalDouble.of(0.85), Optional.empty()), air))
                .isCloseTo(1.02867, within(1e-5));
        assertThat(Factor.of(new Standard(Correction.SAE_J1349, OptionalDouble.of(1), Optional.empty()), air))
                .isCloseTo(factor(Correction.EEC_80_1269, air), within(1e-12));
    }

    /** Sensitivities at reference, computed outside: per K, per hPa, per 10 points of humidity at 25 and 35 °C, in percent. */
    @ParameterizedTest
    @CsvSource({"SAE_J1349, 0.198, 0.119, 0.38, 0.675", "ISO_1585, 0.201, 0.121, 0.386, 0.687"})
    void theSensitivitiesAreThoseOfTheFormulas(Correction standard, double perKelvin, double perHectopascal, double warm, double hot) {
        double reference = factor(standard, air(25, 990, 0));

        assertThat(50 * (factor(standard, air(26, 990, 0)) - factor(standard, air(24, 990, 0)))).isCloseTo(perKelvin, within(0.0005));
        assertThat(50 * (factor(standard, air(25, 989, 0)) - factor(standard, air(25, 991, 0)))).isCloseTo(perHectopascal, within(0.0005));
        assertThat(100 * (factor(standard, air(25, 990, 0.1)) / reference - 1)).isCloseTo(warm, within(0.006));
        assertThat(100 * (factor(standard, air(35, 990, 0.1)) - factor(standard, air(35, 990, 0)))).isCloseTo(hot, within(0.02));
    }

    /** What must hold whatever the formulas: undoing and doing again changes nothing. */
    @Test
    void correctingThereAndBackChangesNothing() {
        AirState air = air(18, 972, 0.7);
        double there = factor(Correction.DIN_70020, air) / factor(Correction.SAE_J1349, air);
        double back = factor(Correction.SAE_J1349, air) / factor(Correction.DIN_70020, air);

        assertThat(there * back).isCloseTo(1, within(1e-15));
    }

    private static double factor(Correction correction, AirState air) {
        return Factor.of(Standard.plain(correction), air);
    }

    private static double diesel(Induction induction, double fuel, AirState air) {
        return Factor.of(new Standard(Correction.ISO_1585_CI, OptionalDouble.empty(), Optional.of(delivery(induction, fuel))), air);
    }

    /** So much fuel in mg per litre and cycle: one litre, four strokes, 1200 rpm are ten cycles a second. */
    private static FuelDelivery delivery(Induction induction, double fuel) {
        return new FuelDelivery(induction, fuel * 1e-6 * 10, 0.001, 1200 * Math.PI / 30, 4, 1);
    }
}
