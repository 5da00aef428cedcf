package fairpull.io.table;

import java.util.Arrays;
import java.util.stream.IntStream;

/** Which line of its file each row of data stands in. */
public final class RowLines {
    private final int[] lines;

    private RowLines(int[] lines) {
        this.lines = lines;
    }

    /** {@return the lines of some rows} */
    static RowLines of(IntStream lines) {
        return new RowLines(lines.toArray());
    }

    /** {@return the line of a row, counted from 1; rows are counted from 0} */
    public int of(int row) {
        return lines[row];
    }

    /** {@return the lines of some of the rows} */
    RowLines only(int[] rows) {
        return new RowLines(Arrays.stream(rows).map(row -> lines[row]).toArray());
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
