package fairpull.engine.judging;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
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
import java.util.Optional;

/** Holds the findings for one table against figures computed elsewhere; what a key leaves out has no figure there. */
final class Comparison {
    private static final double FIGURES = 1e-5;
    private static final double P_VALUES = 1e-4;
    /** lme4 searches without a slope and stops short of the minimum where the values have a large offset. */
    private static final double REFIT_VARIANCE = 1e-4;
    /** An estimate that is small beside its standard error is held to this share of that. */
    private static final double SHARE_OF_STANDARD_ERROR = 1e-5;
    private static final List<String> RECORDS = List.of("record_0.5_4", "record_1_20", "recordBoth");

    private final PullTable table;
    private final JsonNode expected;
    private final String name;
    private final double scale;
    private final double margin;

    Comparison(PullTable table, JsonNode expected, String name) {
        this(table, expected, name, 1);
    }

    /** For a table whose values, and with them records and margin, were multiplied by {@code scale}; figures are scaled back. */
    Comparison(PullTable table, JsonNode expected, String name, double scale) {
        this.table = table;
        this.expected = expected;
        this.name = name;
        this.scale = scale;
        this.margin = expected.get("margin").asDouble();
    }

    void all() {
        for (Drift drift : Drift.values()) {
            JudgeSettings own = JudgeSettings.plain().withDrift(drift).withWorthwhileGain(scale * margin);
            byMode(own, expected.path(drift.name().toLowerCase(Locale.ROOT)), drift.toString());
        }
        covariates(Drift.NONE, expected.path("covariateIat"));
        covariates(Drift.LINEAR, expected.path("covariateIatLinear"));
        returnCheck();
        randomisation();
    }

    private void byMode(JudgeSettings own, JsonNode figures, String what) {
        Finding finding = Judge.judge(table, own);
        if (figures.has("ownData")) {
            estimate(finding, figures.get("ownData"), what + " own data");
        }
        if (name.startsWith("r04") && own.drift() == Drift.QUADRATIC) {
            // ABBA: on install means the bend runs along with the part; R drops the bend and goes on, the judge says nothing
            assertThat(finding.installMeansTest()).isEmpty();
        } else if (figures.has("installMeans")) {
            JsonNode means = figures.get("installMeans");
            Estimate found = finding.installMeansTest().orElseThrow();
            close(found.change() / scale, means.get("estimate"), FIGURES, what + " means");
            close(found.standardError() / scale, means.get("standardError"), FIGURES, what + " means standard error");
            close(found.degreesOfFreedom(), means.get("degreesOfFreedom"), FIGURES, what + " means df");
            close(found.pValue(), means.get("pValue"), P_VALUES, what + " means p");
        } else if (own.drift() == Drift.NONE) {
            assertThat(finding.estimate()).as(name + " " + what + " cannot be judged").isEmpty();
        }
        records(own, figures, what);
        tipping(finding, figures, what);
        if (figures.has("recordF_0.6_4") && finding.installMeansTest().isPresent()) {
            recordCheck(Judge.judge(table, withRecord(own, "recordF_0.6_4")).recordCheck().orElseThrow(), figures.get("recordF_0.6_4"), what);
        }
    }

    private void records(JudgeSettings own, JsonNode figures, String what) {
        for (String record : RECORDS) {
            if (figures.has(record)) {
                estimate(Judge.judge(table, withRecord(own, record)), figures.get(record), what + " " + record);
            }
        }
    }

    private void covariates(Drift drift, JsonNode figures) {
        if (figures.isMissingNode()) {
            return;
        }
        JudgeSettings own = JudgeSettings.plain().withDrift(drift).withCovariates(List.of("iat_c")).withWorthwhileGain(scale * margin);
        if (figures.has("ownData")) {
            estimate(Judge.judge(table, own), figures.get("ownData"), "covariate own data");
        }
        records(own, figures, "covariate");
    }

    private JudgeSettings withRecord(JudgeSettings own, String key) {
        JsonNode settings = expected.path("settings").path(key);
        if (!settings.isMissingNode()) {
            return own.withRecords(record(settings, "pull"), record(settings, "refit"));
        }
        return switch (key) {
            case "record_0.5_4", "recordF_0.6_4" -> own.withRecords(Optional.empty(), record(0.6, 4));
            case "record_1_20" -> own.withRecords(Optional.empty(), record(1.2, 20));
            case "recordBoth" -> own.withRecords(record(1.1, 10), record(0.8, 6));
            default -> throw new IllegalArgumentException(key);
        };
    }

    private Optional<ScatterRecord> record(JsonNode settings, String which) {
        return settings.has(which + "Scatter")
                ? record(settings.get(which + "Scatter").asDouble(), settings.get(which + "Df").asDouble()) : Optional.empty();
    }

