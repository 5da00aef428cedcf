package fairpull.engine.stats;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Interpolated quantiles against those of StudentT, which is held to tables and R. */
class TQuantilesTest {
    @ParameterizedTest
    @ValueSource(doubles = {0.025, 0.05, 0.01, 0.001, 1e-6})
    void areThoseOfStudentsT(double probability) {
        TQuantiles quantiles = new TQuantiles(probability);
        for (double df = 1; df < 1e7; df *= 1.037) {
            assertThat(quantiles.at(df)).as("%s degrees of freedom", df)
                    .isCloseTo(StudentT.upperQuantile(probability, df), Percentage.withPercentage(0.1));
        }
        assertThat(quantiles.at(Double.POSITIVE_INFINITY)).isEqualTo(Normal.upperQuantile(probability));
    }
}
