package fairpull.app.usecase.pulls;

import fairpull.app.usecase.typing.TypedColumns;
import fairpull.domain.InputException;
import fairpull.domain.Remedy.Surface;
import fairpull.domain.pull.DecimalMark;
import fairpull.domain.pull.Mapping;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import fairpull.io.folder.TestFolder;
import fairpull.io.table.ColumnChoice;
import fairpull.io.table.GuessedColumn;
import fairpull.io.table.Preview;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * How an export would be read, before anything is taken.
 *
 * @param file its name
 * @param rows how many rows of data it has
 * @param unitLine the line that is taken as a row of units, where one is
 * @param decimalMark the mark that its numbers are read with
 * @param columns its columns
 * @param firstRows the cells of its first rows as written
 * @param pulls how many pulls it holds
 * @param labels what it calls them; empty where it does not
 * @param howFound how they were found
 * @param doubts what is not certain, one sentence each
 * @param questions what has to be said before it can be imported
 */
public record ExportView(String file, int rows, OptionalInt unitLine, DecimalMark decimalMark, List<Column> columns,
        List<List<String>> firstRows, int pulls, List<String> labels, String howFound, List<String> doubts, List<String> questions) {
    /**
     * One column.
     *
     * @param number its place, counted from 1
     * @param header what it is called
     * @param quantity what it seems to be, or was chosen for
     * @param unit of its numbers, where that is known
     * @param reason why
     */
    public record Column(int number, String header, Optional<Quantity> quantity, Optional<Unit> unit, String reason) {
    }

    public ExportView {
        Objects.requireNonNull(decimalMark, "decimalMark");
        columns = List.copyOf(columns);
        firstRows = List.copyOf(firstRows);
        labels = List.copyOf(labels);
        doubts = List.copyOf(doubts);
        questions = List.copyOf(questions);
    }

    /** {@return a preview of the reader} */
    static ExportView of(Preview preview) {
        return of(preview, preview.columns().stream().map(ExportView::column).toList(), preview.questions());
    }

    /**
     * {@return how a file would be read into a test} What the test remembers for its header outranks the guess.
     *
     * @throws InputException if the file cannot be used
     */
    public static ExportView of(Path folder, Path file, ImportPulls.Reading reading) throws IOException {
        TestFolder.Content content = TestFolder.open(folder).read();
        Preview guessed = PreviewExport.preview(file, TypedColumns.choices(reading.columns()), reading.decimalMark(), reading.onePull(),
                Surface.WINDOW);
        Optional<Mapping> remembered = reading.columns().isEmpty() ? FileCheck.remembered(content.mappings(), guessed.export())
                : Optional.empty();
        Preview preview = remembered.isPresent() ? guessed : PreviewExport.against(content.plan(), guessed, Surface.WINDOW);
        return of(preview, preview.columns().stream().map(column -> remembered.map(mapping -> column(column, mapping))
                .orElseGet(() -> column(column))).toList(), preview.questions());
    }

    private static ExportView of(Preview preview, List<Column> columns, List<String> questions) {
        return new ExportView(preview.export().fileName(), preview.export().rows(), preview.export().dialect().unitLine(),
                preview.export().dialect().decimalMark(), columns, preview.firstRows(), preview.pulls(), preview.labels(),
                preview.howFound(), preview.doubts(), questions);
    }

    private static Column column(GuessedColumn guess) {
        return new Column(guess.column().index() + 1, guess.column().label(), guess.quantity(), guess.unit(), guess.reason());
    }

    private static Column column(GuessedColumn guess, Mapping mapping) {
        return mapping.columns().stream().filter(known -> known.index() == guess.column().index()).findFirst()
                .map(known -> new Column(known.index() + 1, guess.column().label(), Optional.of(known.quantity()),
                        Optional.of(known.unit()), "as remembered for this header"))
                .orElseGet(() -> new Column(guess.column().index() + 1, guess.column().label(), Optional.empty(), Optional.empty(),
                        "not used, as remembered for this header"));
    }

    /** {@return the first cells of a column, as written} */
    public List<String> firstCells(Column column) {
        return firstRows.stream().map(row -> column.number() <= row.size() ? row.get(column.number() - 1) : "").toList();
    }

    /** {@return a column chosen by hand for a quantity, as it is typed for {@link ImportPulls.Reading}} */
    public static String choice(int number, Quantity quantity, Optional<Unit> unit) {
        return ColumnChoice.id(quantity) + "=" + number + unit.map(known -> ":" + known.symbol()).orElse("");
    }

    /** {@return that no column is read as a quantity, as it is typed} */
    public static String none(Quantity quantity) {
        return ColumnChoice.none(quantity);
    }

    /** {@return what a column may be chosen for: whatever a measure can be made of} */
    public static List<Quantity> quantities() {
        return List.of(Quantity.TIME, Quantity.ENGINE_SPEED, Quantity.POWER, Quantity.TORQUE, Quantity.SPEED, Quantity.FRACTION,
                Quantity.FORCE, Quantity.CURRENT, Quantity.VOLTAGE, Quantity.TEMPERATURE, Quantity.PRESSURE);
    }
}