    private Optional<ScatterRecord> record(double standardDeviation, double degreesOfFreedom) {
        return Optional.of(new ScatterRecord(scale * standardDeviation, degreesOfFreedom));
    }

    private void estimate(Finding finding, JsonNode figures, String what) {
        Estimate estimate = finding.estimate().orElseThrow(() -> new AssertionError(name + " " + what + " is not judged"));
        double standardError = figures.get("standardError").asDouble();
        double change = figures.get("estimate").asDouble();
        assertThat(Math.abs(estimate.change() / scale - change)).as(name + " " + what + " estimate " + estimate.change() + " for " + change)
                .isLessThanOrEqualTo(Math.max(FIGURES * Math.abs(change), SHARE_OF_STANDARD_ERROR * standardError));
        close(estimate.standardError() / scale, figures.get("standardError"), FIGURES, what + " standard error");
        close(estimate.degreesOfFreedom(), figures.get("degreesOfFreedom"), FIGURES, what + " df");
        close(estimate.pValue(), figures.get("pValue"), P_VALUES, what + " p");
        close(finding.equivalence().orElseThrow().pValue(), figures.get("equivalenceP"), P_VALUES, what + " equivalence p");
        close(finding.scatter().orElseThrow().pull() / scale, figures.get("pullScatter"), FIGURES, what + " pull scatter");
        double refit = figures.get("refitVariance").asDouble();
        double pull = figures.get("pullScatter").asDouble();
        assertThat(Math.abs(finding.scatter().orElseThrow().refitVariance() / scale / scale - refit)).as(name + " " + what + " refit variance")
                .isLessThanOrEqualTo(REFIT_VARIANCE * (refit + 0.1 * pull * pull));
        double reach = (figures.get("high").asDouble() - figures.get("low").asDouble()) / 2;
        if (Double.isFinite(reach) && reach < 1e100) {
            assertThat(Math.abs(finding.interval().orElseThrow().low() / scale - figures.get("low").asDouble())).as(name + " " + what + " low")
                    .isLessThanOrEqualTo(P_VALUES * reach);
            assertThat(Math.abs(finding.interval().orElseThrow().high() / scale - figures.get("high").asDouble()))
                    .as(name + " " + what + " high").isLessThanOrEqualTo(P_VALUES * reach);
        }
    }

    private void tipping(Finding finding, JsonNode figures, String what) {
        if (figures.has("tippingScatter") && figures.get("tippingScatter").isNumber()) {
            close(finding.tippingScatter().orElseThrow() / scale, figures.get("tippingScatter"), FIGURES, what + " tipping scatter");
        } else if (figures.has("tippingScatter") || !expected.has("settings")) {
            assertThat(finding.tippingScatter()).as(name + " " + what + " tipping scatter").isEmpty();
        }
    }

    private void recordCheck(RecordCheck check, JsonNode figures, String what) {
        close(check.f(), figures.get("F"), FIGURES, what + " F");
        close(check.df1(), figures.get("df1"), FIGURES, what + " df1");
        close(check.df2(), figures.get("df2"), FIGURES, what + " df2");
        close(check.pValue(), figures.get("pValue"), P_VALUES, what + " p of the record");
    }

    private void returnCheck() {
        Optional<ReturnCheck> check = Judge.judge(table, JudgeSettings.plain()).returnCheck();
        if (expected.path("returnCheck").path("low").isNumber()) {
            JsonNode figures = expected.get("returnCheck");
            assertThat(check.orElseThrow().byRecord()).isFalse();
            double reach = (figures.get("high").asDouble() - figures.get("low").asDouble()) / 2;
            assertThat(Math.abs(check.get().difference() / scale - figures.get("difference").asDouble())).as(name + " return")
                    .isLessThanOrEqualTo(FIGURES * reach);
            assertThat(Math.abs(check.get().pullOnly().low() / scale - figures.get("low").asDouble())).as(name + " return low")
                    .isLessThanOrEqualTo(FIGURES * reach);
            assertThat(Math.abs(check.get().pullOnly().high() / scale - figures.get("high").asDouble())).as(name + " return high")
                    .isLessThanOrEqualTo(FIGURES * reach);
        } else {
            assertThat(check).as(name + " return").isEmpty();
        }
    }

    private void randomisation() {
        if (expected.path("randomisationP").isNumber()) {
            JudgeSettings drawn = JudgeSettings.plain().drawn(true).withRecords(Optional.empty(), record(1, 20));
            close(Judge.judge(table, drawn).randomisation().orElseThrow().pValue(), expected.get("randomisationP"), 1e-9, "randomisation");
        }
    }

    private void close(double actual, JsonNode figure, double tolerance, String what) {
        double wanted = figure.asDouble();
        assertThat(Math.abs(actual - wanted)).as(name + " " + what + ": " + actual + " for " + wanted)
                .isLessThanOrEqualTo(tolerance * Math.abs(wanted));
    }
}
