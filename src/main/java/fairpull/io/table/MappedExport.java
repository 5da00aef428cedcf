package fairpull.io.table;

import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.pull.Channels;
import fairpull.domain.pull.Mapping;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** The step from columns to channels in SI. */
public final class MappedExport {
    private MappedExport() {
    }

    /**
     * Channels of an export.
     *
     * @param channels the channels in SI
     * @param lines which line of the file each row of the channels stands in
     * @param droppedRows how many rows were left out because a used cell in them is blank or says that there is no value
     */
    public record Result(Channels channels, RowLines lines, int droppedRows) {
    }

    /**
     * Reads the used columns as channels; rows in which a used cell is blank or says that there is no value are left out, but for the
     * throttle: that says which rows count, and its blanks say nothing.
     *
     * @throws InputException if a used column is not there, holds text, or if no row is complete
     */
    public static Channels channels(Export export, Mapping mapping) {
        return read(export, mapping).channels();
    }

    /**
     * Reads the used columns as channels and counts the rows left out.
     *
     * @throws InputException as {@link #channels}
     */
    public static Result read(Export export, Mapping mapping) {
        List<ExportColumn> used = new ArrayList<>();
        for (Mapping.Column column : mapping.columns()) {
            used.add(usable(export, column));
        }
        List<Samples> needed = IntStream.range(0, used.size()).filter(i -> mustBeThere(mapping.columns().get(i)))
                .mapToObj(i -> used.get(i).numbers()).toList();
        int[] complete = completeRows(needed, export.rows());
        if (complete.length == 0) {
            throw new InputException(Place.of(export.fileName()), "no row has a number in each of the columns "
                    + String.join(", ", used.stream().map(ExportColumn::label).toList()), "choose other columns");
        }
        Map<Quantity, Samples> channels = new EnumMap<>(Quantity.class);
        for (int i = 0; i < used.size(); i++) {
            Mapping.Column column = mapping.columns().get(i);
            Samples numbers = used.get(i).numbers();
            double[] si = Arrays.stream(complete).mapToDouble(numbers::at).map(column.unit()::toSi).toArray();
            channels.put(column.quantity(), Samples.of(si));
        }
        return new Result(new Channels(channels), export.lines().only(complete), export.rows() - complete.length);
    }

    /**
     * Reads the used columns as channels with a row for every row of the export; a row that {@link #channels} would leave out has no
     * numbers.
     *
     * @throws InputException if a used column is not there or holds text
     */
    public static Channels everyRow(Export export, Mapping mapping) {
        Map<Quantity, Samples> channels = new EnumMap<>(Quantity.class);
        Samples[] needed = mapping.columns().stream().filter(MappedExport::mustBeThere)
                .map(column -> usable(export, column).numbers()).toArray(Samples[]::new);
        for (Mapping.Column column : mapping.columns()) {
            Samples numbers = usable(export, column).numbers();
            channels.put(column.quantity(), Samples.of(IntStream.range(0, export.rows())
                    .mapToDouble(row -> isComplete(needed, row) ? column.unit().toSi(numbers.at(row)) : Double.NaN).toArray()));
        }
        return new Channels(channels);
    }

    /** {@return whether a blank cell in a column costs the row} */
    public static boolean mustBeThere(Mapping.Column column) {
        return column.quantity() != Quantity.FRACTION;
    }

    private static ExportColumn usable(Export export, Mapping.Column column) {
        ExportColumn found = export.columns().stream()
                .filter(candidate -> candidate.index() == column.index())
                .findFirst()
                .orElseThrow(() -> new InputException(Place.of(export.fileName(), export.dialect().headerLine(), column.name()),
                        "there is no such column", "import the file anew with its own mapping"));
        found.firstText().ifPresent(text -> {
            throw new InputException(Place.of(export.fileName(), text.line(), found.label()),
                    "“" + text.text() + "” is not a number", "mend or empty the cell in a copy of the file, or choose another column");
        });
        if (!found.isNumeric()) {
            throw new InputException(Place.of(export.fileName(), export.dialect().headerLine(), found.label()),
                    "the column is empty", "choose another column for " + column.quantity().words());
        }
        return found;
    }

    /** {@return the rows, of so many, in which each of some columns has a number} */
    public static int[] completeRows(List<Samples> columns, int rows) {
        Samples[] needed = columns.toArray(new Samples[0]);
        return IntStream.range(0, rows).filter(row -> isComplete(needed, row)).toArray();
    }

    private static boolean isComplete(Samples[] needed, int row) {
        for (Samples column : needed) {
            if (Double.isNaN(column.at(row))) {
                return false;
            }
        }
        return true;
    }
}
