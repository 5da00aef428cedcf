package fairpull.app.usecase.judging;

import fairpull.app.usecase.pulls.Evidence;
import fairpull.app.usecase.pulls.FolderCurves;
import fairpull.domain.curve.CurveRow;
import fairpull.domain.curve.CurveTable;
import fairpull.domain.finding.Fate;
import fairpull.domain.finding.Judgement;
import fairpull.domain.finding.PullRow;
import fairpull.domain.finding.PullTable;
import fairpull.domain.plan.Measure;
import fairpull.domain.pull.Seal;
import fairpull.io.folder.TestFolder;
import fairpull.io.table.CurveTableWriter;
import fairpull.io.table.PullTableWriter;
import fairpull.io.table.SettingsWriter;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/** The tables from which a finding can be reckoned again. */
final class ReportTables {
    static final String PULLS = "pulls.csv";
    /** Every name that a table can have. */
    static final List<String> NAMES = List.of(PULLS, "settings.csv", "curves.csv", "curve-points.csv", "difference.csv");

    private ReportTables() {
    }

    /** {@return each table by the name of its file} */
    static Map<String, String> of(Path folder, Judgement judgement, boolean withoutIdentity) throws IOException {
        TestFolder test = TestFolder.open(folder);
        Measure deciding = judgement.plan().question().deciding();
        PullTable pulls = Evidence.of(test, test.read()).table(deciding, fate -> fate == Fate.USED);
        Map<String, String> tables = new LinkedHashMap<>();
        tables.put(PULLS, PullTableWriter.text(withoutIdentity ? numbered(pulls) : pulls));
        tables.put("settings.csv", SettingsWriter.text(deciding, judgement.plan().question().expectedLevelSi(),
                judgement.deciding().settings(), judgement.seal().map(Seal::code), judgement.curve(),
                FolderCurves.level(judgement.plan(), judgement.deciding())));
        judgement.curve().ifPresent(judged -> {
            tables.put("curves.csv", CurveTableWriter.wide(judged.curves()));
            CurveTable curves = withoutIdentity ? judged.curves().mapSessions(sessionNumbers(judged.curves())) : judged.curves();
            tables.put("curve-points.csv", CurveTableWriter.points(curves));
            tables.put("difference.csv", CurveTableWriter.difference(judged));
        });
        return tables;
    }

    private static UnaryOperator<String> sessionNumbers(CurveTable curves) {
        List<String> sessions = curves.rows().stream().map(CurveRow::session).distinct().toList();
        return name -> "session " + (sessions.indexOf(name) + 1);
    }

    /** Names of sessions may say whose day it was. */
    private static PullTable numbered(PullTable table) {
        Map<String, String> sessions = new LinkedHashMap<>();
        table.rows().forEach(row -> sessions.computeIfAbsent(row.session(), name -> "session " + (sessions.size() + 1)));
        return new PullTable(table.unit(), table.covariateNames(), table.rows().stream()
                .map(row -> new PullRow(sessions.get(row.session()), row.install(), row.part(), row.pull(), row.minutes(), row.value(),
                        row.covariates()))
                .toList());
    }
}
