package fairpull.io.table;

import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.pull.DecimalMark;
import fairpull.domain.pull.Mapping;
import fairpull.domain.pull.PullId;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A file as it was read: the table in it, and the pulls that it holds. Each pull is an export of its own, and one mapping reads all of
 * them: columns that stand for the same thing in pulls side by side have the same place.
 */
public final class ExportFile {
    private static final String ONE_PULL = "nothing in it says that there is more than one";

    private final Export table;
    private final boolean whole;
    /** One row in so many was kept. */
    private final int stride;
    private final Optional<PullColumns> sideBySide;
    private final Optional<PullMarks.Found> stacked;
    private final Optional<InputException> trouble;

    ExportFile(Export table, boolean whole, Optional<PullColumns> sideBySide, Optional<PullMarks.Found> stacked) {
        this(table, whole, 1, sideBySide, stacked, Optional.empty());
    }

    ExportFile(Export table, boolean whole, int stride, Optional<PullColumns> sideBySide, Optional<PullMarks.Found> stacked,
               Optional<InputException> trouble) {
        this.table = table;
        this.whole = whole;
        this.stride = stride;
        this.sideBySide = sideBySide;
        this.stacked = stacked;
        this.trouble = trouble;
    }

    /**
     * Reads as much of a file as tells what is in it; its memory does not grow with the file.
     *
     * @param decimalMark the mark, where whoever asks has said so
     * @throws InputException if the file cannot be used; names file, line, column and what to do
     */
    public static ExportFile look(Path file, Optional<DecimalMark> decimalMark) {
        return read(file, decimalMark, Keep.enoughToTell());
    }

    /**
     * Reads the columns that a mapping uses, every row of them.
     *
     * @throws InputException as {@link #look}
     */
    public static ExportFile read(Path file, Mapping mapping) {
        TextSource source = TextSource.of(file);
        Layout layout = Layout.of(source);
        return read(layout, mapping.decimalMark(), Keep.only(places(layout, mapping)));
    }

    /**
     * Reads every column, for whoever looks beyond what a mapping uses.
     *
     * @param decimalMark the mark, where whoever asks has said so
     * @throws InputException as {@link #look}
     */
    public static ExportFile whole(Path file, Optional<DecimalMark> decimalMark) {
        return read(file, decimalMark, Keep.everything());
    }

    static ExportFile read(Path file, Optional<DecimalMark> decimalMark, Keep keep) {
        return read(Layout.of(TextSource.of(file)), decimalMark, keep);
    }

    private static ExportFile read(Layout layout, Optional<DecimalMark> decimalMark, Keep keep) {
        DecimalMark mark = decimalMark.orElseGet(() -> MarkFinder.of(layout.source(), layout.sample(), layout.firstDataLine()));
        return LongTable.of(layout, mark, keep).map(LongTable::read).orElseGet(() -> ExportReader.read(layout, mark, keep));
    }

    /** Where the columns of a mapping stand in the file: once, or once a pull. */
    private static Set<Integer> places(Layout layout, Mapping mapping) {
        Set<Integer> places = new HashSet<>();
        mapping.columns().forEach(column -> places.add(column.index()));
        PullColumns.of(layout).ifPresent(beside -> beside.pulls().forEach(pull -> pull.columns().forEach((place, column) -> {
            if (places.contains(column.index())) {
                places.add(place);
            }
        })));
        return places;
    }

    /**
     * Rows of {@link #table}.
     *
     * @param from the first, counted from 0
     * @param to the one behind the last
     */
    public record Rows(int from, int to) {
    }

    /**
     * {@return this file with the pulls that someone found in its rows}
     *
     * @param how how they were found, in a short phrase
     * @param doubt what is not certain about it, where anything is
     */
    public ExportFile parted(String how, List<Rows> pulls, Optional<String> doubt) {
        Export whatIsParted = table();
        List<PullMarks.Stretch> stretches = pulls.stream().map(rows -> new PullMarks.Stretch("", rows.from(), rows.to())).toList();
        return new ExportFile(doubt.map(whatIsParted::doubting).orElse(whatIsParted), whole, Optional.empty(),
                Optional.of(new PullMarks.Found(how, stretches)));
    }

    /** {@return whether its pulls are stretches of its rows, be it one} */
    public boolean isParted() {
        return stacked.isPresent();
    }

    /** {@return all of it as one table} */
    public Export table() {
        return TimeGroups.onOneTime(table);
    }

    /** {@return the table from which the meaning of the columns is told: that of the first pull where pulls stand side by side} */
    public Export sample() {
        return sideBySide.isPresent() ? pull(1) : table();
    }

    /** {@return why its pulls cannot be told apart, where they cannot; it can still be read as one} */
    public Optional<InputException> trouble() {
        return trouble;
    }

    /**
     * {@return what the file calls its pulls, in order; empty names where it does not}
     *
     * @throws InputException if they cannot be told apart
     */
    public List<String> labels() {
        trouble.ifPresent(reason -> {
            throw reason;
        });
        return sideBySide.map(beside -> beside.pulls().stream().map(PullColumns.OfPull::label).toList())
                .or(() -> stacked.map(found -> found.pulls().stream().map(PullMarks.Stretch::label).toList()))
                .orElse(List.of(""));
    }

    /** {@return how many pulls it holds} */
    public int pulls() {
        return labels().size();
    }

    /** {@return the pulls of a plan that the file names, in order; empty where it does not name each of its pulls so} */
    public List<PullId> named() {
        List<PullId> named = labels().stream().flatMap(label -> PullId.parse(label).stream()).toList();
        return named.size() == pulls() ? named : List.of();
    }

    /** {@return how its pulls were found, in a short phrase} */
    public String howFound() {
        return sideBySide.map(PullColumns::how).or(() -> stacked.map(PullMarks.Found::how)).orElse(ONE_PULL);
    }

    /** {@return whether every row was kept} */
    public boolean isWhole() {
        return whole;
    }

    /**
     * {@return one pull of the file}
     *
     * @param number counted from 1 in the order of the file
     * @throws InputException if it does not hold so many
     */
    public Export pull(int number) {
        if (number < 1 || number > pulls()) {
            throw new InputException(Place.of(table.fileName()), "the file holds " + pulls() + (pulls() == 1 ? " pull" : " pulls")
                    + ", not " + number, "restore the file that was imported");
        }
        Export pull = sideBySide.map(beside -> columns(beside.pulls().get(number - 1)))
                .or(() -> stacked.map(found -> rows(found.pulls().get(number - 1))))
                .orElse(table);
        return TimeGroups.onOneTime(pull);
    }

    private Export columns(PullColumns.OfPull pull) {
        List<ExportColumn> columns = new ArrayList<>();
        for (ExportColumn column : table.columns()) {
            PullColumns.Column own = pull.columns().get(column.index());
            if (own != null) {
                columns.add(column.as(own.index(), own.header()));
            }
        }
        return table.with(columns, table.rows());
    }

    private Export rows(PullMarks.Stretch stretch) {
        int from = (stretch.from() + stride - 1) / stride;
        int to = (stretch.to() + stride - 1) / stride;
        List<ExportColumn> columns = table.columns().stream().map(column -> column.rows(from, to)).toList();
        return table.with(columns, to - from);
    }
}
