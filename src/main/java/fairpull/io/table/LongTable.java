package fairpull.io.table;

import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.pull.DecimalMark;
import fairpull.domain.pull.PullId;
import fairpull.domain.pull.Samples;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A table in long form: one number a row, with its time and the name of its channel beside it, perhaps its unit and its pull. It becomes a
 * table with a column a channel; channels recorded at times of their own are brought onto those of the one with most numbers.
 */
final class LongTable {
    private static final int LONGEST_NAME = 200;
    private static final double RESTART_SHARE = 0.5;
    private static final int PREVIEW_ROWS = 5;

    private final Layout layout;
    private final LongShape shape;
    private final DecimalMark mark;
    private final Keep keep;
    private final ColumnCells time = new ColumnCells();
    private final Map<String, LongChannel> channels = new LinkedHashMap<>();
    private final List<String> pullNames = new ArrayList<>();
    private final List<List<String>> firstRows = new ArrayList<>();
    private long numbers;

    private LongTable(Layout layout, LongShape shape, DecimalMark mark, Keep keep) {
        this.layout = layout;
        this.shape = shape;
        this.mark = mark;
        this.keep = keep;
        time.allowClock();
    }

    /** {@return the table, if it has that form} */
    static Optional<LongTable> of(Layout layout, DecimalMark mark, Keep keep) {
        return LongShape.of(layout).map(shape -> new LongTable(layout, shape, mark, keep));
    }

    ExportFile read() {
        Rows.visit(layout.source(), layout.sample().delimiter(), row -> {
            if (row.line() >= layout.firstDataLine() && !row.isSame(layout.names())) {
                take(row);
            }
            return true;
        });
        int pulls = shape.pull() >= 0 ? pullNames.size() : pullsByTime();
        List<double[][]> tables = new ArrayList<>();
        for (int pull = 0; pull < pulls; pull++) {
            tables.add(resampled(pull));
        }
        boolean whole = channels.values().stream().allMatch(LongChannel::isWhole);
        return new ExportFile(table(tables), whole, Optional.empty(), stacked(tables));
    }

    private void take(Row row) {
        if (firstRows.size() < PREVIEW_ROWS) {
            firstRows.add(List.copyOf(row.copy()));
        }
        CharSequence value = row.cell(shape.value());
        if (NumberText.isBlank(value)) {
            return;
        }
        double at = time.take(-1, row.line(), row.cell(shape.time()), mark);
        String name = row.cell(shape.channel()).toString().strip();
        if (Double.isNaN(at) || name.isEmpty() || name.length() > LONGEST_NAME) {
            throw new InputException(Place.of(file(), row.line()),
                    Double.isNaN(at) ? "the number has no time" : "the number has no channel", "write time, channel and value in each row");
        }
        if (++numbers > ExportReader.MAXIMUM_NUMBERS) {
            throw new InputException(Place.of(file(), row.line()), "the file holds more than " + ExportReader.MAXIMUM_NUMBERS + " numbers",
                    "export fewer channels or a lower rate");
        }
        LongChannel channel = channels.computeIfAbsent(name, key -> new LongChannel(key, 1 + channels.size(), keep));
        if (channels.size() >= Rows.MAXIMUM_COLUMNS) {
            throw new InputException(Place.of(file(), row.line()), "more than " + (Rows.MAXIMUM_COLUMNS - 1) + " channels",
                    "export fewer channels");
        }
        if (shape.unit() >= 0) {
            channel.unit(row.cell(shape.unit()).toString().strip(), Place.of(file(), row.line(), name));
        }
        channel.take(shape.pull() >= 0 ? pull(row) : channel.pullAt(at, RESTART_SHARE), row.line(), at, value, mark);
    }

    private int pull(Row row) {
        String name = row.cell(shape.pull()).toString().strip();
        int known = pullNames.lastIndexOf(name);
        if (known < 0) {
            pullNames.add(name);
            known = pullNames.size() - 1;
        }
        if (pullNames.size() > PullMarks.MOST_PULLS) {
            throw new InputException(Place.of(file(), row.line()), "more than " + PullMarks.MOST_PULLS + " pulls", "split the file");
        }
        return known;
    }

