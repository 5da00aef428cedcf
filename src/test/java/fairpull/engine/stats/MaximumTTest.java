package fairpull.engine.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.engine.stats.MaximumT.Scatter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Critical values of the largest of correlated t statistics. */
class MaximumTTest {
    private static final int DRAWS = 40_000;

    @ParameterizedTest
    @CsvFileSource(resources = "/computed/maximum-t-mvtnorm/quantiles.csv", numLinesToSkip = 1)
    void agreesWithMvtnorm(String kind, int n, double a, String df, String sides, double rate, double quantile) {
        double nu = df.equals("Inf") ? Double.POSITIVE_INFINITY : Double.parseDouble(df);
        assertThat(critical(vectors(kind, n, a), new Scatter(nu, 0), rate, sides.equals("two")))
                .isCloseTo(quantile, within(0.006 * quantile));
    }

    /** Studentised maximum modulus, 5 %, from published tables (values from memory). */
    @ParameterizedTest
    @CsvSource({"3, 10, 2.829", "5, 10, 3.103", "10, 20, 3.114", "5, 5, 3.789"})
    void independentStatisticsGiveTheMaximumModulus(int k, double df, double table) {
        assertThat(critical(vectors("equal", k, 0), new Scatter(df, 0), 0.05, true)).isCloseTo(table, within(0.006 * table));
    }

    /** Comparisons with one control at equal numbers, two-sided 5 %: Dunnett (1964), Biometrics 20, 482–491 (values from memory). */
    @ParameterizedTest
    @CsvSource({"2, 5, 3.03", "2, 10, 2.57", "3, 10, 2.76", "3, 20, 2.54", "5, 20, 2.73", "4, 60, 2.51"})
    void halfCorrelatedStatisticsGiveDunnettsTable(int k, double df, double table) {
        assertThat(critical(vectors("equal", k, 0.5), new Scatter(df, 0), 0.05, true)).isCloseTo(table, within(0.005 + 0.006 * table));
    }

    @ParameterizedTest
    @CsvSource({"1, 0", "1, 1", "2.5, 2", "7, 4", "30, 8"})
    void statisticsThatAreOneGiveStudentsT(double df, int own) {
        List<double[]> same = Collections.nCopies(50, new double[] {1, -2, 0.5});
        assertThat(critical(same, new Scatter(df, own), 0.05, true)).isCloseTo(StudentT.upperQuantile(0.025, df), within(1e-6));
        assertThat(critical(same, new Scatter(df, own), 0.05, false)).isCloseTo(StudentT.upperQuantile(0.05, df), within(1e-6));
    }

    /** Independent t statistics, each with a scatter of its own: P(all |T| ≤ c) = P(|T| ≤ c)ⁿ exactly. */
    @ParameterizedTest
    @CsvSource({"2, 3", "5, 3", "20, 2", "20, 8"})
    void ownScatterOfIndependentStatisticsMultiplies(int n, int df) {
        double one = StudentT.upperQuantile((1 - Math.pow(0.95, 1.0 / n)) / 2, df);
        assertThat(critical(vectors("equal", n, 0), new Scatter(df, df), 0.05, true)).isCloseTo(one, within(0.02 * one));
    }

    @Test
    void liesBetweenOneStatisticAndBonferroni() {
        for (double length : new double[] {0.5, 3, 50}) {
            double c = critical(vectors("gaussian", 30, length), new Scatter(6, 4), 0.05, true);
            assertThat(c).isBetween(StudentT.upperQuantile(0.025, 6), StudentT.upperQuantile(0.025 / 30, 6));
        }
    }

    @Test
    void theSameSeedGivesTheSameDrawsAndChunksOthers() {
        MaximumT maximum = MaximumT.of(vectors("gaussian", 20, 4));
        Scatter scatter = new Scatter(5, 2);
        assertThat(maximum.draw(7, 50, scatter, true)).isEqualTo(maximum.draw(7, 50, scatter, true))
                .isNotEqualTo(maximum.draw(8, 50, scatter, true));
    }

    private static double critical(List<double[]> vectors, Scatter scatter, double rate, boolean bothSides) {
        MaximumT maximum = MaximumT.of(vectors);
        return maximum.criticalValue(maximum.draw(1, DRAWS, scatter, bothSides), scatter, rate, bothSides);
    }

    /** Rows of the Cholesky factor of a correlation, as quantiles.R defines it: their cosines are its entries. */
    private static List<double[]> vectors(String kind, int n, double a) {
        double[][] l = new double[n][n];
        for (int j = 0; j < n; j++) {
            for (int i = j; i < n; i++) {
                double sum = correlation(kind, i - j, a);
                for (int k = 0; k < j; k++) {
                    sum -= l[i][k] * l[j][k];
                }
                l[i][j] = i == j ? Math.sqrt(Math.max(0, sum)) : l[j][j] > 1e-9 ? sum / l[j][j] : 0;
            }
        }
        return new ArrayList<>(List.of(l));
    }

    private static double correlation(String kind, int distance, double a) {
        if (distance == 0) {
            return 1;
        }
        return switch (kind) {
            case "equal" -> a;
            case "exponential" -> Math.exp(-distance / a);
            case "gaussian" -> Math.exp(-distance * distance / (2 * a * a)) * (1 - 1e-6);
            default -> throw new IllegalArgumentException(kind);
        };
    }
}
