package fairpull.io.table;

import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.pull.DecimalMark;
import fairpull.domain.unit.Amount;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.Units;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** A table of readings of the air, one a row, units in the header; it is kept as it came, and columns are added at its right. */
public final class AirTable {
    private static final int MOST_ROWS = 200_000;

    private final Place file;
    private final Delimiter delimiter;
    private final DecimalMark mark;
    private final List<String> header;
    private final Map<Column, Integer> places;
    private final List<Sample.SampleRow> rows;

    private AirTable(Place file, Delimiter delimiter, DecimalMark mark, List<Sample.SampleRow> all) {
        this.file = file;
        this.delimiter = delimiter;
        this.mark = mark;
        this.header = all.get(0).cells();
        this.places = places(header);
        this.rows = all.subList(1, all.size());
    }

    /** The columns that are read; all others are carried along. */
    public enum Column {
        TEMPERATURE(Quantity.TEMPERATURE, "C", Set.of("temperature", "intake air", "air temperature", "intake air temperature")),
        PRESSURE(Quantity.PRESSURE, "hPa", Set.of("pressure", "barometer", "station pressure")),
        HUMIDITY(Quantity.FRACTION, "%", Set.of("humidity", "relative humidity")),
        DEW_POINT(Quantity.TEMPERATURE, "C", Set.of("dew point")),
        WET_BULB(Quantity.TEMPERATURE, "C", Set.of("wet bulb")),
        ELEVATION(Quantity.LENGTH, "m", Set.of("elevation")),
        POWER(Quantity.POWER, "hp", Set.of("power"));

        private final Quantity quantity;
        private final String example;
        private final Set<String> names;

        Column(Quantity quantity, String example, Set<String> names) {
            this.quantity = quantity;
            this.example = example;
            this.names = names;
        }

        /** {@return the name that a header has} */
        public String words() {
            return name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
    }

    /**
     * Reads a table.
     *
     * @param decimal its decimal mark, where it cannot be told
     * @throws InputException if the file cannot be used; names file, line, column and what to do
     */
    public static AirTable read(Path path, Optional<DecimalMark> decimal) {
        TextSource source = TextSource.of(path);
        Place file = Place.of(path.toString());
        Delimiter delimiter = delimiter(source, file);
        List<Sample.SampleRow> all = new ArrayList<>();
        Rows.visit(source, delimiter, row -> {
            if (all.size() > MOST_ROWS) {
                throw new InputException(Place.of(path.toString(), row.line()), "more than " + MOST_ROWS + " rows", "split the table");
            }
            return all.add(new Sample.SampleRow(row.line(), row.copy(), row.isQuoted()));
        });
        if (all.size() < 2) {
            throw new InputException(file, "there is a header but no reading below it", "write one reading a row");
        }
        return new AirTable(file, delimiter, decimal.orElseGet(() -> mark(source, delimiter, all)), all);
    }

    private static Delimiter delimiter(TextSource source, Place file) {
        for (Delimiter delimiter : Delimiter.CHARACTERS) {
            List<Sample.SampleRow> rows = Sample.of(source, delimiter).rows();
            if (!rows.isEmpty() && places(rows.get(0).cells()).keySet().containsAll(List.of(Column.TEMPERATURE, Column.PRESSURE))) {
                return delimiter;
            }
        }
        throw new InputException(Place.of(file.file(), 1), "the first line does not name the columns temperature and pressure",
                "write a header such as temperature (C),pressure (hPa),humidity (%)");
    }

    private static Map<Column, Integer> places(List<String> header) {
        Map<Column, Integer> places = new EnumMap<>(Column.class);
        for (int i = 0; i < header.size(); i++) {
            String name = HeaderCell.of(header.get(i)).name().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", " ");
            for (Column column : Column.values()) {
                if (column.names.contains(name)) {
                    places.putIfAbsent(column, i);
                }
            }
        }
        return places;
    }

    private static DecimalMark mark(TextSource source, Delimiter delimiter, List<Sample.SampleRow> all) {
        MarkFinder finder = new MarkFinder(source, delimiter);
        Map<Column, Integer> places = places(all.get(0).cells());
        for (Sample.SampleRow row : all.subList(1, all.size())) {
            finder.sawQuotes(row.quoted());
            places.values().forEach(place -> finder.take(row.line(), row.cell(place)));
        }
        return finder.mark();
    }

    /** {@return how many readings there are} */
    public int size() {
        return rows.size();
    }

    /** {@return whether the table has a column} */
    public boolean has(Column column) {
        return places.containsKey(column);
    }

    /** {@return where a reading stands} */
    public Place place(int row, Column column) {
        return Place.of(file.file(), rows.get(row).line(), column.words());
    }

    /** {@return a reading with its unit; empty where the cell is blank} */
    public Optional<Amount> amount(int row, Column column) {
        String cell = rows.get(row).cell(places.get(column)).strip();
        if (cell.isEmpty()) {
            return Optional.empty();
        }
        double number = NumberText.parse(cell, mark);
        Optional<Amount> amount = Double.isNaN(number) ? Amount.parse(cell) : Optional.of(new Amount(number, unit(column)));
        return Optional.of(amount.filter(reading -> reading.unit().quantity() == column.quantity).orElseThrow(() -> new InputException(
                place(row, column), "“" + cell + "” is no " + column.words(), "write a plain number with a decimal " + mark.id())));
    }

    /** {@return the unit in a column's header} */
    public Unit unit(Column column) {
        String title = header.get(places.get(column));
        return Units.find(HeaderCell.of(title).unitText()).filter(unit -> unit.quantity() == column.quantity && !unit.equals(Units.ONE))
                .orElseThrow(() -> new InputException(Place.of(file.file(), 1, title), "the column does not say its unit",
                        "write it behind the name, such as " + column.words() + " (" + column.example + ")"));
    }

    /** {@return a number as this table writes it} */
    public String written(String number) {
        return number.replace('.', mark.symbol());
    }

    /**
     * {@return the whole table with columns added at its right}
     *
     * @param titles their headers
     * @param cells a list a row, as long as {@code titles}
     */
    public String with(List<String> titles, List<List<String>> cells) {
        StringBuilder text = new StringBuilder();
        line(text, header, titles);
        for (int row = 0; row < rows.size(); row++) {
            line(text, rows.get(row).cells(), cells.get(row));
        }
        return text.toString();
    }

    private void line(StringBuilder text, List<String> present, List<String> added) {
        List<String> all = new ArrayList<>(present.subList(0, Math.min(present.size(), header.size())));
        while (all.size() < header.size()) {
            all.add("");
        }
        all.addAll(added);
        text.append(String.join(String.valueOf(delimiter.symbol()), all.stream().map(this::quoted).toList())).append('\n');
    }

    private String quoted(String cell) {
        boolean plain = cell.indexOf(delimiter.symbol()) < 0 && cell.indexOf('"') < 0 && cell.indexOf('\n') < 0 && cell.indexOf('\r') < 0;
        return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }
}
