package fairpull.io.table;

import fairpull.io.table.Sample.SampleRow;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Which column of a table in long form is what, counted from 0; -1 where there is none.
 *
 * @param time when the number was recorded
 * @param channel what it is a number of
 * @param value the number
 * @param unit its unit
 * @param pull its pull
 */
record LongShape(int time, int channel, int value, int unit, int pull) {
    /** Headings of a column of channels; common practice, no source. */
    private static final Set<String> CHANNEL = Set.of("channel", "signal", "parameter", "variable", "sensor", "kanal", "messkanal", "tag");
    private static final Set<String> UNIT = Set.of("unit", "units", "einheit");
    private static final int NONE = -1;

    /** {@return the columns by what stands in the first rows; empty where these are no table in long form} */
    static Optional<LongShape> of(Layout layout) {
        List<SampleRow> rows = layout.sample().rows().subList(layout.header().firstDataRow(), layout.sample().rows().size());
        int pull = PullNumbers.column(layout);
        int time = NONE;
        int channel = NONE;
        int unit = NONE;
        List<Integer> others = new ArrayList<>();
        for (int column = 0; column < layout.names().usedCells(); column++) {
            HeaderCell header = HeaderCell.of(layout.names().cell(column));
            if (column == pull) {
                continue;
            }
            if (isNumeric(rows, column)) {
                boolean isTime = time == NONE && (TimeGroups.isTime(header.name(), header.unitText()));
                time = isTime ? column : time;
                others.addAll(isTime ? List.of() : List.of(column));
            } else if (unit == NONE && isUnits(rows, column, header)) {
                unit = column;
            } else if (channel == NONE && isChannels(rows, column, header)) {
                channel = column;
            }
        }
        boolean fits = time != NONE && channel != NONE && others.size() == 1 && isUnknown(layout.names().cell(others.get(0)));
        return fits ? Optional.of(new LongShape(time, channel, others.get(0), unit, pull)) : Optional.empty();
    }

    private static boolean isUnknown(String header) {
        HeaderCell parts = HeaderCell.of(header);
        return ColumnWords.of(parts.name()).quantity().isEmpty()
                && (parts.unitText().isBlank() || UnitText.find(parts.unitText()).isEmpty());
    }

    private static boolean isNumeric(List<SampleRow> rows, int column) {
        long numbers = rows.stream().filter(row -> row.isNumber(column)).count();
        long texts = rows.stream().filter(row -> !row.isNumber(column) && !row.isBlank(column)).count();
        return numbers > texts;
    }

    private static boolean isUnits(List<SampleRow> rows, int column, HeaderCell header) {
        boolean named = ColumnWords.split(header.name()).stream().anyMatch(UNIT::contains);
        boolean allUnits = rows.stream().map(row -> row.cell(column)).filter(cell -> !cell.isBlank())
                .allMatch(cell -> UnitText.find(HeaderCell.unitOf(cell)).isPresent());
        return named || allUnits && rows.stream().noneMatch(row -> ColumnWords.of(row.cell(column)).quantity().isPresent());
    }

    private static boolean isChannels(List<SampleRow> rows, int column, HeaderCell header) {
        List<String> named = rows.stream().filter(row -> !row.isNumber(column)).map(row -> row.cell(column).strip())
                .filter(name -> !name.isEmpty()).distinct().toList();
        boolean headed = ColumnWords.split(header.name()).stream().anyMatch(CHANNEL::contains);
        boolean repeat = !named.isEmpty() && named.size() * 2 <= rows.size();
        return headed || repeat && named.stream().anyMatch(name -> !isUnknown(name));
    }
}
