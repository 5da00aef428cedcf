package fairpull.io.table;

import java.util.List;
import java.util.Set;

/** The column that says row by row which pull it belongs to. Its names are common practice, no source. */
final class PullNumbers {
    private static final Set<String> PULL = Set.of("pull", "run", "sweep", "lauf", "messung", "versuch");
    private static final Set<String> NUMBER = Set.of("no", "nr", "number", "num", "id", "index", "nummer", "name", "label");
    private static final int MOST_WORDS = 2;

    private PullNumbers() {
    }

    /** {@return its place, counted from 0; -1 where there is none} */
    static int column(Layout layout) {
        for (int column = 0; column < layout.names().usedCells(); column++) {
            if (isName(layout.names().cell(column))) {
                return column;
            }
        }
        return -1;
    }

    /** {@return whether a header says that the number of the pull stands below it} */
    static boolean isName(String header) {
        List<String> words = ColumnWords.split(HeaderCell.of(header).name());
        return !words.isEmpty() && words.size() <= MOST_WORDS && PULL.contains(words.get(0))
                && words.stream().skip(1).allMatch(NUMBER::contains);
    }
}
