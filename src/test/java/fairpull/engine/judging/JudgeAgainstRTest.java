package fairpull.engine.judging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import fairpull.domain.finding.Estimate;
import fairpull.domain.finding.JudgeSettings;
import fairpull.domain.finding.PullRow;
import fairpull.domain.finding.PullTable;
import fairpull.domain.finding.ScatterRecord;
import fairpull.domain.plan.Drift;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every figure of the judge against an independent implementation: dense matrices, lme4 and pbkrtest in R (README beside the tables). */
class JudgeAgainstRTest {
    static Stream<String> tables() {
        return GoldenTables.names(GoldenTables.SIMULATED).stream();
    }

    static Stream<String> furtherTables() {
        return GoldenTables.names(GoldenTables.FURTHER).stream();
    }

    @Test
    void noTableIsMissing() {
        assertThat(tables()).hasSizeGreaterThanOrEqualTo(28);
        assertThat(furtherTables()).hasSizeGreaterThanOrEqualTo(60);
    }

    @ParameterizedTest
    @MethodSource("tables")
    void judgesAsR(String name) {
        new Comparison(GoldenTables.table(GoldenTables.SIMULATED, name), GoldenTables.expected(GoldenTables.SIMULATED, name), name).all();
    }

    @ParameterizedTest
    @MethodSource("furtherTables")
    void judgesFurtherTablesAsR(String name) {
        new Comparison(GoldenTables.table(GoldenTables.FURTHER, name), GoldenTables.expected(GoldenTables.FURTHER, name), name).all();
    }

    /** The same day in another unit, or on another origin, has the same answer. */
    @ParameterizedTest
    @ValueSource(doubles = {1e-6, 1e6, 745.7, -1})
    void unitsDoNotMatter(double factor) {
        for (String name : List.of("03-ABA-n3-si1", "18-ABBA-missing-drift", "28-ABABA-unequal-38546", "35-RB4-n3")) {
            double scale = Math.abs(factor);
            double shift = factor < 0 ? 1e6 : 0;
            new Comparison(moved(GoldenTables.table(GoldenTables.SIMULATED, name), scale, shift),
                    GoldenTables.expected(GoldenTables.SIMULATED, name), name + " moved", scale).all();
        }
    }

    private static PullTable moved(PullTable table, double scale, double shift) {
        return new PullTable(table.unit(), table.covariateNames(), table.rows().stream().map(row -> new PullRow(row.session(), row.install(),
                row.part(), row.pull(), row.minutes(), scale * row.value() + shift, row.covariates())).toList());
    }

    /** The likelihood of these two has two minima; R stopped in the higher one, the lower was found by a scan (README of the tables). */
    @Test
    void takesTheLowerOfTwoMinima() {
        JudgeSettings drift = JudgeSettings.plain().withDrift(Drift.LINEAR);
        Estimate own = Judge.judge(GoldenTables.table(GoldenTables.FURTHER, "u08-ABAB-8-1-5-2"), drift).estimate().orElseThrow();
        assertThat(own.change()).isCloseTo(2.575529, offset(1e-6));
        assertThat(own.standardError()).isCloseTo(0.9283717, offset(1e-7));
        assertThat(own.degreesOfFreedom()).isCloseTo(1.062698, offset(1e-6));
        JudgeSettings record = JudgeSettings.plain().withRecords(Optional.empty(), Optional.of(new ScatterRecord(1.2, 20)));
        Estimate other = Judge.judge(GoldenTables.table(GoldenTables.FURTHER, "r02-refit-20x-unequal"), record).estimate().orElseThrow();
        assertThat(other.change()).isCloseTo(-8.267041, offset(1e-6));
        assertThat(other.standardError()).isCloseTo(3.194159, offset(1e-6));
        assertThat(other.degreesOfFreedom()).isCloseTo(24.02788, offset(1e-5));
    }
}