    private int pullsByTime() {
        List<LongChannel> all = List.copyOf(channels.values());
        for (LongChannel channel : all) {
            if (channel.pulls() != all.get(0).pulls()) {
                throw new InputException(Place.of(file()), "the time starts again " + (all.get(0).pulls() - 1) + " times for “"
                        + all.get(0).name() + "” and " + (channel.pulls() - 1) + " times for “" + channel.name() + "”",
                        "export one pull a file");
            }
        }
        return all.isEmpty() ? 0 : all.get(0).pulls();
    }

    /** Time and channels of one pull, NaN where a channel has nothing. */
    private double[][] resampled(int pull) {
        Series base = new Series();
        for (LongChannel channel : channels.values()) {
            Series series = channel.series(pull);
            if (series.isFalling()) {
                throw new InputException(Place.of(file()), "the time of “" + channel.name() + "” goes back inside a pull",
                        "sort the rows by time in a copy of the file");
            }
            base = series.size() > base.size() ? series : base;
        }
        double[] times = base.times();
        List<double[]> columns = new ArrayList<>(List.of(times));
        channels.values().forEach(channel -> columns.add(channel.series(pull).at(times)));
        return columns.toArray(double[][]::new);
    }

    private Export table(List<double[][]> tables) {
        int rows = tables.stream().mapToInt(table -> table[0].length).sum();
        List<ExportColumn> columns = new ArrayList<>();
        String timeHeader = layout.names().cell(shape.time());
        HeaderCell parts = HeaderCell.of(timeHeader);
        columns.add(column(0, timeHeader, parts.name(), parts.unitText(), tables).clocked(time.isClock()));
        List<String> fingerprint = new ArrayList<>();
        for (LongChannel channel : channels.values()) {
            HeaderCell name = HeaderCell.of(channel.name());
            String unit = channel.unit().isEmpty() ? name.unitText() : channel.unit();
            columns.add(column(channel.index(), channel.name(), name.name(), unit, tables).said(channel.firstText(), channel.noValues()));
            fingerprint.add(channel.name() + "\t" + unit);
        }
        return new Export(file(), layout.dialect(mark), Fingerprint.of(layout, fingerprint), columns, rows, RowLines.none(),
                firstRows, doubts());
    }

    private static ExportColumn column(int index, String header, String name, String unit, List<double[][]> tables) {
        double[] all = tables.stream().flatMapToDouble(table -> Arrays.stream(table[index])).toArray();
        int count = (int) Arrays.stream(all).filter(number -> !Double.isNaN(number)).count();
        return new ExportColumn(index, header, name, unit, count == 0 ? Samples.of() : Samples.of(all), count, Optional.empty(), 0, false);
    }

    private List<String> doubts() {
        List<String> doubts = new ArrayList<>();
        doubts.add("the table is in long form: one number a row, “"
                + layout.names().cell(shape.channel()).strip() + "” naming its channel");
        if (layout.header().row() > 0) {
            doubts.add("the lines before line " + layout.names().line() + " are taken as a preamble and not read");
        }
        boolean oneTime = channels.values().stream().map(channel -> channel.series(0).size()).distinct().count() <= 1;
        if (!oneTime) {
            doubts.add("the channels were recorded at unequal times and are interpolated to those of the one with most numbers;"
                    + " nothing is read before the first and after the last time of their own");
        }
        int repeated = channels.values().stream().mapToInt(LongChannel::repeated).sum();
        if (repeated > 0) {
            doubts.add(repeated + " numbers have the time of the one before in their channel and are left out");
        }
        return doubts;
    }

    private Optional<PullMarks.Found> stacked(List<double[][]> tables) {
        List<PullMarks.Stretch> stretches = new ArrayList<>();
        int from = 0;
        for (int pull = 0; pull < tables.size(); pull++) {
            int to = from + tables.get(pull)[0].length;
            stretches.add(new PullMarks.Stretch(shape.pull() >= 0 ? pullNames.get(pull) : "", from, to));
            from = to;
        }
        OptionalInt column = shape.pull() >= 0 ? OptionalInt.of(shape.pull()) : OptionalInt.empty();
        String how = column.isPresent()
                ? "the column “" + layout.names().cell(column.getAsInt()).strip() + "” numbers them"
                : "the time of each channel starts again";
        boolean several = stretches.size() > 1
                || column.isPresent() && PullId.parse(pullNames.get(0)).isPresent();
        return several ? Optional.of(new PullMarks.Found(how, stretches)) : Optional.empty();
    }

    private String file() {
        return layout.source().file().toString();
    }
}
