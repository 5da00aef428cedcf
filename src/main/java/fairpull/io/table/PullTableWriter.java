package fairpull.io.table;

import fairpull.domain.finding.PullRow;
import fairpull.domain.finding.PullTable;
import java.util.ArrayList;
import java.util.List;

/** Writes a table of pulls as {@link PullTableReader} reads it: judged again, it gives the same finding. */
public final class PullTableWriter {
    private PullTableWriter() {
    }

    /** {@return the table as comma-separated text} */
    public static String text(PullTable table) {
        List<String> heads = new ArrayList<>(List.of("install", "part", "pull", "session"));
        boolean timed = table.rows().stream().anyMatch(row -> Double.isFinite(row.minutes()));
        if (timed) {
            heads.add("minutes");
        }
        heads.add("value");
        heads.addAll(table.covariateNames());
        CsvText text = new CsvText().heads(heads);
        for (PullRow row : table.rows()) {
            CsvText.Line line = text.line().text(row.install()).text(row.part().name()).text(row.pull()).text(row.session());
            if (timed) {
                line.number(row.minutes());
            }
            line.number(row.value());
            row.covariates().forEach(line::number);
        }
        return text.text();
    }
}
