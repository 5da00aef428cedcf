package fairpull.io.table;

import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.finding.PullRow;
import fairpull.domain.finding.PullTable;
import fairpull.domain.plan.Drift;
import fairpull.domain.plan.Part;
import fairpull.domain.pull.DecimalMark;
import fairpull.io.table.Sample.SampleRow;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;

/** Reads a plain table of pulls: a header with install, part, pull and value, one row a pull, further columns as wanted. */
public final class PullTableReader {
    private static final int MAXIMUM_PULLS = 200_000;
    private static final String ONE_SESSION = "1";
    /** Numbers within these bounds can be squared twice, as a quadratic drift does, without leaving the range of a double. */
    private static final double LARGEST = 1e60;
    private static final double SMALLEST = 1e-60;

    private final String file;
    private final TableOptions options;
    private final TableHeader header;
    private final DecimalMark mark;

    PullTableReader(String file, TableOptions options, TableHeader header, DecimalMark mark) {
        this.file = file;
        this.options = options;
        this.header = header;
        this.mark = mark;
    }

    /**
     * Reads a table.
     *
     * @throws InputException if the file cannot be used, or the table cannot be judged; names file, line, column and what to do
     */
    public static PullTable read(Path path, TableOptions options) {
        TextSource source = TextSource.of(path);
        String file = path.toString();
        Delimiter delimiter = delimiter(source);
        List<SampleRow> rows = rows(source, delimiter);
        if (rows.isEmpty()) {
            throw new InputException(Place.of(file), "the file holds nothing but blanks", "write one row a pull below a header");
        }
        TableHeader header = TableHeader.of(file, rows.get(0), options);
        List<SampleRow> data = rows.subList(1, rows.size());
        if (data.isEmpty()) {
            throw new InputException(Place.of(file, header.line()), "there is a header but no pull below it", "write one row a pull");
        }
        DecimalMark mark = options.decimalMark().orElseGet(() -> mark(source, delimiter, header, options, List.of(), data));
        List<PullRow> pulls = new PullTableReader(file, options, header, mark).pulls(data);
        return new PullTable(options.unit(), options.covariates(), pulls);
    }

    static Delimiter delimiter(TextSource source) {
        return delimiter(source, UnaryOperator.identity());
    }

    /** The delimiter under which most of the columns needed are found, titles being changed into names first. */
    static Delimiter delimiter(TextSource source, UnaryOperator<List<String>> names) {
        Delimiter best = Delimiter.COMMA;
        long most = 0;
        for (Delimiter delimiter : Delimiter.CHARACTERS) {
            List<SampleRow> rows = Sample.of(source, delimiter).rows();
            long known = rows.isEmpty() ? 0 : TableHeader.known(names.apply(rows.get(0).cells()));
            if (known > most) {
                most = known;
                best = delimiter;
            }
        }
        return best;
    }

    static List<SampleRow> rows(TextSource source, Delimiter delimiter) {
        List<SampleRow> rows = new ArrayList<>();
        Rows.visit(source, delimiter, row -> {
            if (rows.size() > MAXIMUM_PULLS) {
                throw new InputException(Place.of(source.file().toString(), row.line()), "the table has more than " + MAXIMUM_PULLS
                        + " pulls", "this is a table of pulls, one row each; a log is taken by import");
            }
            return rows.add(new SampleRow(row.line(), row.copy(), row.isQuoted()));
        });
        return rows;
    }

    static DecimalMark mark(TextSource source, Delimiter delimiter, TableHeader header, TableOptions options, List<String> further,
            List<SampleRow> data) {
        List<Integer> numeric = new ArrayList<>(List.of(header.place("value")));
        header.minutes().ifPresent(numeric::add);
        options.covariates().forEach(name -> numeric.add(header.place(name)));
        further.forEach(name -> numeric.add(header.place(name)));
        MarkFinder finder = new MarkFinder(source, delimiter);
        for (SampleRow row : data) {
            finder.sawQuotes(row.quoted());
            numeric.forEach(column -> finder.take(row.line(), row.cell(column)));
        }
        return finder.mark();
    }

    private List<PullRow> pulls(List<SampleRow> data) {
        TableChecks checks = new TableChecks(file);
        List<PullRow> pulls = new ArrayList<>();
        for (SampleRow row : data) {
            PullRow pull = pull(row);
            checks.take(row.line(), pull);
            pulls.add(pull);
        }
        checks.finish();
        return pulls;
    }

    PullRow pull(SampleRow row) {
        if (row.usedCells() > header.width()) {
            throw new InputException(Place.of(file, row.line()), "the line has " + row.cells().size() + " cells and the header "
                    + header.width(), "decimal commas between commas must stand in quotes");
        }
        List<Double> covariates = new ArrayList<>();
        for (String name : options.covariates()) {
            covariates.add(number(row, name));
        }
        return new PullRow(header.session().map(place -> label(row, "session", place)).orElse(ONE_SESSION),
                label(row, "install", header.place("install")), part(row), label(row, "pull", header.place("pull")),
                minutes(row), number(row, "value"), covariates);
    }

    private double minutes(SampleRow row) {
        if (options.drift() != Drift.NONE) {
            return number(row, "minutes");
        }
        return header.minutes().map(column -> NumberText.parse(row.cell(column), mark)).orElse(Double.NaN);
    }

    private String label(SampleRow row, String name, int place) {
        String label = row.cell(place).strip();
        if (label.isEmpty()) {
            throw new InputException(Place.of(file, row.line(), name), "the cell is blank", "name the " + name);
        }
        return label;
    }

    private Part part(SampleRow row) {
        String name = label(row, "part", header.place("part")).toUpperCase(Locale.ROOT);
        return switch (name) {
            case "A" -> Part.A;
            case "B" -> Part.B;
            default -> throw new InputException(Place.of(file, row.line(), "part"), "there is no part “" + name + "”",
                    "a part is A, the reference, or B, the change");
        };
    }

    double number(SampleRow row, String name) {
        String cell = row.cell(header.place(name)).strip();
        Place place = Place.of(file, row.line(), name);
        if (cell.isEmpty()) {
            throw new InputException(place, "the cell is blank", "fill it in, or leave the whole row out");
        }
        double number = NumberText.parse(cell, mark);
        if (Double.isNaN(number)) {
            throw new InputException(place, "“" + cell + "” is not a number", "write a plain number with a decimal " + mark.id());
        }
        if (!isInRange(number)) {
            throw new InputException(place, "“" + cell + "” is out of range: apart from 0, sizes from 1e-60 to 1e60 are taken",
                    "correct the cell, or write the column in another unit");
        }
        return number;
    }

    private static boolean isInRange(double number) {
        double size = Math.abs(number);
        return size == 0 || size >= SMALLEST && size <= LARGEST;
    }
}
