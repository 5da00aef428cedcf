package fairpull.io.table;

import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.finding.PullRow;
import fairpull.domain.plan.Part;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/** What must hold across the rows of a table of pulls before it can be judged. */
final class TableChecks {
    private static final String BOTH_PARTS = "a comparison needs at least one install of A and one of B";

    private final String file;
    private final Map<String, Seen> installs = new HashMap<>();
    private final Map<String, Integer> pullLines = new HashMap<>();
    private final Set<Part> parts = EnumSet.noneOf(Part.class);
    private final Set<Double> values = new HashSet<>();

    private record Seen(int line, PullRow pull) {
    }

    TableChecks(String file) {
        this.file = file;
    }

    void take(int line, PullRow pull) {
        Integer earlier = pullLines.putIfAbsent(pull.install() + "\n" + pull.pull(), line);
        if (earlier != null) {
            throw new InputException(Place.of(file, line, "pull"), "pull " + pull.pull() + " of install " + pull.install()
                    + " stands in line " + earlier + " already", "number the pulls of an install, or leave one row out");
        }
        Seen first = installs.computeIfAbsent(pull.install(), label -> new Seen(line, pull));
        if (first.pull().part() != pull.part()) {
            throw new InputException(Place.of(file, line, "part"), "install " + pull.install() + " is part " + first.pull().part()
                    + " in line " + first.line() + " and part " + pull.part() + " here", "give each fitting a label of its own");
        }
        if (!first.pull().session().equals(pull.session())) {
            throw new InputException(Place.of(file, line, "session"), "install " + pull.install() + " is in session "
                    + first.pull().session() + " in line " + first.line() + " and in session " + pull.session() + " here",
                    "give each fitting a label of its own");
        }
        parts.add(pull.part());
        values.add(pull.value());
    }

    void finish() {
        if (installs.size() == 1) {
            throw new InputException(Place.of(file), "there is only one install", BOTH_PARTS);
        }
        if (parts.size() == 1) {
            Part only = parts.iterator().next();
            throw new InputException(Place.of(file), "every pull is of part " + only, BOTH_PARTS);
        }
        if (values.size() == 1) {
            throw new InputException(Place.of(file), "all values are equal: " + values.iterator().next(),
                    "this is no measurement; check the column value");
        }
    }
}
