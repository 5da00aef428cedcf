package fairpull.io.table;

import fairpull.domain.InputException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The first rows of a file under one delimiter, from which its dialect is told.
 *
 * @param delimiter the delimiter tried
 * @param rows the rows
 * @param whole whether these are all rows of the file
 * @param trouble what stopped the reading, if anything did
 */
record Sample(Delimiter delimiter, List<SampleRow> rows, boolean whole, Optional<InputException> trouble) {
    private static final int MOST_ROWS = 400;
    private static final int MOST_CHARACTERS = 1 << 20;

    /**
     * One row.
     *
     * @param line its line in the file, counted from 1
     * @param cells its cells as written
     * @param quoted whether any of them stands in quotes
     */
    record SampleRow(int line, List<String> cells, boolean quoted) {
        String cell(int index) {
            return index < cells.size() ? cells.get(index) : "";
        }

        boolean isNumber(int index) {
            String cell = cell(index);
            return !NumberText.isBlank(cell) && (NumberText.evidence(cell) != NumberText.Evidence.TEXT || ClockText.isClock(cell));
        }

        /** {@return whether a cell says nothing about the table: it is no name, and what is below a name may be broken off, NaN or --} */
        boolean isBlank(int index) {
            return NumberText.isBlank(cell(index)) || NumberText.isNoValue(cell(index));
        }

        /** {@return whether another row has the same cells} */
        boolean isSame(SampleRow other) {
            return usedCells() == other.usedCells()
                    && IntStream.range(0, usedCells()).allMatch(index -> cell(index).strip().equals(other.cell(index).strip()));
        }

        /** {@return how many cells there are up to the last one that holds anything} */
        int usedCells() {
            int used = cells.size();
            while (used > 0 && cells.get(used - 1).isBlank()) {
                used--;
            }
            return used;
        }
    }

    static Sample of(TextSource source, Delimiter delimiter) {
        List<SampleRow> rows = new ArrayList<>();
        int[] characters = {0};
        try {
            Rows.visit(source, delimiter, row -> {
                if (rows.size() == MOST_ROWS || characters[0] > MOST_CHARACTERS) {
                    characters[0] = Integer.MAX_VALUE;
                    return false;
                }
                List<String> cells = row.copy();
                characters[0] += cells.stream().mapToInt(String::length).sum();
                return rows.add(new SampleRow(row.line(), cells, row.isQuoted()));
            });
            return new Sample(delimiter, List.copyOf(rows), characters[0] != Integer.MAX_VALUE, Optional.empty());
        } catch (InputException e) {
            return new Sample(delimiter, List.copyOf(rows), true, Optional.of(e));
        }
    }
}
