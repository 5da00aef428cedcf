package fairpull.io.table;

import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.plan.Drift;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The header of a plain table of pulls: which column is where. The case of the names does not matter.
 *
 * @param line its line in the file
 * @param width how many cells it has
 * @param places the place of each named column, by its name in small letters
 */
record TableHeader(int line, int width, Map<String, Integer> places) {
    private static final List<String> REQUIRED = List.of("install", "part", "pull", "value");
    private static final List<String> LAYOUT = List.of("install", "part", "pull", "value", "session", "block");
    private static final String MINUTES = "minutes";
    private static final String EXPECTED = "the first line must name install, part, pull and value";

    /** {@return how many of the columns that a table needs are among these names} */
    static long known(List<String> cells) {
        return cells.stream().map(TableHeader::folded).filter(REQUIRED::contains).distinct().count();
    }

    /**
     * Reads a header.
     *
     * @throws InputException if a name stands twice or a wanted column is missing
     */
    static TableHeader of(String file, Sample.SampleRow row, TableOptions options) {
        Map<String, Integer> places = places(file, row);
        TableHeader header = new TableHeader(row.line(), row.cells().size(), places);
        header.require(file, options);
        return header;
    }

    /** The place of each named column, by its name in small letters; refuses a name that stands twice. */
    static Map<String, Integer> places(String file, Sample.SampleRow row) {
        Map<String, Integer> places = new LinkedHashMap<>();
        for (int column = 0; column < row.cells().size(); column++) {
            String name = folded(row.cell(column));
            if (!name.isEmpty() && places.put(name, column) != null) {
                throw new InputException(Place.of(file, row.line(), name), "two columns have this name", "rename one of them");
            }
        }
        return places;
    }

    int place(String name) {
        return places.get(folded(name));
    }

    Optional<Integer> minutes() {
        return Optional.ofNullable(places.get(MINUTES));
    }

    Optional<Integer> session() {
        return Optional.ofNullable(places.getOrDefault("session", places.get("block")));
    }

    private void require(String file, TableOptions options) {
        for (String name : REQUIRED) {
            require(file, name, EXPECTED);
        }
        if (options.drift() != Drift.NONE) {
            require(file, MINUTES, "a drift needs the column minutes: when each pull started");
        }
        for (String name : options.covariates()) {
            refuseAsCovariate(file, folded(name));
            require(file, name, "the columns are " + String.join(", ", new ArrayList<>(places.keySet())));
        }
    }

    /** What a pull belongs to, when it ran and what it gave is in the model already, or is what the model explains. */
    private void refuseAsCovariate(String file, String name) {
        if (name.equals(MINUTES)) {
            throw new InputException(Place.of(file, line, name), "the column minutes is not a covariate",
                    "a change with time is taken out by --drift linear or --drift quadratic");
        }
        if (LAYOUT.contains(name)) {
            List<String> others = places.keySet().stream().filter(other -> !LAYOUT.contains(other) && !other.equals(MINUTES)).toList();
            throw new InputException(Place.of(file, line, name), "the column " + name + " is not a covariate", others.isEmpty()
                    ? "add a column for what was read beside each pull" : "other columns are " + String.join(", ", others));
        }
    }

    private void require(String file, String name, String remedy) {
        if (!places.containsKey(folded(name))) {
            throw new InputException(Place.of(file, line, name), "there is no such column", remedy);
        }
    }

    private static String folded(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }
}
