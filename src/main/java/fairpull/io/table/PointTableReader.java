package fairpull.io.table;

import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.curve.PointTable;
import fairpull.domain.finding.PullRow;
import fairpull.domain.finding.PullTable;
import fairpull.domain.pull.DecimalMark;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.Units;
import fairpull.io.table.Sample.SampleRow;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Reads curves from a plain long table: a header with install, part, pull, speed and value (units of the last two in brackets behind
 * their names), one row a speed of a pull. A column bandwidth (rpm) says that the values stand on a common grid already, smoothed so.
 * What a row says of its pull beside the speed is read as in a table of pulls.
 */
public final class PointTableReader {
    private static final String BANDWIDTH = "bandwidth";
    private static final String EXPECTED = "the first line must name install, part, pull, speed and value; write one row a speed of a pull "
            + "(report --csv FOLDER writes such a table as curve-points.csv)";

    private final String file;
    private final PullTableReader cells;
    private final Unit speedUnit;
    private final boolean onGrid;

    private PointTableReader(String file, PullTableReader cells, Unit speedUnit, boolean onGrid) {
        this.file = file;
        this.cells = cells;
        this.speedUnit = speedUnit;
        this.onGrid = onGrid;
    }

    private static final class Points {
        private final PullRow first;
        private final int line;
        private final List<Double> speeds = new ArrayList<>();
        private final List<Double> values = new ArrayList<>();

        Points(PullRow first, int line) {
            this.first = first;
            this.line = line;
        }

        PointTable.Pull pull() {
            return new PointTable.Pull(first.session(), first.install(), first.part(), first.pull(), first.minutes(), first.covariates(),
                    samples(speeds), samples(values));
        }

        private static Samples samples(List<Double> numbers) {
            return Samples.of(numbers.stream().mapToDouble(Double::doubleValue).toArray());
        }
    }

    /**
     * Reads a table.
     *
     * @param options as for a table of pulls; its unit counts where the header names none
     * @throws InputException if the file cannot be used; names file, line, column and what to do
     */
    public static PointTable read(Path path, TableOptions options) {
        TextSource source = TextSource.of(path);
        String file = path.toString();
        Delimiter delimiter = PullTableReader.delimiter(source, PointTableReader::withoutUnits);
        List<SampleRow> rows = PullTableReader.rows(source, delimiter);
        if (rows.size() < 2) {
            throw new InputException(Place.of(file), "the file holds no row below a header",
                    EXPECTED);
        }
        SampleRow titles = rows.get(0);
        Unit speedUnit = unit(titles, "speed", file).orElse(Units.RPM);
        if (speedUnit.quantity() != Quantity.ENGINE_SPEED) {
            throw new InputException(Place.of(file, titles.line(), "speed"), "“" + speedUnit.symbol() + "” is not a unit of engine speed",
                    "write speed [rpm] or speed [rad/s]");
        }
        Unit valueUnit = unit(titles, "value", file).orElseGet(() -> Units.findOrAsTyped(options.unit()));
        SampleRow plain = new SampleRow(titles.line(), withoutUnits(titles.cells()), titles.quoted());
        refuseMissing(file, plain);
        TableHeader header = TableHeader.of(file, plain, options);
        List<SampleRow> data = rows.subList(1, rows.size());
        DecimalMark mark = options.decimalMark().orElseGet(() -> PullTableReader.mark(source, delimiter, header, options,
                List.of("speed"), data));
        PointTableReader reader = new PointTableReader(file, new PullTableReader(file, options, header, mark), speedUnit,
                header.places().containsKey(BANDWIDTH));
        List<Points> pulls = reader.pulls(data);
        return new PointTable(valueUnit, options.covariates(), reader.bandwidth(data), pulls.stream().map(Points::pull).toList());
    }

    private List<Points> pulls(List<SampleRow> data) {
        Map<String, Points> pulls = new LinkedHashMap<>();
        for (SampleRow row : data) {
            PullRow pull = cells.pull(row);
            Points points = pulls.computeIfAbsent(pull.install() + "\n" + pull.pull(), name -> new Points(pull, row.line()));
            refuseOther(row, pull, points);
            points.speeds.add(speed(row));
            points.values.add(pull.value());
        }
        refuseUnusable(pulls.values().stream().map(points -> points.first).toList());
        return List.copyOf(pulls.values());
    }

    /** One bandwidth holds for the whole table. */
    private OptionalDouble bandwidth(List<SampleRow> data) {
        if (!onGrid) {
            return OptionalDouble.empty();
        }
        double first = cells.number(data.get(0), BANDWIDTH);
        for (SampleRow row : data) {
            double bandwidth = cells.number(row, BANDWIDTH);
            if (bandwidth < 0 || bandwidth != first) {
                throw new InputException(Place.of(file, row.line(), BANDWIDTH), "a table on a grid has one bandwidth, 0 or more",
                        "leave the column out if the values are as recorded");
            }
        }
        return OptionalDouble.of(Units.RPM.toSi(first));
    }

    private double speed(SampleRow row) {
        double speed = speedUnit.toSi(cells.number(row, "speed"));
        if (!(speed > 0)) {
            throw new InputException(Place.of(file, row.line(), "speed"), "an engine speed must lie above 0", "correct the cell");
        }
        return speed;
    }

    /** All rows of a pull say the same of it. */
    private void refuseOther(SampleRow row, PullRow pull, Points points) {
        boolean same = pull.part() == points.first.part() && pull.session().equals(points.first.session())
                && pull.covariates().equals(points.first.covariates()) && Double.compare(pull.minutes(), points.first.minutes()) == 0;
        if (!same) {
            throw new InputException(Place.of(file, row.line(), "pull"), "pull " + pull.pull() + " of install " + pull.install()
                    + " has another part, session, time or covariate in line " + points.line, "give each pull a name of its own");
        }
    }

    /** What holds of a table of pulls holds of the pulls of this one. */
    private void refuseUnusable(List<PullRow> pulls) {
        try {
            new PullTable("", List.of(), pulls.stream().map(pull -> new PullRow(pull.session(), pull.install(), pull.part(), pull.pull(),
                    pull.minutes(), pull.value(), List.of())).toList());
        } catch (IllegalArgumentException contradiction) {
            throw new InputException(Place.of(file), contradiction.getMessage(),
                    "a comparison needs installs of A and of B, each with a label, a part and a session of its own");
        }
    }

    private static void refuseMissing(String file, SampleRow titles) {
        List<String> names = titles.cells().stream().map(cell -> cell.strip().toLowerCase(Locale.ROOT)).toList();
        for (String needed : List.of("install", "part", "pull", "speed", "value")) {
            if (!names.contains(needed)) {
                throw new InputException(Place.of(file, titles.line(), needed), "there is no such column", EXPECTED);
            }
        }
    }

    private static Optional<Unit> unit(SampleRow titles, String column, String file) {
        for (String cell : titles.cells()) {
            HeaderCell title = HeaderCell.of(cell);
            if (title.name().toLowerCase(Locale.ROOT).equals(column) && !title.unitText().isEmpty()) {
                return Optional.of(Units.findOrAsTyped(title.unitText()));
            }
        }
        return Optional.empty();
    }

    private static List<String> withoutUnits(List<String> titles) {
        return titles.stream().map(title -> HeaderCell.of(title).name()).toList();
    }
}
