package fairpull.engine.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NoncentralTTest {
    /** Integration with 30 digits (mpmath, own computation); the last row is P(T ≤ 12.28834), NIST e-Handbook 7.2.6.3. */
    @ParameterizedTest
    @CsvSource({"2.5, 4, 2, .598080536337", "2, 10, 1, .807611562530", "3, 12, 2.5, .644488934862", "-1, 5, 1, .030807353261",
        "0, 5, 1, .158655253931457", "2, 20, .5, .920442636806", "5, 1, 10, .049860203757", "35, 9, 30, .676371329557",
        "12.28834, 42, 8.4037, .989999985936"})
    void asByIntegration(double t, double df, double noncentrality, double expected) {
        assertThat(NoncentralT.cdf(t, df, noncentrality)).isCloseTo(expected, offset(1e-11));
        assertThat(NoncentralT.cdf(-t, df, -noncentrality)).isCloseTo(1 - expected, offset(1e-11));
    }

    /** Power of the two-sided t test at 5 %: computed with 30 digits; the last one is power.t.test(n = 20, delta = 1), strict, of R. */
    @ParameterizedTest
    @CsvSource({"1, 5, .305160", "2, 4, .564514", "3, 4, .754984", "8, 2.5, .593078", "18, 2, .473366", "38, 3.16227766016838, .868953"})
    void powerOfTheTest(double df, double noncentrality, double expected) {
        double critical = StudentT.upperQuantile(0.025, df);
        double power = 1 - NoncentralT.cdf(critical, df, noncentrality) + NoncentralT.cdf(-critical, df, noncentrality);
        assertThat(power).isCloseTo(expected, offset(5e-7));
    }

    /** R: power.t.test(n = 20, delta = 1) 0.8689528 (upper tail only); Cohen (1988), Statistical Power Analysis: n 64 a group at d 0.5. */
    @Test
    void publishedSampleSizes() {
        assertThat(upperTailPower(20, 1)).isCloseTo(0.8689528, offset(5e-8));
        assertThat(upperTailPower(63, 0.5)).isLessThan(0.8);
        assertThat(upperTailPower(64, 0.5)).isGreaterThan(0.8);
        assertThat(upperTailPower(26, 0.8)).isGreaterThan(0.8);
        assertThat(upperTailPower(25, 0.8)).isLessThan(0.8);
    }

    private static double upperTailPower(int perGroup, double difference) {
        double df = 2 * perGroup - 2;
        return 1 - NoncentralT.cdf(StudentT.upperQuantile(0.025, df), df, difference * Math.sqrt(perGroup / 2.0));
    }

    @Test
    void withoutNoncentralityIsStudents() {
        for (double df : new double[] {0.01, 0.3, 1, 4.5, 60, 3e4, 1e7}) {
            for (double t : new double[] {-1e6, -3, -0.1, 0, 0.5, 2, 40, 1e12}) {
                assertThat(NoncentralT.cdf(t, df, 0)).as(t + " at " + df).isCloseTo(StudentT.cdf(t, df), offset(1e-11));
            }
        }
    }

    /** Both ways of integrating give the same on either side of where one takes over from the other. */
    @Test
    void isContinuousWhereTheMethodChanges() {
        for (double df : new double[] {0.2, 1, 3, 17, 150, 2500}) {
            double border = Math.sqrt(2 * df + 100);
            for (double ratio : new double[] {0.5, 0.9, 1, 1.05, 1.5, 4}) {
                double below = NoncentralT.cdf(ratio * border, df, border * (1 - 1e-13));
                double above = NoncentralT.cdf(ratio * border, df, border * (1 + 1e-13));
                assertThat(below).as("df " + df + " t " + ratio * border).isCloseTo(above, offset(2e-11));
            }
        }
    }

    /** With many degrees of freedom T is Z + δ over 1; with δ far above everything else T/δ is 1/s. */
    @Test
    void limits() {
        assertThat(NoncentralT.cdf(3, Double.POSITIVE_INFINITY, 2)).isEqualTo(Normal.cdf(1));
        assertThat(NoncentralT.cdf(3, 1e12, 2)).isCloseTo(Normal.cdf(1), offset(1e-10));
        // P(s ≥ 1/2) at one degree of freedom is P(|Z| ≥ 1/2)
        assertThat(NoncentralT.cdf(2e9, 1, 1e9)).isCloseTo(2 * Normal.upperTail(0.5), offset(1e-10));
        assertThat(NoncentralT.cdf(-5, 3, 1e9)).isEqualTo(0);
    }

    @Test
    void refusesWhatIsNoDistribution() {
        assertThatThrownBy(() -> NoncentralT.cdf(1, 0, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> NoncentralT.cdf(1, 2, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }
}
