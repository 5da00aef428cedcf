package fairpull.io.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * One export as it was read.
 *
 * @param fileName the file as it was named by whoever asked
 * @param dialect how it is written
 * @param fingerprint names the header: files of equal fingerprint are read by the same mapping
 * @param columns its columns in order; columns with neither a header nor a cell are left out
 * @param rows how many rows of data there are
 * @param lines which line of the file each of them stands in
 * @param firstRows the cells of the first rows as written, for a preview; cells by their place in the file
 * @param doubts what was not certain in reading it, one sentence each
 */
public record Export(String fileName, Dialect dialect, String fingerprint, List<ExportColumn> columns, int rows,
                     RowLines lines, List<List<String>> firstRows, List<String> doubts) {
    public Export {
        Objects.requireNonNull(fileName, "fileName");
        Objects.requireNonNull(dialect, "dialect");
        Objects.requireNonNull(fingerprint, "fingerprint");
        Objects.requireNonNull(lines, "lines");
        columns = List.copyOf(columns);
        firstRows = List.copyOf(firstRows);
        doubts = List.copyOf(doubts);
    }

    /** {@return the same export with other columns} */
    Export with(List<ExportColumn> others, int otherRows) {
        return new Export(fileName, dialect, fingerprint, others, otherRows, RowLines.none(), firstRows, doubts);
    }

    /** {@return the same export with one more doubt} */
    Export doubting(String doubt) {
        List<String> more = new ArrayList<>(doubts);
        more.add(doubt);
        return new Export(fileName, dialect, fingerprint, columns, rows, lines, firstRows, more);
    }
}
