package fairpull.io.table;

import fairpull.domain.pull.Samples;
import java.util.Objects;
import java.util.Optional;

/**
 * One column of an export.
 *
 * @param index its place in the file, counted from 0
 * @param header its header cell as written; may be empty
 * @param name the header without its unit
 * @param unitText the unit as written in the header or in the line of units; empty where there is none
 * @param numbers its numbers row by row, NaN where a cell is blank, says that there is no value, or holds text; empty if it holds no
 *     number at all
 * @param numberCount how many cells hold a number
 * @param firstText the first cell that holds neither a number nor nothing
 * @param noValues how many cells of the whole file say in a word that there is no value, such as NaN or --; they count as blank
 * @param clock whether its cells are times of day, and its numbers their seconds
 */
public record ExportColumn(int index, String header, String name, String unitText, Samples numbers, int numberCount,
                           Optional<TextCell> firstText, int noValues, boolean clock) {
    /**
     * A cell that holds text.
     *
     * @param line its line in the file, counted from 1
     * @param text what it says, shortened where long
     */
    public record TextCell(int line, String text) {
    }

    public ExportColumn {
        Objects.requireNonNull(header, "header");
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(unitText, "unitText");
        Objects.requireNonNull(numbers, "numbers");
        Objects.requireNonNull(firstText, "firstText");
    }

    /** {@return whether the column holds any number} */
    public boolean isNumeric() {
        return numberCount > 0;
    }

    /** {@return what to call the column in a message: its header, or its number where it has none} */
    public String label() {
        return header.isBlank() ? String.valueOf(index + 1) : header.strip();
    }

    /** {@return the same column, its numbers being times of day or not} */
    ExportColumn clocked(boolean ofDay) {
        return new ExportColumn(index, header, name, unitText, numbers, numberCount, firstText, noValues, ofDay);
    }

    /** {@return the same column with what its cells say where they hold no number} */
    ExportColumn said(Optional<TextCell> text, int withoutValue) {
        return new ExportColumn(index, header, name, unitText, numbers, numberCount, text, withoutValue, clock);
    }

    /** {@return the same numbers under another header at another place} */
    ExportColumn as(int otherIndex, String otherHeader) {
        HeaderCell parts = HeaderCell.of(otherHeader);
        String unit = parts.unitText().isEmpty() ? unitText : parts.unitText();
        return new ExportColumn(otherIndex, otherHeader, parts.name(), unit, numbers, numberCount, firstText, noValues, clock);
    }

    /** {@return the numbers of some of its rows, the last one not among them} */
    ExportColumn rows(int from, int to) {
        return isNumeric() ? with(numbers.between(from, Math.min(to, numbers.size()))) : this;
    }

    /** {@return other numbers under the same header} */
    ExportColumn with(Samples others) {
        int count = (int) others.stream().filter(number -> !Double.isNaN(number)).count();
        return new ExportColumn(index, header, name, unitText, count == 0 ? Samples.of() : others, count, firstText, noValues, clock);
    }
}
