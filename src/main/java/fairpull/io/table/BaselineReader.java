package fairpull.io.table;

import fairpull.domain.InputException.Place;
import fairpull.domain.InputException;
import fairpull.domain.pull.DecimalMark;
import fairpull.domain.rig.Baseline;
import fairpull.io.table.Sample.SampleRow;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Reads a plain table of repeated baselines: a header with install and value, and where they are known session, pull and part; one row a
 * pull. An install belongs to its session: the same label in two sessions is two installs. Rows of part B are left out and counted.
 */
public final class BaselineReader {
    private static final String ONE_SESSION = "1";

    private final String file;
    private final Map<String, Integer> places;
    private final DecimalMark mark;
    private final Map<String, Map<String, List<Double>>> sessions = new LinkedHashMap<>();
    private final Map<String, Integer> seen = new LinkedHashMap<>();
    private int rowsOfB;

    private BaselineReader(String file, Map<String, Integer> places, DecimalMark mark) {
        this.file = file;
        this.places = places;
        this.mark = mark;
    }

    /**
     * Reads a table.
     *
     * @throws InputException if the file cannot be used; names file, line, column and what to do
     */
    public static Baseline read(Path path) {
        TextSource source = TextSource.of(path);
        String file = path.toString();
        Delimiter delimiter = PullTableReader.delimiter(source);
        List<SampleRow> rows = PullTableReader.rows(source, delimiter);
        if (rows.size() < 2) {
            String problem = rows.isEmpty() ? "the file holds nothing but blanks" : "there is no pull below the header";
            throw new InputException(Place.of(file), problem, "write a header with session, install, pull and value, and one row a pull");
        }
        List<SampleRow> data = rows.subList(1, rows.size());
        Map<String, Integer> places = places(file, rows.get(0));
        MarkFinder finder = new MarkFinder(source, delimiter);
        for (SampleRow row : data) {
            finder.sawQuotes(row.quoted());
            finder.take(row.line(), row.cell(places.get("value")));
        }
        BaselineReader reader = new BaselineReader(file, places, finder.mark());
        data.forEach(row -> reader.take(row, rows.get(0).cells().size()));
        return reader.baseline();
    }

    private static Map<String, Integer> places(String file, SampleRow header) {
        Map<String, Integer> places = TableHeader.places(file, header);
        for (String name : List.of("install", "value")) {
            if (!places.containsKey(name)) {
                throw new InputException(Place.of(file, header.line(), name), "there is no such column",
                        "the first line must name install and value, and should name session and pull");
            }
        }
        return places;
    }

    private void take(SampleRow row, int width) {
        if (row.usedCells() > width) {
            throw new InputException(Place.of(file, row.line()), "the line has " + row.cells().size() + " cells and the header " + width,
                    "decimal commas between commas must stand in quotes");
        }
        if (isOfB(row)) {
            rowsOfB++;
            return;
        }
        String session = label(row, "session").orElse(ONE_SESSION);
        String install = label(row, "install").orElseThrow();
        label(row, "pull").ifPresent(pull -> {
            Integer earlier = seen.putIfAbsent(session + "\n" + install + "\n" + pull, row.line());
            if (earlier != null) {
                throw new InputException(Place.of(file, row.line(), "pull"), "pull " + pull + " of install " + install
                        + " stands in line " + earlier + " already", "number the pulls of an install, or leave one row out");
            }
        });
        sessions.computeIfAbsent(session, name -> new LinkedHashMap<>()).computeIfAbsent(install, name -> new ArrayList<>())
                .add(number(row));
    }

    private boolean isOfB(SampleRow row) {
        String part = label(row, "part").orElse("A");
        if (part.equalsIgnoreCase("A") || part.equalsIgnoreCase("B")) {
            return part.equalsIgnoreCase("B");
        }
        throw new InputException(Place.of(file, row.line(), "part"), "there is no part “" + part + "”",
                "a baseline is part A; rows of B are left out");
    }

    /** The label in a column, empty only where there is no such column. */
    private Optional<String> label(SampleRow row, String name) {
        Integer place = places.get(name);
        if (place == null) {
            return Optional.empty();
        }
        String label = row.cell(place).strip();
        if (label.isEmpty()) {
            throw new InputException(Place.of(file, row.line(), name), "the cell is blank", "name the " + name);
        }
        return Optional.of(label);
    }

    private double number(SampleRow row) {
        String cell = row.cell(places.get("value")).strip();
        double number = NumberText.parse(cell, mark);
        if (Double.isNaN(number)) {
            throw new InputException(Place.of(file, row.line(), "value"), cell.isEmpty() ? "the cell is blank"
                    : "“" + cell + "” is not a number", "write a plain number with a decimal " + mark.id() + ", or leave the row out");
        }
        if (!(number > 0)) {
            throw new InputException(Place.of(file, row.line(), "value"), "a value of a baseline lies above 0, this one is " + cell,
                    "scatter is reckoned relative to the level; correct the cell or leave the row out");
        }
        return number;
    }

    private Baseline baseline() {
        if (sessions.isEmpty()) {
            throw new InputException(Place.of(file), "every pull is of part B", "a rig record is made from installs of A");
        }
        List<String> order = new ArrayList<>(sessions.keySet());
        if (order.stream().allMatch(BaselineReader::isDate)) {
            order.sort(Comparator.comparing(LocalDate::parse));
        }
        refuseAmbiguousNames(order);
        return new Baseline(order.stream().map(name -> new Baseline.Session(name, sessions.get(name).entrySet().stream()
                .map(install -> new Baseline.Install(install.getKey(), install.getValue())).toList())).toList(), rowsOfB);
    }

    /** “Monday” and “monday” would make two days out of one. */
    private void refuseAmbiguousNames(List<String> order) {
        Set<String> folded = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
        for (String name : order) {
            if (!folded.add(name)) {
                throw new InputException(Place.of(file), "the session “" + name + "” is also written with other letters",
                        "write the name of a session in one way");
            }
        }
    }

    private static boolean isDate(String name) {
        try {
            LocalDate.parse(name);
            return true;
        } catch (DateTimeParseException noDate) {
            return false;
        }
    }
}
