package fairpull.io.table;

import fairpull.domain.InputException.Place;
import java.util.Arrays;

/** Which line of its file each row of data stands in; nothing where rows do not come line by line. */
public final class RowLines {
    private static final RowLines NONE = new RowLines(new int[0]);

    private final int[] lines;

    private RowLines(int[] lines) {
        this.lines = lines;
    }

    /** {@return the lines of rows that come from several lines each, or from none} */
    static RowLines none() {
        return NONE;
    }

    /** {@return the place of a row in its file, rows counted from 0} */
    public Place at(String file, int row) {
        return row < lines.length ? Place.of(file, lines[row]) : Place.of(file);
    }

    /** {@return the lines of some of the rows} */
    RowLines only(int[] rows) {
        return lines.length == 0 ? NONE : new RowLines(Arrays.stream(rows).map(row -> lines[row]).toArray());
    }

    /** Collects the lines of every row, or of every so-manieth, as {@link ColumnCells} does its numbers. */
    static final class Collector {
        private int[] lines = new int[64];
        private int filled;

        /** Takes the line of a row; below 0 for one whose numbers are not kept. */
        void take(int kept, int line) {
            if (kept < 0) {
                return;
            }
            if (filled == lines.length) {
                lines = Arrays.copyOf(lines, 2 * filled);
            }
            lines[filled++] = line;
        }

        /** Keeps every other row. */
        void thin() {
            for (int place = 0; 2 * place < filled; place++) {
                lines[place] = lines[2 * place];
            }
            filled = (filled + 1) / 2;
        }

        /** {@return what was collected} */
        RowLines collected() {
            return new RowLines(Arrays.copyOf(lines, filled));
        }
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof RowLines same && Arrays.equals(lines, same.lines);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(lines);
    }
}
