package fairpull.io.table;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import fairpull.domain.unit.PlainNumber;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/**
 * Builds a table as comma-separated text: numbers as plain decimals that read back exactly, a blank cell for one that does not exist. A
 * text that a spreadsheet would take for a formula gets an apostrophe before it, because names in it may come from strangers.
 */
final class CsvText {
    private static final String FORMULA = "=+-@\t\r\n";

    private final List<List<String>> rows = new ArrayList<>();

    /** One row, cell by cell. */
    static final class Line {
        private final List<String> cells = new ArrayList<>();

        Line text(String text) {
            cells.add(!text.isEmpty() && FORMULA.indexOf(text.charAt(0)) >= 0 ? "'" + text : text);
            return this;
        }

        /** Without a value, or with one that is not finite, the cell stays blank. */
        Line number(double value) {
            cells.add(Double.isFinite(value) ? PlainNumber.shortest(value).toPlainString() : "");
            return this;
        }
    }

    Line line() {
        Line line = new Line();
        rows.add(line.cells);
        return line;
    }

    CsvText heads(List<String> heads) {
        Line line = line();
        heads.forEach(line::text);
        return this;
    }

    String text() {
        StringWriter out = new StringWriter();
        try (CsvWriter writer = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(out)) {
            rows.forEach(writer::writeRecord);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return out.toString();
    }
}
