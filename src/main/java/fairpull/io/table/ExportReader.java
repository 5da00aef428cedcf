package fairpull.io.table;

import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.pull.DecimalMark;
import fairpull.io.table.Sample.SampleRow;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads a table with a column a channel in one pass: its numbers, and where one pull ends and the next begins. */
public final class ExportReader {
    /** The largest file that is read, in bytes: 512 MB. */
    public static final long MAXIMUM_BYTES = TextSource.MAXIMUM_BYTES;
    /** The most numbers that one export may hold, so that memory stays bounded. */
    static final int MAXIMUM_NUMBERS = 50_000_000;
    private static final int PREVIEW_ROWS = 5;
    private static final int NONE = -1;

    private final TextSource source;
    private final Layout layout;
    private final DecimalMark mark;
    private final Keep keep;
    private final ColumnCells[] columns;
    private final boolean[] wanted;
    private final int timeColumn;
    private final int pullColumn;
    private final PullMarks marks;
    private final List<List<String>> firstRows = new ArrayList<>();
    private final RowLines.Collector lines = new RowLines.Collector();
    private Optional<SampleRow> title = Optional.empty();
    private int rows;
    private int stride = 1;
    private long numbers;
    private int fewestCells;
    private int fewestBeforeLast;
    private int lastLine;
    private int lastCells;
    private boolean afterHeader = true;
    private int titlesPassed;

    private ExportReader(Layout layout, DecimalMark mark, Keep keep) {
        this.source = layout.source();
        this.layout = layout;
        this.mark = mark;
        this.keep = keep;
        this.fewestCells = layout.names().usedCells();
        this.columns = new ColumnCells[layout.names().cells().size()];
        this.wanted = new boolean[columns.length];
        int time = NONE;
        for (int column = columns.length - 1; column >= 0; column--) {
            columns[column] = new ColumnCells();
            boolean isTime = isTime(column);
            wanted[column] = isTime || keep.wants(column);
            time = isTime ? column : time;
            if (ColumnWords.of(header(column).name()).isTime()) {
                columns[column].allowClock();
            }
        }
        this.timeColumn = time;
        this.pullColumn = PullNumbers.column(layout);
        this.marks = new PullMarks(source.file().toString(), pullColumn);
    }

    /**
     * Reads an export as one table.
     *
     * @throws InputException if the file cannot be used: missing, empty, too large, binary, cut off, without a header or without data,
     *     or if its decimal mark cannot be told
     */
    public static Export read(Path file) {
        return read(file, Optional.empty());
    }

    /**
     * Reads an export as one table whose decimal mark may be known.
     *
     * @param decimalMark the mark, where whoever asks has said so
     * @throws InputException as {@link #read(Path)}
     */
    public static Export read(Path file, Optional<DecimalMark> decimalMark) {
        return ExportFile.read(file, decimalMark, Keep.everything()).table();
    }

    static ExportFile read(Layout layout, DecimalMark mark, Keep keep) {
        return new ExportReader(layout, mark, keep).read();
    }

    private ExportFile read() {
        Rows.visit(source, layout.sample().delimiter(), row -> {
            if (row.line() >= layout.firstDataLine()) {
                sort(row);
            }
            return true;
        });
        title.ifPresent(this::passOrTake);
        if (!source.lineEnded() && lastCells < fewestBeforeLast) {
            throw new InputException(Place.of(source.file().toString(), lastLine), "the file is cut off in its last line",
                    "export it again, or delete that line");
        }
        Optional<PullColumns> sideBySide = PullColumns.of(layout);
        String pullHeading = pullColumn < 0 ? "" : layout.names().cell(pullColumn).strip();
        Optional<InputException> trouble = sideBySide.isPresent() ? Optional.empty() : marks.trouble(rows, pullHeading);
        Optional<PullMarks.Found> stacked = sideBySide.isPresent() || trouble.isPresent()
                ? Optional.empty()
                : marks.found(rows, pullHeading);
        Export table = new Export(source.file().toString(), layout.dialect(mark), Fingerprint.of(layout), exportColumns(), rows,
                lines.collected(), firstRows, doubts(stacked, sideBySide.isPresent()));
        return new ExportFile(table, stride == 1, stride, sideBySide, stacked, trouble);
    }

