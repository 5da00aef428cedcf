package fairpull.engine.judging;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.domain.finding.Finding;
import fairpull.domain.finding.Interval;
import fairpull.domain.finding.JudgeSettings;
import fairpull.domain.finding.PullRow;
import fairpull.domain.finding.PullTable;
import fairpull.domain.finding.ScatterRecord;
import fairpull.domain.plan.Drift;
import fairpull.domain.plan.Part;
import fairpull.engine.stats.Deviates;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The quick way to a verdict says what the judge says, over random tables; the judge itself is held to lme4 and pbkrtest. */
class RepeatedJudgeTest {
    private static final double ACCURACY = 1e-9;

    @ParameterizedTest
    @CsvSource({"ABABA, 5 5 5 5 5, NONE, 0", "ABA, 3 3 3, NONE, 0", "ABBA|BAAB, 4 4 4 4 4 4 4 4, NONE, 0", "ABABA, 5 3 5 4 2, NONE, 0",
        "ABABA, 5 5 5 5 5, LINEAR, 0", "ABABA, 1 1 1 1 1, NONE, 0", "ABA, 5 5 5, NONE, 6", "ABABA, 2 2 2 2 2, LINEAR, 4"})
    void saysWhatTheJudgeSays(String order, String pulls, Drift drift, double refitDf) {
        saysWhatTheJudgeSays(order, pulls, drift, refitDf, 0);
    }

    /** The short way with records: of either scatter, of both, known, and so long that the data contradict them. */
    @ParameterizedTest
    @CsvSource({"ABA, 5 5 5, 0.5, 0", "ABA, 5 5 5, 40, 0", "AB, 4 4, 4, 0", "AB, 4 4, 4, 12", "ABABA, 3 3 3 3 3, 11, 30",
        "ABABA, 3 3 3 3 3, 0, 8", "ABABA, 3 3 3 3 3, 300, 0", "ABBA|BAAB, 2 2 2 2 2 2 2 2, 9, 0", "ABABA, 4 4 4 4 4, Infinity, 0",
        "ABABA, 4 4 4 4 4, 0, Infinity", "ABA, 4 4 4, Infinity, 20", "ABA, 4 4 4, 5, Infinity", "ABA, 4 4 4, Infinity, Infinity"})
    void saysWhatTheJudgeSaysByARecord(String order, String pulls, double refitDf, double pullDf) {
        saysWhatTheJudgeSays(order, pulls, Drift.NONE, refitDf, pullDf);
    }

    private static void saysWhatTheJudgeSays(String order, String pulls, Drift drift, double refitDf, double pullDf) {
        JudgeSettings settings = JudgeSettings.plain().withDrift(drift).withRecords(record(1.1, pullDf), record(0.7, refitDf))
                .withWorthwhileGain(3);
        Deviates deviates = new Deviates(11);
        RepeatedJudge repeated = RepeatedJudge.of(table(order, pulls, deviates, 0, 0), settings);
        for (int campaign = 0; campaign < 60; campaign++) {
            double refit = campaign % 3 == 0 ? 0 : 0.2 + campaign / 40.0;
            PullTable table = table(order, pulls, deviates, refit, 0);
            double gain = campaign % 5;
            RepeatedJudge.Standing standing = repeated.judge(values(table));
            assertThat(standing.verdict(gain)).isEqualTo(Judge.judge(raised(table, gain), settings).verdict());
            Finding finding = Judge.judge(table, settings);
            Interval interval = finding.interval().orElseThrow();
            double width = interval.high() - interval.low();
            assertThat(standing.covers(interval.low() + ACCURACY * width)).isTrue();
            assertThat(standing.covers(interval.low() - ACCURACY * width)).isFalse();
            assertThat(standing.covers(interval.high() - ACCURACY * width)).isTrue();
            assertThat(standing.covers(interval.high() + ACCURACY * width)).isFalse();
        }
    }

    private static Optional<ScatterRecord> record(double scatter, double df) {
        return df > 0 ? Optional.of(new ScatterRecord(scatter, df)) : Optional.empty();
    }

    private static PullTable table(String order, String pulls, Deviates deviates, double refitScatter, double gain) {
        List<PullRow> rows = new ArrayList<>();
        String[] counts = pulls.split(" ");
        int install = 0;
        int session = 0;
        double clock = 0;
        for (char letter : order.toCharArray()) {
            if (letter == '|') {
                session++;
                clock = 0;
                continue;
            }
            double refit = refitScatter * deviates.normal();
            for (int pull = 0; pull < Integer.parseInt(counts[install]); pull++) {
                rows.add(new PullRow("day " + session, "" + letter + install, Part.valueOf("" + letter), "" + pull, clock,
                        200 + refit + deviates.normal() + (letter == 'B' ? gain : 0), List.of()));
                clock += 4;
            }
            clock += 15;
            install++;
        }
        return new PullTable("hp", List.of(), rows);
    }

    private static PullTable raised(PullTable table, double gain) {
        return new PullTable(table.unit(), List.of(), table.rows().stream().map(row -> new PullRow(row.session(), row.install(), row.part(),
                row.pull(), row.minutes(), row.value() + (row.part() == Part.B ? gain : 0), List.of())).toList());
    }

    private static double[] values(PullTable table) {
        return table.rows().stream().mapToDouble(PullRow::value).toArray();
    }
}
