package fairpull.io.table;

import fairpull.domain.pull.DecimalMark;
import fairpull.domain.pull.Samples;
import fairpull.io.table.ExportColumn.TextCell;
import java.util.Arrays;
import java.util.Optional;

/** Collects the numbers of one column; a column without numbers takes no memory. */
final class ColumnCells {
    private static final double[] NONE = {};
    private static final int LONGEST_QUOTE = 40;

    private double[] numbers = NONE;
    private int filled;
    private int numberCount;
    private Optional<TextCell> firstText = Optional.empty();

    /** Takes the cell of a row, rows counted from 0 and rising. */
    void take(int row, int line, CharSequence cell, DecimalMark mark) {
        if (NumberText.isBlank(cell)) {
            return;
        }
        double number = NumberText.parse(cell, mark);
        if (!Double.isNaN(number)) {
            put(row, number);
        } else if (firstText.isEmpty()) {
            firstText = Optional.of(new TextCell(line, shortened(cell.toString().strip())));
        }
    }

    boolean isEmpty() {
        return numberCount == 0 && firstText.isEmpty();
    }

    int numberCount() {
        return numberCount;
    }

    Optional<TextCell> firstText() {
        return firstText;
    }

    /** {@return the numbers of so many rows} */
    Samples numbers(int rows) {
        double[] all = Arrays.copyOf(numbers, numberCount == 0 ? 0 : rows);
        Arrays.fill(all, Math.min(filled, all.length), all.length, Double.NaN);
        return Samples.of(all);
    }

    private void put(int row, double number) {
        if (row >= numbers.length) {
            numbers = Arrays.copyOf(numbers, Math.max(row + 1, Math.max(64, numbers.length + (numbers.length >> 1))));
        }
        Arrays.fill(numbers, filled, row, Double.NaN);
        numbers[row] = number;
        filled = row + 1;
        numberCount++;
    }

    private static String shortened(String text) {
        return text.length() <= LONGEST_QUOTE ? text : text.substring(0, LONGEST_QUOTE) + "…";
    }
}
