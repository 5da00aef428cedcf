package fairpull.engine.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BestOfPullsTest {
    /** Tippett (1925), Biometrika 17, tabulated; here to four decimals. */
    @ParameterizedTest
    @CsvSource({"1, 0", "2, 0.5642", "3, 0.8463", "4, 1.0294", "5, 1.1630"})
    void expectedMaximaOfNormals(int n, double expected) {
        assertThat(ExpectedMaximum.of(n)).isCloseTo(expected, within(5e-5));
    }

    /** The best of nB passes the best of nA with the exact chance nB ÷ (nA + nB), whichever way the tails are summed. */
    @ParameterizedTest
    @CsvSource({"2, 5, 0.59877", "3, 5, 0.31668", "1, 3, 0.84628", "3, 10, 0.69247", "5, 5, 0"})
    void bestAgainstBest(int before, int after, double gain) {
        DifferenceOfMaxima none = new DifferenceOfMaxima(1, 0, before, after);

        assertThat(none.upperTail(0)).isCloseTo((double) after / (before + after), within(1e-9));
        assertThat(none.mean()).isCloseTo(gain, within(5e-6));
    }

    @Test
    void oneOfOneIsNormalAndRestAddsInQuadrature() {
        DifferenceOfMaxima single = new DifferenceOfMaxima(0.8, 0.6, 1, 0);

        assertThat(single.upperTail(1.2)).isCloseTo(Normal.upperTail(1.2), within(1e-9));
        assertThat(single.sizeReached(0.05)).isCloseTo(1.959964, within(1e-6));
        assertThat(new DifferenceOfMaxima(1, 0, 1, 1).upperQuantile(0.025)).isCloseTo(1.959964 * Math.sqrt(2), within(1e-6));
    }

    /** The table against ∫ f(y)·[1 − Φ(y + u)ᵐ] dy itself, at places on and between its nodes. */
    @ParameterizedTest
    @CsvSource({"1, 1", "2, 5", "5, 2", "3, 40"})
    void aTableOfBestAgainstBestIsItsIntegral(int before, int after) {
        BestAgainstBest table = new BestAgainstBest(before, after);

        for (double u = -9; u < 9; u += 0.37) {
            double sum = 0;
            for (double y = -8; y < 8; y += 0.02) {
                sum += 0.02 * before * ExpectedMaximum.density(y) * Math.pow(Normal.cdf(y), before - 1)
                        * (1 - Math.pow(Normal.cdf(y + u), after));
            }
            assertThat(table.upperTail(u)).isCloseTo(sum, within(1e-7));
        }
        assertThat(table.upperTail(-20)).isEqualTo(1);
        assertThat(table.upperTail(20)).isZero();
    }

    /** P(D ≥ d) counted in 200,000 drawn differences of the best of five and the best of two, seed 1925: one standard error is 0.001. */
    @Test
    void bestAgainstBestWithRestIsWhatIsDrawn() {
        DifferenceOfMaxima difference = new DifferenceOfMaxima(1.4, 0.9, 2, 5);
        Deviates deviates = new Deviates(1925);
        int draws = 200_000;
        int beyond = 0;
        for (int k = 0; k < draws; k++) {
            double d = 1.4 * (largest(deviates, 5) - largest(deviates, 2)) + 0.9 * deviates.normal();
            beyond += d >= 1.5 ? 1 : 0;
        }

        assertThat(difference.upperTail(1.5)).isCloseTo((double) beyond / draws, within(0.004));
    }

    private static double largest(Deviates deviates, int of) {
        double largest = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < of; k++) {
            largest = Math.max(largest, deviates.normal());
        }
        return largest;
    }
}
