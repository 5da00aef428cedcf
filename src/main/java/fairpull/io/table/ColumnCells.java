package fairpull.io.table;

import fairpull.domain.pull.DecimalMark;
import fairpull.domain.pull.Samples;
import fairpull.io.table.ExportColumn.TextCell;
import java.util.Arrays;
import java.util.Optional;

/** Collects the numbers of one column, of every row or of every so-manieth; a column without numbers takes no memory. */
final class ColumnCells {
    private static final double[] NONE = {};
    private static final int LONGEST_QUOTE = 40;

    private double[] numbers = NONE;
    private int filled;
    private int numberCount;
    private int noValues;
    private Optional<TextCell> firstText = Optional.empty();
    private boolean mayBeClock;
    private boolean clock;
    private final RunningClock running = new RunningClock();

    /** Lets times of day count as numbers, in seconds. */
    void allowClock() {
        mayBeClock = true;
    }

    /**
     * Takes the cell of a row.
     *
     * @param row counted from 0 among the rows whose numbers are kept, and rising; below 0 for a row that is only looked at
     * @return the number, NaN where there is none
     */
    double take(int row, int line, CharSequence cell, DecimalMark mark) {
        double number = clock ? Double.NaN : NumberText.parse(cell, mark);
        if (!Double.isNaN(number)) {
            put(row, number);
            return number;
        }
        return NumberText.isBlank(cell) ? Double.NaN : takeText(row, line, cell);
    }

    private double takeText(int row, int line, CharSequence cell) {
        double seconds = mayBeClock && (clock || numberCount == 0) ? ClockText.seconds(cell) : Double.NaN;
        if (!Double.isNaN(seconds)) {
            clock = true;
            double total = running.at(seconds);
            put(row, total);
            return total;
        }
        if (NumberText.isNoValue(cell)) {
            noValues++;
        } else if (firstText.isEmpty()) {
            firstText = Optional.of(new TextCell(line, shortened(cell.toString().strip())));
        }
        return Double.NaN;
    }

    boolean isEmpty() {
        return numberCount == 0 && firstText.isEmpty();
    }

    int numberCount() {
        return numberCount;
    }

    /** {@return how many cells say that there is no value; they count as blank} */
    int noValues() {
        return noValues;
    }

    boolean isClock() {
        return clock;
    }

    Optional<TextCell> firstText() {
        return firstText;
    }

    /** {@return the numbers of so many kept rows} */
    Samples numbers(int rows) {
        if (numberCount == 0) {
            return Samples.of();
        }
        if (rows > numbers.length) {
            numbers = Arrays.copyOf(numbers, rows);
        }
        if (filled < rows) {
            Arrays.fill(numbers, filled, rows, Double.NaN);
        }
        return Samples.of(numbers, rows);
    }

    /** Keeps every second row of those kept so far. */
    void thin() {
        int kept = 0;
        for (int row = 0; row < filled; row += 2) {
            numbers[kept++] = numbers[row];
        }
        filled = kept;
    }

    private void put(int row, double number) {
        numberCount++;
        if (row < 0) {
            return;
        }
        if (row >= numbers.length) {
            numbers = Arrays.copyOf(numbers, Math.max(row + 1, Math.max(64, numbers.length + (numbers.length >> 1))));
        }
        if (filled < row) {
            Arrays.fill(numbers, filled, row, Double.NaN);
        }
        numbers[row] = number;
        filled = row + 1;
    }

    /** {@return a text short enough to be quoted} */
    static String shortened(String text) {
        return text.length() <= LONGEST_QUOTE ? text : text.substring(0, LONGEST_QUOTE) + "…";
    }
}
