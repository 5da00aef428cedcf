package fairpull.engine.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Printed tables of published/scatter. */
class ChiSquaredTest {
    @Test
    void quantilesAreThoseOfTheTable() throws IOException {
        List<String> lines = Files.readAllLines(Path.of("src/test/resources/published/scatter/chi-squared.csv"));
        assertThat(lines).hasSizeGreaterThan(10);
        for (String line : lines.subList(1, lines.size())) {
            String[] cells = line.split(",");
            assertThat(ChiSquared.quantile(Double.parseDouble(cells[1]), Double.parseDouble(cells[0]))).as(line)
                    .isCloseTo(Double.parseDouble(cells[2]), offset(0.00051));
        }
    }

    @Test
    void theIntervalOfAScatterFollowsFromThem() {
        double[] factors = ChiSquared.scatterFactors(0.95, 10);
        assertThat(factors[0]).isCloseTo(Math.sqrt(10 / 20.483), offset(1e-4));
        assertThat(factors[1]).isCloseTo(Math.sqrt(10 / 3.247), offset(2e-4));
    }

    @Test
    void theIntervalHoldsItsEstimateHoweverLittleIsKnown() {
        for (double freedom : new double[] {1e-3, 0.02, 0.5, 1, 4.7, 1e4}) {
            double[] factors = ChiSquared.scatterFactors(0.95, freedom);
            assertThat(factors[0]).as("%s", freedom).isBetween(0.0, 1.0);
            assertThat(factors[1]).as("%s", freedom).isGreaterThanOrEqualTo(1);
        }
    }

    @Test
    void theBoundsOfTwoVariancesAreThoseOfTheHandbook() {
        assertThat(65.54909 * 65.54909 / (61.85425 * 61.85425)).isCloseTo(1.123037, offset(5e-7));
        assertThat(FisherF.upperTail(1.2894, 239, 239)).isCloseTo(0.025, offset(5e-5));
        assertThat(FisherF.upperTail(1 / 0.7756, 239, 239)).isCloseTo(0.025, offset(5e-5));
        assertThat(2 * FisherF.upperTail(1.123037, 239, 239)).isGreaterThan(0.05);
    }
}