    /** A header may stand again before each pull, perhaps with its units and below a title. */
    private void sort(Row row) {
        if (row.isSame(layout.names())) {
            marks.headerAgain(rows, row.line());
            title = Optional.empty();
            afterHeader = true;
        } else if (!(afterHeader && layout.units().isPresent() && row.isSame(layout.units().get()))) {
            title.ifPresent(this::passOrTake);
            if (row.isTitle() && columns.length > 1) {
                title = Optional.of(new SampleRow(row.line(), row.copy(), row.isQuoted()));
            } else {
                take(row);
            }
        }
    }

    /** Without a header below it, a title is one only behind a blank line; otherwise it is a row with a bad cell. */
    private void passOrTake(SampleRow row) {
        title = Optional.empty();
        if (!afterHeader && row.line() > lastLine + 1) {
            titlesPassed++;
            return;
        }
        Row cells = new Row();
        cells.begin(row.line());
        row.cells().forEach(cell -> cells.add(cell.toCharArray(), 0, cell.length(), false));
        take(cells);
    }

    private void take(Row row) {
        if (rows < PREVIEW_ROWS) {
            firstRows.add(List.copyOf(row.copy()));
        }
        int kept = rows % stride == 0 ? rows / stride : NONE;
        lines.take(kept, row.line());
        double time = Double.NaN;
        for (int column = 0; column < row.size(); column++) {
            if (column >= columns.length) {
                refuseMoreCells(row, column);
            } else if (wanted[column]) {
                double number = columns[column].take(kept, row.line(), row.cell(column), mark);
                time = column == timeColumn ? number : time;
            }
        }
        marks.take(rows, row, time, !afterHeader && row.line() > lastLine + 1);
        count(row);
    }

    private void count(Row row) {
        numbers += keep.isThinned() ? 0 : row.size();
        if (numbers > MAXIMUM_NUMBERS) {
            throw new InputException(Place.of(source.file().toString(), row.line()), "the file holds more than " + MAXIMUM_NUMBERS
                    + " cells", "export fewer channels or a lower rate");
        }
        fewestBeforeLast = fewestCells;
        fewestCells = Math.min(fewestCells, row.size());
        lastLine = row.line();
        lastCells = row.size();
        afterHeader = false;
        rows++;
        if (rows / stride >= keep.mostRows()) {
            stride *= 2;
            lines.thin();
            for (ColumnCells column : columns) {
                column.thin();
            }
        }
    }

    private void refuseMoreCells(Row row, int column) {
        if (!NumberText.isBlank(row.cell(column))) {
            throw new InputException(Place.of(source.file().toString(), row.line()),
                    "the line has " + row.size() + " cells and the header names " + columns.length + " columns",
                    "export it again; decimal commas between commas must stand in quotes");
        }
    }

    private List<ExportColumn> exportColumns() {
        List<ExportColumn> exported = new ArrayList<>();
        for (int index = 0; index < columns.length; index++) {
            String header = layout.names().cell(index);
            ColumnCells cells = columns[index];
            if (!header.isBlank() || !cells.isEmpty()) {
                exported.add(new ExportColumn(index, header, header(index).name(), unitText(index),
                        cells.numbers((rows + stride - 1) / stride), cells.numberCount(), cells.firstText(), cells.noValues(),
                        cells.isClock()));
                columns[index] = null;
            }
        }
        return exported;
    }

    private HeaderCell header(int index) {
        return HeaderCell.of(layout.names().cell(index));
    }

    private boolean isTime(int index) {
        return TimeGroups.isTime(header(index).name(), unitText(index));
    }

    private String unitText(int index) {
        String own = header(index).unitText();
        return own.isEmpty() && layout.units().isPresent() ? HeaderCell.unitOf(layout.units().get().cell(index)) : own;
    }

    private List<String> doubts(Optional<PullMarks.Found> stacked, boolean sideBySide) {
        List<String> doubts = new ArrayList<>();
        if (layout.header().row() > 0) {
            doubts.add("the lines before line " + layout.names().line() + " are taken as a preamble and not read");
        }
        if (titlesPassed > 0) {
            doubts.add("lines of text behind blank lines are taken as titles and not read");
        }
        doubts.addAll(sideBySide ? List.of() : marks.doubts(stacked));
        return doubts;
    }
}
