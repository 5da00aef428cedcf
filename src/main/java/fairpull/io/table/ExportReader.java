package fairpull.io.table;

import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.pull.DecimalMark;
import fairpull.io.table.Sample.SampleRow;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Reads an export of a logger or rig: tells its dialect by evidence, then takes its columns in one pass. The file is never changed. */
public final class ExportReader {
    /** The largest file that is read, in bytes: 512 MB. */
    public static final long MAXIMUM_BYTES = TextSource.MAXIMUM_BYTES;
    /** The most numbers that one export may hold, so that memory stays bounded. */
    static final int MAXIMUM_NUMBERS = 50_000_000;
    private static final int PREVIEW_ROWS = 5;

    private final TextSource source;
    private final Layout layout;
    private final DecimalMark mark;
    private final List<ColumnCells> columns = new ArrayList<>();
    private final List<List<String>> firstRows = new ArrayList<>();
    private final IntStream.Builder lines = IntStream.builder();
    private int rows;
    private long numbers;
    private int fewestCells;
    private int fewestBeforeLast;
    private int lastLine;
    private int lastCells;

    private ExportReader(TextSource source, Layout layout, DecimalMark mark) {
        this.source = source;
        this.layout = layout;
        this.mark = mark;
        this.fewestCells = layout.names().usedCells();
        layout.names().cells().forEach(cell -> columns.add(new ColumnCells()));
    }

    /**
     * Reads an export.
     *
     * @throws InputException if the file cannot be used: missing, empty, too large, binary, cut off, without a header or without data,
     *     or if its decimal mark cannot be told
     */
    public static Export read(Path file) {
        return read(file, Optional.empty());
    }

    /**
     * Reads an export whose decimal mark may be known.
     *
     * @param decimalMark the mark, where whoever asks has said so
     * @throws InputException as {@link #read(Path)}
     */
    public static Export read(Path file, Optional<DecimalMark> decimalMark) {
        TextSource source = TextSource.of(file);
        Layout layout = Layout.of(source);
        DecimalMark mark = decimalMark.orElseGet(() -> MarkFinder.of(source, layout.sample(), layout.firstDataLine()));
        return new ExportReader(source, layout, mark).read();
    }

    private Export read() {
        Rows.visit(source, layout.sample().delimiter(), row -> {
            if (row.line() >= layout.firstDataLine()) {
                take(row);
            }
            return true;
        });
        if (!source.lineEnded() && lastCells < fewestBeforeLast) {
            throw new InputException(Place.of(source.file().toString(), lastLine), "the file is cut off in its last line",
                    "export it again, or delete that line");
        }
        Dialect dialect = layout.dialect(source, mark);
        return new Export(source.file().toString(), dialect, Fingerprint.of(layout), exportColumns(), rows,
                RowLines.of(lines.build()), firstRows, doubts());
    }

    private void take(Row row) {
        if (rows < PREVIEW_ROWS) {
            firstRows.add(List.copyOf(row.copy()));
        }
        for (int column = 0; column < row.size(); column++) {
            CharSequence cell = row.cell(column);
            if (column < columns.size()) {
                columns.get(column).take(rows, row.line(), cell, mark);
            } else if (!NumberText.isBlank(cell)) {
                throw tooManyCells(row);
            }
        }
        numbers += row.size();
        if (numbers > MAXIMUM_NUMBERS) {
            throw new InputException(Place.of(source.file().toString(), row.line()), "the file holds more than " + MAXIMUM_NUMBERS
                    + " cells", "export fewer channels or a lower rate");
        }
        fewestBeforeLast = fewestCells;
        fewestCells = Math.min(fewestCells, row.size());
        lastLine = row.line();
        lastCells = row.size();
        lines.add(lastLine);
        rows++;
    }

    private InputException tooManyCells(Row row) {
        return new InputException(Place.of(source.file().toString(), row.line()),
                "the line has " + row.size() + " cells and the header names " + columns.size() + " columns",
                "export it again; decimal commas between commas must stand in quotes");
    }

    private List<ExportColumn> exportColumns() {
        List<ExportColumn> exported = new ArrayList<>();
        for (int index = 0; index < columns.size(); index++) {
            String header = layout.names().cell(index);
            ColumnCells cells = columns.get(index);
            if (!header.isBlank() || !cells.isEmpty()) {
                HeaderCell parts = HeaderCell.of(header);
                exported.add(new ExportColumn(index, header, parts.name(), unitText(parts, index), cells.numbers(rows),
                        cells.numberCount(), cells.firstText()));
            }
        }
        return exported;
    }

    private String unitText(HeaderCell header, int index) {
        Optional<SampleRow> units = layout.units();
        return header.unitText().isEmpty() && units.isPresent() ? HeaderCell.unitOf(units.get().cell(index)) : header.unitText();
    }

    private List<String> doubts() {
        List<String> doubts = new ArrayList<>();
        if (layout.header().row() > 0) {
            doubts.add("the lines before line " + layout.names().line() + " are taken as a preamble and not read");
        }
        return doubts;
    }
}
