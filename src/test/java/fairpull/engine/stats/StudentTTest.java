package fairpull.engine.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StudentTTest {
    /** Table of t, two-sided 5 % (NIST e-Handbook 1.3.6.7.2, from memory), half a unit of the last digit. */
    @ParameterizedTest
    @CsvSource({"1, 12.706", "2, 4.303", "3, 3.182", "4, 2.776", "5, 2.571", "10, 2.228", "20, 2.086", "120, 1.980"})
    void tableOfQuantiles(double df, double published) {
        assertThat(StudentT.upperQuantile(0.025, df)).isCloseTo(published, within(0.0005));
    }

    /** R 4.2.2, qt and pt; seven digits and more, held to half a unit of the seventh. */
    @ParameterizedTest
    @CsvSource({"7.3, 0.4999, 2.59368670240395e-04", "7.3, 0.4, 0.262756805250719", "7.3, 0.1, 1.40892231774804",
        "7.3, 0.025, 2.34506673654770", "7.3, 1e-6, 13.4935230606896", "3.7, 0.025, 2.867521", "0.5, 0.025, 164.5577",
        "0.05, 0.025, 1.195834e25"})
    void quantilesAsR(double df, double tail, double expected) {
        assertThat(StudentT.upperQuantile(tail, df)).isCloseTo(expected, withinPercentage(5e-5));
        assertThat(StudentT.upperQuantile(1 - tail, df)).isCloseTo(-expected, withinPercentage(5e-5));
    }

    @ParameterizedTest
    @CsvSource({"2.2, 0.001, 0.499642747759248", "2.2, 1, 0.207172917885842", "2.2, 40, 1.71157738282303e-4",
        "2.2, 1e5, 5.73361694732483e-12", "0.05, 3, 0.4245576", "0.0066, 1e100, 0.1071015", "4.5, 50, 1.183697e-7"})
    void tailsAsR(double df, double t, double expected) {
        assertThat(StudentT.upperTail(t, df)).isCloseTo(expected, withinPercentage(5e-5));
        assertThat(StudentT.cdf(-t, df)).isEqualTo(StudentT.upperTail(t, df));
        assertThat(StudentT.bothTails(-t, df)).isCloseTo(2 * expected, withinPercentage(5e-5));
    }

    @Test
    void quantileUndoesTheTail() {
        for (double df = 0.006; df < 1e6; df *= 1.7) {
            for (double tail = 0.499; tail > 1e-12; tail /= 3) {
                double t = StudentT.upperQuantile(tail, df);
                if (Double.isFinite(t)) {
                    assertThat(StudentT.upperTail(t, df)).as("tail " + tail + " df " + df).isCloseTo(tail, withinPercentage(1e-9));
                }
            }
        }
    }

    @Test
    void oneAndTwoDegreesOfFreedomInClosedForm() {
        for (double t = 1e-3; t < 1e9; t *= 3) {
            assertThat(StudentT.upperTail(t, 1)).isCloseTo(Math.atan(1 / t) / Math.PI, withinPercentage(1e-11));
            assertThat(StudentT.upperTail(t, 2)).isCloseTo(1 / (t * t + 2 + t * Math.sqrt(t * t + 2)), withinPercentage(1e-11));
        }
    }

    @Test
    void infiniteDegreesOfFreedomAreNormal() {
        assertThat(StudentT.upperQuantile(0.025, Double.POSITIVE_INFINITY)).isCloseTo(1.959963984540054, offset(1e-14));
        assertThat(StudentT.upperTail(1.959963984540054, Double.POSITIVE_INFINITY)).isCloseTo(0.025, offset(1e-15));
        assertThat(StudentT.upperQuantile(0.025, 1e9)).isCloseTo(1.959963984540054, offset(1e-8));
    }

    @Test
    void quantileBeyondDoubleIsInfinite() {
        assertThat(StudentT.upperQuantile(0.025, 1e-3)).isInfinite();
    }

    @Test
    void refusesWhatIsNoDistribution() {
        assertThatThrownBy(() -> StudentT.upperTail(1, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> StudentT.upperQuantile(0, 3)).isInstanceOf(IllegalArgumentException.class);
    }

    /** R 4.2.2: pf(3.2, 2.5, 7.7, lower.tail = FALSE); with infinite df2 it is a chi-square over its df (pchisq(7.5, 2.5)). */
    @Test
    void ratioOfMeanSquares() {
        assertThat(FisherF.upperTail(3.2, 2.5, 7.7)).isCloseTo(0.0912270628626354, offset(1e-14));
        assertThat(FisherF.upperTail(3, 1, Double.POSITIVE_INFINITY)).isCloseTo(2 * Normal.upperTail(Math.sqrt(3)), offset(1e-14));
        assertThat(FisherF.upperTail(4, 1, 9)).isCloseTo(StudentT.bothTails(2, 9), offset(1e-14));
    }
}
