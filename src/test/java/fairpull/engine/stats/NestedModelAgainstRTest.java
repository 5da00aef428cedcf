package fairpull.engine.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Nested tables against lme4 and a dense expected information in R; script, figures and tolerances in computed/rig-r. */
class NestedModelAgainstRTest {
    private static final Path FOLDER = Path.of("src/test/resources/computed/rig-r");

    static List<String> figures() throws IOException {
        List<String> lines = Files.readAllLines(FOLDER.resolve("figures.csv"));
        return lines.subList(1, lines.size());
    }

    @ParameterizedTest
    @MethodSource("figures")
    void variancesAndTheirDegreesOfFreedom(String line) throws IOException {
        String[] r = line.split(",", -1);
        NestedEstimate fit = NestedReml.estimate(sums(r[0]));

        same(Optional.of(fit.lowest()), r[1], r[4], r[7]);
        same(fit.betweenInstalls(), r[2], r[5], r[8]);
        same(fit.betweenSessions(), r[3], r[6], r[9]);
        assertThat(fit.criterion()).isCloseTo(Double.parseDouble(r[10]), withinPercentage(1e-7));
        assertThat(fit.mean()).isCloseTo(Double.parseDouble(r[11]), withinPercentage(1e-7));
        assertThat(fit.standardError()).isCloseTo(Double.parseDouble(r[12]), withinPercentage(1e-5));
    }

    private static void same(Optional<NestedEstimate.Component> component, String variance, String error, String degreesOfFreedom) {
        assertThat(component.isPresent()).isEqualTo(!variance.isEmpty());
        component.ifPresent(found -> {
            double expected = Double.parseDouble(variance);
            if (expected == 0) {
                assertThat(found.variance()).isZero();
                assertThat(found.degreesOfFreedom()).isZero();
            } else {
                assertThat(found.variance()).isCloseTo(expected, withinPercentage(1e-5));
                assertThat(found.degreesOfFreedom()).isCloseTo(Double.parseDouble(degreesOfFreedom), withinPercentage(1e-5));
            }
            assertThat(found.standardError()).isCloseTo(Double.parseDouble(error), withinPercentage(1e-5));
        });
    }

    @Test
    void refusesWhatHasNoScatter() {
        assertThatThrownBy(() -> NestedReml.estimate(NestedSums.of(new int[] {0}, new int[] {0}, new double[] {190})))
                .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("one value");
        assertThatThrownBy(() -> NestedReml.estimate(NestedSums.of(new int[4], new int[] {0, 0, 1, 1}, new double[] {190, 190, 191, 191})))
                .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("no pull scatter");
        assertThatThrownBy(() -> NestedSums.of(new int[] {0, 1}, new int[] {0, 0}, new double[] {190, 191}))
                .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("two sessions");
    }

    private static NestedSums sums(String name) throws IOException {
        List<String[]> rows = new ArrayList<>();
        List<String> lines = Files.readAllLines(FOLDER.resolve(name + ".csv"));
        lines.subList(1, lines.size()).forEach(row -> rows.add(row.split(",")));
        return NestedSums.of(index(rows, 0), index(rows, 1), rows.stream().mapToDouble(row -> Double.parseDouble(row[3])).toArray());
    }

    private static int[] index(List<String[]> rows, int column) {
        List<String> seen = rows.stream().map(row -> row[column]).distinct().toList();
        return Arrays.stream(rows.stream().map(row -> row[column]).toArray(String[]::new)).mapToInt(seen::indexOf).toArray();
    }
}
