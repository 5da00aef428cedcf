package fairpull.io.table;

import java.util.Optional;
import java.util.Set;

/**
 * What is kept of a table while it passes by.
 *
 * @param columns the columns whose numbers are wanted, by their place in the file, beside those of time; empty: all of them
 * @param mostRows when so many rows are kept, every second one is let go
 */
record Keep(Optional<Set<Integer>> columns, int mostRows) {
    /** So many rows tell what a column is; a pull seldom has more. */
    private static final int ENOUGH_ROWS = 1 << 15;

    /** {@return everything} */
    static Keep everything() {
        return new Keep(Optional.empty(), Integer.MAX_VALUE);
    }

    /** {@return enough to tell what the columns are, however long the file is} */
    static Keep enoughToTell() {
        return new Keep(Optional.empty(), ENOUGH_ROWS);
    }

    /** {@return all rows of some columns} */
    static Keep only(Set<Integer> columns) {
        return new Keep(Optional.of(Set.copyOf(columns)), Integer.MAX_VALUE);
    }

    boolean wants(int column) {
        return columns.isEmpty() || columns.get().contains(column);
    }

    boolean isThinned() {
        return mostRows < Integer.MAX_VALUE;
    }
}
