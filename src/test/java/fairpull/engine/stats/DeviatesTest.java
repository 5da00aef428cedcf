package fairpull.engine.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DeviatesTest {
    private static final int MANY = 200_000;

    @Test
    void normalDeviatesHaveTheMomentsAndTailsOfTheDistribution() {
        Deviates deviates = new Deviates(1);
        double[] powers = new double[5];
        int beyond = 0;
        for (int i = 0; i < MANY; i++) {
            double z = deviates.normal();
            for (int p = 1; p < 5; p++) {
                powers[p] += Math.pow(z, p) / MANY;
            }
            beyond += Math.abs(z) > 1.959964 ? 1 : 0;
        }
        assertThat(powers[1]).isCloseTo(0, within(4 / Math.sqrt(MANY)));
        assertThat(powers[2]).isCloseTo(1, within(4 * Math.sqrt(2.0 / MANY)));
        assertThat(powers[4]).isCloseTo(3, within(4 * Math.sqrt(96.0 / MANY)));
        assertThat((double) beyond / MANY).isCloseTo(0.05, within(4 * Math.sqrt(0.05 * 0.95 / MANY)));
    }

    /** Mean ν and variance 2ν; the share below ν/2 by the chi-square of Commons Statistics. */
    @ParameterizedTest
    @ValueSource(doubles = {0.7, 1, 2, 4.5, 20})
    void chiSquareDeviatesHaveTheMomentsAndShares(double nu) {
        Deviates deviates = new Deviates(2);
        double sum = 0;
        int below = 0;
        for (int i = 0; i < MANY; i++) {
            double x = deviates.chiSquare(nu);
            sum += x;
            below += x < nu / 2 ? 1 : 0;
        }
        double share = org.apache.commons.statistics.distribution.ChiSquaredDistribution.of(nu).cumulativeProbability(nu / 2);
        assertThat(sum / MANY).isCloseTo(nu, within(4 * Math.sqrt(2 * nu / MANY)));
        assertThat((double) below / MANY).isCloseTo(share, within(4 * Math.sqrt(share * (1 - share) / MANY)));
    }

    @Test
    void aSeedGivesOneRow() {
        assertThat(new Deviates(5).normal()).isEqualTo(new Deviates(5).normal()).isNotEqualTo(new Deviates(6).normal());
    }
}
