package fairpull.engine.judging;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import fairpull.domain.finding.Checks.Equivalence;
import fairpull.domain.finding.Checks.RecordCheck;
import fairpull.domain.finding.Checks.ReturnCheck;
import fairpull.domain.finding.Estimate;
import fairpull.domain.finding.Finding;
import fairpull.domain.finding.JudgeSettings;
import fairpull.domain.finding.PullTable;
import fairpull.domain.finding.ScatterRecord;
import fairpull.domain.plan.Drift;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every figure of the judge against an independent implementation: dense matrices, lme4 and pbkrtest in R (README beside the tables).
 * Estimate, standard error and degrees of freedom within 1e-5 relative, p-values within 1e-4 relative.
 */
class JudgeAgainstRTest {
    private static final double FIGURES = 1e-5;
    private static final double P_VALUES = 1e-4;
    /** lme4 searches without a slope and stops short of the minimum where the values have a large offset. */
    private static final double REFIT_VARIANCE = 1e-4;
    private static final double MARGIN = 1.5;
    private static final Optional<ScatterRecord> NONE = Optional.empty();

    static Stream<String> tables() {
        return GoldenTables.names().stream();
    }

    @Test
    void noTableIsMissing() {
        assertThat(GoldenTables.names()).hasSizeGreaterThanOrEqualTo(26);
    }

    @ParameterizedTest
    @MethodSource("tables")
    void judgesAsR(String name) {
        check(GoldenTables.table(name), GoldenTables.expected(name), name);
    }

    static void check(PullTable table, JsonNode expected, String name) {
        for (Drift drift : Drift.values()) {
            JsonNode figures = expected.get(drift.name().toLowerCase(Locale.ROOT));
            JudgeSettings own = JudgeSettings.plain().withDrift(drift).withWorthwhileGain(MARGIN).drawn(true);
            checkOwn(Judge.judge(table, own), figures, name + " " + drift);
            for (Map.Entry<String, JudgeSettings> record : records(own).entrySet()) {
                if (figures.has(record.getKey())) {
                    checkEstimate(Judge.judge(table, record.getValue()), figures.get(record.getKey()),
                            name + " " + drift + " " + record.getKey());
                }
            }
            if (figures.has("recordF_0.6_4")) {
                checkRecordCheck(Judge.judge(table, own.withRecords(NONE, record(0.6, 4))).recordCheck(), figures.get("recordF_0.6_4"),
                        name + " " + drift);
            }
        }
        JudgeSettings covariate = JudgeSettings.plain().withCovariates(List.of("iat_c")).withWorthwhileGain(MARGIN);
        if (expected.path("covariateIat").has("ownData")) {
            checkEstimate(Judge.judge(table, covariate), expected.get("covariateIat").get("ownData"), name + " covariate");
            checkEstimate(Judge.judge(table, covariate.withRecords(NONE, record(0.6, 4))),
                    expected.get("covariateIat").get("record_0.5_4"), name + " covariate with record");
        }
        checkReturn(Judge.judge(table, JudgeSettings.plain()).returnCheck(), expected.path("returnCheck"), name);
        JsonNode randomisation = expected.path("randomisationP");
        if (randomisation.isNumber()) {
            Finding drawn = Judge.judge(table, JudgeSettings.plain().drawn(true).withRecords(NONE, record(1, 20)));
            close(drawn.randomisation().orElseThrow().pValue(), randomisation, P_VALUES, name + " randomisation");
        }
    }

    private static Map<String, JudgeSettings> records(JudgeSettings own) {
        return new TreeMap<>(Map.of(
                "record_0.5_4", own.withRecords(NONE, record(0.6, 4)),
                "record_1_20", own.withRecords(NONE, record(1.2, 20)),
                "recordBoth", own.withRecords(record(1.1, 10), record(0.8, 6))));
    }

    private static Optional<ScatterRecord> record(double standardDeviation, double degreesOfFreedom) {
        return Optional.of(new ScatterRecord(standardDeviation, degreesOfFreedom));
    }

