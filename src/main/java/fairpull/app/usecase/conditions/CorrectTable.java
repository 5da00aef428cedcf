package fairpull.app.usecase.conditions;

import fairpull.app.usecase.Answer;
import fairpull.app.usecase.UsageException;
import fairpull.app.usecase.typing.ReadingCheck;
import fairpull.app.usecase.typing.TypedAir;
import fairpull.app.usecase.typing.TypedStandard;
import fairpull.domain.InputException;
import fairpull.domain.air.AirNotice;
import fairpull.domain.air.AirReading;
import fairpull.domain.air.Barometer;
import fairpull.domain.air.Humidity;
import fairpull.domain.air.Standard;
import fairpull.domain.pull.DecimalMark;
import fairpull.domain.unit.Amount;
import fairpull.domain.unit.Quantity;
import fairpull.engine.air.Air;
import fairpull.engine.air.AirReview;
import fairpull.engine.air.Factor;
import fairpull.io.folder.AtomicWrite;
import fairpull.io.json.AirTableJson;
import fairpull.io.table.AirTable;
import fairpull.io.table.AirTable.Column;
import fairpull.report.wording.AirTableWords;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Corrects a table of readings: the same table with the columns factor and warnings, and corrected power where it has a power. */
public final class CorrectTable {
    private final Standard standard;
    private final Optional<Standard> from;
    private final Request request;
    private final AirTable table;
    private final OptionalDouble elevation;
    private final Map<AirNotice.Code, Integer> seen = new TreeMap<>();
    private double lowest = Double.POSITIVE_INFINITY;
    private double highest = Double.NEGATIVE_INFINITY;

    /**
     * What is asked.
     *
     * @param standard to which standard, and from which
     * @param table the readings
     * @param out where the result goes
     * @param decimal decimal mark, where it cannot be told
     * @param seaLevel whether all pressures are reduced to sea level
     * @param elevation height of the rig, where the table has no column of it
     */
    public record Request(TypedStandard standard, Path table, Path out, Optional<DecimalMark> decimal, boolean seaLevel,
            Optional<String> elevation) {
    }

    private CorrectTable(Request request) {
        this.request = request;
        this.standard = request.standard().to();
        this.from = request.standard().undone();
        this.table = AirTable.read(request.table(), request.decimal());
        this.elevation = request.elevation().map(text -> OptionalDouble.of(new ReadingCheck(InputException.Place.none()).elevation(
                ReadingCheck.typed("--elevation", text, Quantity.LENGTH, "300m")))).orElse(OptionalDouble.empty());
    }

    /** Writes the corrected table whole or not at all; returns what was written. */
    public static Answer correct(Request request) throws IOException {
        if (Files.exists(request.out()) && Files.isSameFile(request.table(), request.out())) {
            throw new UsageException("--out", "is the table itself, which is kept as it came; name another file");
        }
        return new CorrectTable(request).correct();
    }

    private Answer correct() throws IOException {
        boolean power = table.has(Column.POWER);
        List<String> titles = new ArrayList<>(List.of("factor"));
        if (power) {
            titles.add("corrected power (" + table.unit(Column.POWER).symbol() + ")");
        }
        titles.add("warnings");
        List<List<String>> cells = new ArrayList<>();
        for (int row = 0; row < table.size(); row++) {
            cells.add(cells(row, power));
        }
        AtomicWrite.text(request.out(), table.with(titles, cells));
        Map<String, Integer> warnings = new TreeMap<>();
        seen.forEach((code, count) -> warnings.put(id(code), count));
        return new Answer(AirTableWords.sentence(table.size(), standard.correction(), lowest, highest, request.out().toString(), warnings),
                AirTableJson.document(standard.correction(), table.size(), lowest, highest, request.out().toString(), warnings));
    }

    private List<String> cells(int row, boolean power) {
        AirReading reading = reading(row);
        double factor = Factor.of(standard, Air.at(reading)) / from.map(undone -> Factor.of(undone, Air.at(reading))).orElse(1.0);
        lowest = Math.min(lowest, factor);
        highest = Math.max(highest, factor);
        List<String> cells = new ArrayList<>(List.of(number(factor, 6)));
        if (power) {
            cells.add(table.amount(row, Column.POWER).map(amount -> number(amount.value() * factor, 3)).orElse(""));
        }
        List<AirNotice> notices = AirReview.notices(standard, reading, Optional.empty(), request.standard().induction());
        notices.forEach(notice -> seen.merge(notice.code(), 1, Integer::sum));
        cells.add(notices.stream().map(notice -> id(notice.code())).collect(Collectors.joining(" ")));
        return cells;
    }

    private static String id(AirNotice.Code code) {
        return code.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private String number(double value, int decimals) {
        return table.written(String.format(Locale.ROOT, "%." + decimals + "f", value));
    }

    private AirReading reading(int row) {
        double kelvin = check(row, Column.TEMPERATURE).temperature(needed(row, Column.TEMPERATURE));
        double pascal = check(row, Column.PRESSURE).pressure(needed(row, Column.PRESSURE));
        OptionalDouble height = optional(row, Column.ELEVATION)
                .map(amount -> OptionalDouble.of(check(row, Column.ELEVATION).elevation(amount))).orElse(elevation);
        if (request.seaLevel() && height.isEmpty()) {
            throw new UsageException("--sea-level", "needs --elevation, or a column elevation without gaps");
        }
        return TypedAir.checked(table.place(row, Column.PRESSURE), new AirReading(kelvin, new Barometer(request.seaLevel()
                ? Barometer.Kind.SEA_LEVEL : Barometer.Kind.STATION, pascal, height), humidity(row, kelvin)));
    }

    private Humidity humidity(int row, double kelvin) {
        Optional<Humidity> relative = optional(row, Column.HUMIDITY)
                .map(amount -> new Humidity.Relative(check(row, Column.HUMIDITY).humidity(amount)));
        return relative
                .or(() -> optional(row, Column.DEW_POINT).map(amount -> TypedAir.dewPoint(check(row, Column.DEW_POINT), amount, kelvin)))
                .or(() -> optional(row, Column.WET_BULB).map(amount -> TypedAir.wetBulb(check(row, Column.WET_BULB), amount, kelvin)))
                .orElse(new Humidity.NotRead());
    }

    private ReadingCheck check(int row, Column column) {
        return new ReadingCheck(table.place(row, column));
    }

    private Optional<Amount> optional(int row, Column column) {
        return table.has(column) ? table.amount(row, column) : Optional.empty();
    }

    private Amount needed(int row, Column column) {
        return table.amount(row, column).orElseThrow(() -> new InputException(table.place(row, column), "the cell is blank",
                "fill it in, or leave the whole row out"));
    }
}
