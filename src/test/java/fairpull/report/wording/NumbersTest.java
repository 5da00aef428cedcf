package fairpull.report.wording;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Two significant digits for an uncertainty, and the value to the same place: GUM (JCGM 100:2008), section 7.2.6. */
class NumbersTest {
    @ParameterizedTest
    @CsvSource({"5.1234, 1.8, 5.1", "5.1234, 0.83, 5.12", "-0.4, 1.8, −0.4", "211.037, 0.042, 211.037", "1000234.7, 150, 1000230",
        "1234567, 2600, 1234600", "-0.04, 1.8, 0.0", "0.00012345, 0.000031, 0.000123", "99.96, 1.5, 100.0"})
    void aValueIsPrintedToThePlaceOfItsUncertainty(double value, double uncertainty, String printed) {
        assertThat(Numbers.resolving(uncertainty, "").bare(value)).isEqualTo(printed);
    }

    @Test
    void verySmallFiguresArePrintedWithAPowerOfTen() {
        assertThat(Numbers.resolving(3.1e-8, "kg").with(4.2567e-6)).isEqualTo("4.257\u202f×\u202f10⁻⁶\u202fkg");
        assertThat(Numbers.resolving(3.1e-8, "kg").with(-4.2567e-6)).isEqualTo("−4.257\u202f×\u202f10⁻⁶\u202fkg");
    }

    @Test
    void unitsStandBehindANarrowSpaceThatDoesNotBreak() {
        assertThat(Numbers.resolving(1.8, "hp").with(5.12)).isEqualTo("5.1\u202fhp");
        assertThat(Numbers.resolving(1.8, "").with(5.12)).isEqualTo("5.1");
        assertThat(Numbers.given(3.0000000001, "N·m")).isEqualTo("3\u202fN·m");
        assertThat(Numbers.percent(0.95)).isEqualTo("95\u202f%");
        assertThat(Numbers.percent(0.975)).isEqualTo("97.5\u202f%");
        assertThat(Numbers.percent(1 - 0.05)).isEqualTo("95\u202f%");
    }

    /** The level of a look is what is left of the error rate there: 1 − 0.005274 and 1 − 0.048307 are known to no more than this. */
    @ParameterizedTest
    @CsvSource({"0.994726, 99.5", "0.951693, 95.2", "0.95, 95", "0.975, 97.5", "0.99, 99", "0.9996, 99.96", "0.99999, 99.999", "0.9995, 99.95",
        "0.9049, 90.5"})
    void aLevelHasOneDecimalAndNeverReadsAsCertain(double level, String printed) {
        assertThat(Numbers.level(level)).isEqualTo(printed + "\u202f%");
        assertThat(Numbers.level(1 - (1 - level))).isEqualTo(printed + "\u202f%");
    }

    @Test
    void signsAreShownWhereTheySay() {
        Numbers numbers = Numbers.resolving(1.8, "hp");

        assertThat(numbers.signed(5.12)).isEqualTo("+5.1\u202fhp");
        assertThat(numbers.signed(-5.12)).isEqualTo("−5.1\u202fhp");
        assertThat(numbers.signed(0.01)).isEqualTo("0.0\u202fhp");
        assertThat(numbers.printsAsZero(0.01)).isTrue();
        assertThat(numbers.bare(Double.NEGATIVE_INFINITY)).isEqualTo("−∞");
    }

    @Test
    void pValuesKeepTwoDigitsAndNeverReadAsCertain() {
        assertThat(Numbers.p(0.00004)).isEqualTo("p\u00a0<\u00a00.0001");
        assertThat(Numbers.p(0.003213)).isEqualTo("p\u00a0=\u00a00.0032");
        assertThat(Numbers.p(0.0496)).isEqualTo("p\u00a0=\u00a00.050");
        assertThat(Numbers.p(0.617)).isEqualTo("p\u00a0=\u00a00.62");
        assertThat(Numbers.p(0.9999)).isEqualTo("p\u00a0>\u00a00.99");
        assertThat(Numbers.chance(0.997)).isEqualTo("above 99\u202f%");
    }

    @Test
    void degreesOfFreedomAndTimes() {
        assertThat(Numbers.degreesOfFreedom(3.0)).isEqualTo("3");
        assertThat(Numbers.degreesOfFreedom(12.44)).isEqualTo("12.4");
        assertThat(Numbers.degreesOfFreedom(Double.POSITIVE_INFINITY)).isEqualTo("∞");
        assertThat(Numbers.duration(380)).isEqualTo("6\u202fh 20\u202fmin");
        assertThat(Numbers.duration(45)).isEqualTo("45\u202fmin");
        assertThat(Numbers.duration(120)).isEqualTo("2\u202fh");
    }
}
