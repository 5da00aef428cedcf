package fairpull.engine.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Published fits of nested layers; sources and tolerances in published/rig-record and published/mixed-models. */
class NestedModelPublishedTest {
    /** Davies and Goldsmith (1972), lme4: casks in batches. */
    @Test
    void pastes() {
        Published data = new Published("rig-record/pastes.csv");
        NestedEstimate fit = NestedReml.estimate(NestedSums.of(data.index("batch"), data.index("batch", "cask"),
                data.numbers("strength")));
        assertThat(fit.criterion()).isCloseTo(246.9907, offset(5e-5)).isCloseTo(246.990745853, offset(5e-9));
        assertThat(fit.betweenInstalls().orElseThrow().standardDeviation()).isCloseTo(2.9041, offset(5e-5))
                .isCloseTo(2.904077466, withinPercentage(1e-4));
        assertThat(fit.betweenSessions().orElseThrow().standardDeviation()).isCloseTo(1.2874, offset(5e-5))
                .isCloseTo(1.287365881, withinPercentage(1e-4));
        assertThat(fit.lowest().standardDeviation()).isCloseTo(0.8234, offset(5e-5)).isCloseTo(0.823407524, withinPercentage(1e-4));
        assertThat(fit.mean()).isCloseTo(60.0533333, offset(5e-8));
        // equal numbers: 30 values within casks, as many degrees of freedom
        assertThat(fit.lowest().degreesOfFreedom()).isCloseTo(30, offset(1e-6));
    }

    /** Davies and Goldsmith (1972); Bates et al. (2015): batches are the installs of one session. */
    @Test
    void dyestuff() {
        NestedEstimate fit = oneLayer("mixed-models/dyestuff.csv", "batch", "yield");
        assertThat(fit.criterion()).isCloseTo(319.6543, offset(5e-5));
        assertThat(fit.betweenInstalls().orElseThrow().variance()).isCloseTo(1764.05, withinPercentage(1e-9));
        assertThat(fit.lowest().variance()).isCloseTo(2451.25, withinPercentage(1e-9));
        assertThat(fit.standardError()).isCloseTo(19.38, offset(5e-3));
        assertThat(fit.betweenSessions()).isEmpty();
        // Satterthwaite (1946) for (MSB − MSW)/5 with 5 and 24 degrees of freedom, by hand
        double between = 11271.50;
        double within = 2451.25;
        double expected = Math.pow(between - within, 2) / (between * between / 5 + within * within / 24);
        assertThat(fit.betweenInstalls().orElseThrow().degreesOfFreedom()).isCloseTo(expected, withinPercentage(1e-9));
        assertThat(fit.lowest().degreesOfFreedom()).isCloseTo(24, withinPercentage(1e-9));
    }

    /** Box and Tiao (1973), lme4: the variance between batches is exactly zero, and no degree of freedom is claimed for it. */
    @Test
    void dyestuffWithoutBatchVariance() {
        NestedEstimate fit = oneLayer("mixed-models/dyestuff2.csv", "batch", "yield");
        assertThat(fit.criterion()).isCloseTo(161.8283, offset(5e-5)).isCloseTo(161.828277812, offset(5e-9));
        assertThat(fit.betweenInstalls().orElseThrow().variance()).isZero();
        assertThat(fit.betweenInstalls().orElseThrow().degreesOfFreedom()).isZero();
        assertThat(fit.betweenInstalls().orElseThrow().standardError()).isPositive();
        assertThat(fit.lowest().standardDeviation()).isCloseTo(3.715684, offset(5e-7));
        assertThat(fit.mean()).isCloseTo(5.6656, offset(5e-5));
    }

    /** Pinheiro and Bates (2000), from memory. */
    @Test
    void rails() {
        NestedEstimate fit = oneLayer("mixed-models/rail.csv", "rail", "travel");
        assertThat(fit.betweenInstalls().orElseThrow().standardDeviation()).isCloseTo(24.80547, offset(5e-6));
        assertThat(fit.lowest().standardDeviation()).isCloseTo(4.02078, offset(5e-6));
        assertThat(fit.mean()).isCloseTo(66.5, offset(1e-9));
        assertThat(fit.standardError()).isCloseTo(10.17104, offset(5e-6));
        assertThat(-fit.criterion() / 2).isCloseTo(-61.0885, offset(5e-5));
    }

    /** ASTM E691, glucose: s_R² = s_r² + s_L²; where s_L² would be negative the standard prints s_R = s_r. */
    @ParameterizedTest
    @CsvSource({"D,2.6251,3.3657", "E,3.9350,4.1923"})
    void glucose(String material, double repeatability, double reproducibility) {
        NestedEstimate fit = glucose(material);
        double between = fit.betweenInstalls().orElseThrow().variance();
        assertThat(fit.lowest().standardDeviation()).isCloseTo(repeatability, offset(5e-5));
        assertThat(Math.sqrt(fit.lowest().variance() + between)).isCloseTo(reproducibility, offset(5e-5));
    }

    /** Material A: the standard truncates the laboratories' variance at zero, restricted likelihood pools the squares as well. */
    @Test
    void glucoseWithoutLaboratoryVariance() {
        NestedEstimate fit = glucose("A");
        OneWay split = OneWay.of(rowsOf("A", "laboratory").stream().mapToInt(value -> (int) (double) value - 1).toArray(),
                rowsOf("A", "glucose").stream().mapToDouble(value -> value).toArray());
        assertThat(Math.sqrt(split.withinMeanSquare())).isCloseTo(1.0632, offset(5e-5));
        assertThat(fit.betweenInstalls().orElseThrow().variance()).isZero();
        double pooled = (split.betweenSumOfSquares() + split.withinSumOfSquares()) / 23;
        assertThat(fit.lowest().variance()).isCloseTo(pooled, withinPercentage(1e-9)).isLessThan(split.withinMeanSquare());
        assertThat(fit.lowest().degreesOfFreedom()).isCloseTo(16, offset(1e-9));
    }

    private static NestedEstimate glucose(String material) {
        int[] laboratory = rowsOf(material, "laboratory").stream().mapToInt(value -> (int) (double) value - 1).toArray();
        return NestedReml.estimate(NestedSums.of(new int[laboratory.length], laboratory,
                rowsOf(material, "glucose").stream().mapToDouble(value -> value).toArray()));
    }

    private static List<Double> rowsOf(String material, String column) {
        Published data = new Published("rig-record/glucose.csv");
        int[] materials = data.index("material");
        int wanted = List.of("A", "D", "E").indexOf(material);
        double[] numbers = data.numbers(column);
        return new ArrayList<>(IntStream.range(0, numbers.length).filter(k -> materials[k] == wanted).mapToObj(k -> numbers[k]).toList());
    }

    private static NestedEstimate oneLayer(String file, String unit, String value) {
        Published data = new Published(file);
        double[] values = data.numbers(value);
        return NestedReml.estimate(NestedSums.of(new int[values.length], data.index(unit), values));
    }
}
