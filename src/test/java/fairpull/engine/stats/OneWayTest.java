package fairpull.engine.stats;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** NIST StRD, analysis of variance (README in published/nist-strd-anova): all eleven sets. */
class OneWayTest {
    @Test
    void siliconResistivity() {
        Published data = new Published("nist-strd-anova/SiRstv.csv");
        OneWay split = OneWay.of(data.index("group"), data.numbers("y"));
        assertThat(split.f()).isCloseTo(1.18046237440255, digits(9));
        assertThat(Math.sqrt(split.withinMeanSquare())).isCloseTo(1.04076068334656E-01, digits(9));
        assertThat(share(split)).isCloseTo(1.90999039051129E-01, digits(9));
    }

    @Test
    void atomicWeightOfSilver() {
        Published data = new Published("nist-strd-anova/AtmWtAg.csv");
        int[] group = data.index("group");
        OneWay split = OneWay.of(group, data.numbers("y"));
        assertThat(split.f()).isCloseTo(15.9467335677930, digits(9));
        assertThat(Math.sqrt(split.withinMeanSquare())).isCloseTo(1.51048314446410E-05, digits(9));
        assertThat(share(split)).isCloseTo(2.57426544538321E-01, digits(9));
        // two groups: F is t², here by the regression that the install means go through
        int[] each = new int[group.length];
        double[] second = new double[group.length];
        for (int k = 0; k < each.length; k++) {
            each[k] = k;
            second[k] = group[k];
        }
        LeastSquares fit = LeastSquares.of(InstallDesign.of(each, List.of(second)).sumsOf(data.numbers("y")), 0);
        assertThat(Math.pow(fit.estimate() / fit.standardError(), 2)).isCloseTo(15.9467335677930, digits(9));
    }

    /** At 1e6 the data are rounded to 1.2e-10, a share of 1e-9 of their spread; at 1e12 to 1.2e-4, a share of 1e-3. */
    @ParameterizedTest
    @CsvSource({"21, 1, 12", "201, 1, 12", "2001, 1, 11", "21, 1e6, 9", "201, 1e6, 9", "2001, 1e6, 9",
        "21, 1e12, 4", "201, 1e12, 4", "2001, 1e12, 4"})
    void simonAndLesage(int perGroup, double offset, int digits) {
        OneWay split = simonLesage(perGroup, offset);
        assertThat(split.f()).isCloseTo(perGroup, digits(digits));
        assertThat(Math.sqrt(split.withinMeanSquare())).isCloseTo(0.1, digits(digits));
    }

    /** What is lost above is lost in storing the data: F of the stored doubles, by exact fractions (Python 3.11, fractions.Fraction). */
    @ParameterizedTest
    @CsvSource({"21, 1e6, 21.0000000007761", "201, 1e6, 201.00000001241764", "2001, 1e6, 2001.0000001288329",
        "21, 1e12, 21.00081188781877", "201, 1e12, 201.01300409594845", "2001, 1e12, 2001.1349262209505"})
    void losesNothingBeyondTheStoredDigits(int perGroup, double offset, double exact) {
        assertThat(simonLesage(perGroup, offset).f()).isCloseTo(exact, digits(12));
    }

    private static OneWay simonLesage(int perGroup, double offset) {
        int[] group = new int[9 * perGroup];
        double[] values = new double[9 * perGroup];
        for (int k = 0; k < values.length; k++) {
            int g = k / perGroup;
            int place = k % perGroup;
            int tenths = (g == 0 ? 4 : g % 2 == 1 ? 3 : 5) + (place == 0 ? 0 : place % 2 == 1 ? -1 : 1);
            group[k] = g;
            values[k] = (offset * 10 + tenths) / 10;
        }
        return OneWay.of(group, values);
    }

    private static double share(OneWay split) {
        return split.betweenSumOfSquares() / (split.betweenSumOfSquares() + split.withinSumOfSquares());
    }

    private static Percentage digits(int digits) {
        return Percentage.withPercentage(100 * Math.pow(10, -digits));
    }
}