    private static void checkOwn(Finding finding, JsonNode figures, String name) {
        if (figures.has("ownData")) {
            checkEstimate(finding, figures.get("ownData"), name + " own");
            Estimate means = finding.installMeansTest().orElseThrow();
            JsonNode expected = figures.get("installMeans");
            close(means.change(), expected.get("estimate"), FIGURES, name + " means estimate");
            close(means.standardError(), expected.get("standardError"), FIGURES, name + " means standard error");
            close(means.degreesOfFreedom(), expected.get("degreesOfFreedom"), FIGURES, name + " means df");
            close(means.pValue(), expected.get("pValue"), P_VALUES, name + " means p");
        } else {
            assertThat(finding.estimate()).as(name).isEmpty();
            assertThat(finding.interval()).as(name).isEmpty();
        }
        assertThat(finding.tippingScatter().isPresent()).as(name + " has tipping scatter").isEqualTo(figures.path("tippingScatter").isNumber());
        finding.tippingScatter().ifPresent(tipping -> close(tipping, figures.get("tippingScatter"), FIGURES, name + " tipping scatter"));
    }

    private static void checkEstimate(Finding finding, JsonNode expected, String name) {
        Estimate estimate = finding.estimate().orElseThrow();
        close(estimate.change(), expected.get("estimate"), FIGURES, name + " estimate");
        close(estimate.standardError(), expected.get("standardError"), FIGURES, name + " standard error");
        close(estimate.degreesOfFreedom(), expected.get("degreesOfFreedom"), FIGURES, name + " df");
        close(estimate.t(), expected.get("t"), FIGURES, name + " t");
        close(estimate.pValue(), expected.get("pValue"), P_VALUES, name + " p");
        if (Math.abs(expected.get("low").asDouble()) < 1e6) {
            close(finding.interval().orElseThrow().low(), expected.get("low"), P_VALUES, name + " low");
            close(finding.interval().orElseThrow().high(), expected.get("high"), P_VALUES, name + " high");
        }
        close(finding.scatter().orElseThrow().pull(), expected.get("pullScatter"), FIGURES, name + " pull scatter");
        double refit = expected.get("refitVariance").asDouble();
        assertThat(finding.scatter().orElseThrow().refitVariance()).as(name + " refit variance")
                .isCloseTo(refit, Offset.offset(REFIT_VARIANCE * (refit + 0.1)));
        Equivalence equivalence = finding.equivalence().orElseThrow();
        close(equivalence.pValue(), expected.get("equivalenceP"), P_VALUES, name + " equivalence");
    }

    private static void checkRecordCheck(Optional<RecordCheck> check, JsonNode expected, String name) {
        close(check.orElseThrow().f(), expected.get("F"), FIGURES, name + " F");
        close(check.orElseThrow().df1(), expected.get("df1"), FIGURES, name + " df1");
        close(check.orElseThrow().df2(), expected.get("df2"), FIGURES, name + " df2");
        close(check.orElseThrow().pValue(), expected.get("pValue"), P_VALUES, name + " record p");
    }

    private static void checkReturn(Optional<ReturnCheck> check, JsonNode expected, String name) {
        assertThat(check.isPresent()).as(name + " has a return check").isEqualTo(expected.has("difference"));
        check.ifPresent(found -> {
            close(found.difference(), expected.get("difference"), FIGURES, name + " return");
            close(found.pullOnly().low(), expected.get("low"), FIGURES, name + " return low");
            close(found.pullOnly().high(), expected.get("high"), FIGURES, name + " return high");
        });
    }

    private static void close(double actual, JsonNode expected, double tolerance, String name) {
        double wanted = expected.asDouble();
        double difference = Math.abs(actual - wanted) / Math.max(Math.abs(wanted), 1e-3);
        assertThat(difference).as(name + ": " + actual + " for " + wanted).isLessThanOrEqualTo(tolerance);
    }
}
