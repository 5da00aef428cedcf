package fairpull.io.table;

import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Path;
import java.util.List;

/** Gives the lines of a table of fixed columns as lines of cells with a tab between them, one for one, so that line numbers stand. */
final class FixedWidthReader extends Reader {
    private final LineCutter lines;
    private final FixedWidth columns;
    private final Path file;
    private String present = "";
    private int at;
    private int number;

    FixedWidthReader(Reader text, FixedWidth columns, Path file) {
        this.lines = new LineCutter(text);
        this.columns = columns;
        this.file = file;
    }

    @Override
    public int read(char[] buffer, int offset, int length) throws IOException {
        while (at == present.length()) {
            String line = lines.next();
            if (line == null) {
                return -1;
            }
            number++;
            present = cells(line) + "\n";
            at = 0;
        }
        int count = Math.min(length, present.length() - at);
        present.getChars(at, at + count, buffer, offset);
        at += count;
        return count;
    }

    private String cells(String line) {
        if (lines.isShortened()) {
            throw new InputException(Place.of(file.toString(), number), "the line has more than " + Rows.MAXIMUM_CELL + " characters",
                    "export fewer channels");
        }
        List<String> cells = columns.cells(line, number).orElseThrow(() -> new InputException(Place.of(file.toString(), number),
                "the cells of this line do not stand under those of the lines before it", "export it as CSV, or mend the line in a copy"));
        StringBuilder written = new StringBuilder();
        for (String cell : cells) {
            written.append(written.isEmpty() && cell == cells.get(0) ? "" : "\t");
            written.append(cell.indexOf('"') < 0 ? cell : '"' + cell.replace("\"", "\"\"") + '"');
        }
        return written.toString();
    }

    @Override
    public void close() throws IOException {
        lines.close();
    }
}
