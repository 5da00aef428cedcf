package fairpull.io.table;

import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.audit.CurveSeen;
import fairpull.domain.audit.Publication;
import fairpull.domain.pull.Channels;
import fairpull.domain.pull.Mapping;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;

/** Reads a published curve from a table of any shape: a column of engine speed that rises, and one of the quantity. */
public final class CurveFileReader {
    private CurveFileReader() {
    }

    /**
     * Reads a curve.
     *
     * @param export the table
     * @param column header or number of the column of the quantity, where it has to be said
     * @param curves what was said of the curve; its units count where the table names none
     * @throws InputException if the file cannot be used, a column is missing, or the speeds do not rise
     */
    public static CurveSeen read(Export export, Optional<String> column, Publication.Curves curves) {
        Quantity quantity = curves.unit().quantity();
        Map<Quantity, ColumnChoice> choices = new EnumMap<>(Quantity.class);
        column.ifPresent(name -> choices.put(quantity, choice(export, name, curves.unit())));
        Mapping mapping = ColumnGuess.mapping(export, EnumSet.of(Quantity.ENGINE_SPEED, quantity), choices, Optional.empty());
        Unit unit = unit(export, mapping, quantity);
        Unit speedUnit = unit(export, mapping, Quantity.ENGINE_SPEED);
        MappedExport.Result mapped = MappedExport.read(export, mapping);
        Channels channels = mapped.channels();
        Samples speeds = channels.find(Quantity.ENGINE_SPEED).orElseThrow();
        for (int row = 0; row < speeds.size(); row++) {
            if (!(speeds.at(row) > (row == 0 ? 0 : speeds.at(row - 1)))) {
                throw new InputException(mapped.lines().at(export.fileName(), row), "the engine speed of a curve rises from row to row",
                        "sort the rows by engine speed, one row a speed");
            }
        }
        if (speeds.size() < 2) {
            throw new InputException(Place.of(export.fileName()), "a curve has two rows or more", "give the table of the curve");
        }
        Samples exact = speeds.map(speed -> 0);
        return new CurveSeen(unit, speedUnit, speeds, channels.find(quantity).orElseThrow(), exact, exact);
    }

    /** A heading that names a unit is believed; otherwise the unit said of the curve counts. */
    private static ColumnChoice choice(Export export, String name, Unit unit) {
        boolean named = export.columns().stream().anyMatch(column -> (column.name().equalsIgnoreCase(name) || column.label().equals(name))
                && !column.unitText().isEmpty());
        return new ColumnChoice(Optional.of(name), named ? Optional.empty() : Optional.of(unit));
    }

    private static Unit unit(Export export, Mapping mapping, Quantity quantity) {
        return mapping.columns().stream().filter(column -> column.quantity() == quantity).map(Mapping.Column::unit).findFirst()
                .orElseThrow(() -> new InputException(Place.of(export.fileName(), export.dialect().headerLine()),
                        "no column is known as " + quantity.words(), "name it in the publication: \"column\": \"its header\""));
    }
}
