package fairpull.io.table;

import fairpull.domain.finding.CurveFinding;
import fairpull.domain.finding.CurveQuestion;
import fairpull.domain.finding.JudgeSettings;
import fairpull.domain.finding.ScatterRecord;
import fairpull.domain.plan.Measure;
import fairpull.domain.unit.PlainNumber;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Writes everything that a finding was reckoned with, in full precision: one row a setting, with its unit. */
public final class SettingsWriter {
    private final CsvText text = new CsvText().heads(List.of("setting", "value", "unit"));

    private SettingsWriter() {
    }

    /** {@return the settings of the deciding measure, and of its curves where there are any} */
    public static String text(Measure measure, OptionalDouble expectedLevelSi, JudgeSettings settings, Optional<String> sealCode,
            Optional<CurveFinding> curve, double level) {
        SettingsWriter writer = new SettingsWriter();
        String unit = measure.unit().symbol();
        writer.judging(measure.name(), unit, settings);
        writer.number("expected level", measure.unit().fromSi(expectedLevelSi.orElse(Double.NaN)), unit);
        writer.row("seal code", sealCode.orElse(""), "");
        curve.ifPresent(writer::curve);
        curve.ifPresent(any -> writer.number("curve: level of the record", level, unit));
        return writer.text.text();
    }

    private void judging(String measure, String unit, JudgeSettings settings) {
        row("deciding measure", measure, unit);
        row("drift", lower(settings.drift()), "");
        row("covariates", String.join(" ", settings.covariates()), "");
        record("pull scatter", settings.pullRecord(), unit);
        record("refit scatter", settings.refitRecord(), unit);
        number("worthwhile gain", settings.worthwhileGain().orElse(Double.NaN), unit);
        number("error rate", settings.errorRate(), "1");
        row("sides", lower(settings.sides()), "");
        row("better", lower(settings.better()), "");
        row("order drawn", settings.drawn() ? "yes" : "no", "");
    }

    private void record(String name, Optional<ScatterRecord> record, String unit) {
        number(name + " of the record", record.map(ScatterRecord::standardDeviation).orElse(Double.NaN), unit);
        String freedom = record.map(ScatterRecord::degreesOfFreedom)
                .map(value -> Double.isInfinite(value) ? "inf" : PlainNumber.shortest(value).toPlainString()).orElse("");
        row(name + " degrees of freedom", freedom, "1");
    }

    private void curve(CurveFinding curve) {
        row("curve: first speed", CurveTableWriter.rpm(curve.curves().grid().firstRadPerS()), "rpm");
        row("curve: step", CurveTableWriter.rpm(curve.curves().grid().stepRadPerS()), "rpm");
        number("curve: speeds", curve.curves().grid().size(), "1");
        row("curve: bandwidth", CurveTableWriter.rpm(curve.bandwidthRadPerS()), "rpm");
        row("curve: declared in the plan", curve.declared() ? "yes" : "no", "");
        number("curve: level", curve.level(), "1");
        number("curve: critical value", curve.criticalValue(), "1");
        number("curve: degrees of freedom", curve.degreesOfFreedom(), "1");
        number("curve: directions drawn", curve.draws(), "1");
        number("curve: seed", CurveQuestion.SEED, "1");
        row("curve: refit scatter rests on", lower(curve.recordUsed()), "");
    }

    private void number(String setting, double value, String unit) {
        text.line().text(setting).number(value).text(unit);
    }

    private void row(String setting, String value, String unit) {
        text.line().text(setting).text(value).text(unit);
    }

    private static String lower(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
