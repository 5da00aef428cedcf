package fairpull.io.table;

import fairpull.io.table.Sample.SampleRow;
import java.util.List;
import java.util.Optional;

/**
 * Finds the header of a table by evidence: the first row of names under which the most columns hold numbers. What stands before it is a
 * preamble, a row of units may follow it.
 */
final class HeaderFinder {
    /** So many rows under a header speak for it. */
    private static final int ROWS_BELOW = 20;
    /** A column holds numbers if this share of its cells does, or all cells but one: a short table has its bad cell too. */
    private static final double NUMERIC_SHARE = 0.8;

    private HeaderFinder() {
    }

    /**
     * A header with what speaks for it.
     *
     * @param row its place in the sample, counted from 0
     * @param unitRow whether the next row holds units
     * @param numericColumns how many named columns hold numbers
     * @param fit the share of the rows below that hold no more cells than the header, and of their cells that hold numbers: 0 … 1
     */
    record Header(int row, boolean unitRow, int numericColumns, double fit) {
        int firstDataRow() {
            return row + (unitRow ? 2 : 1);
        }

        double weight() {
            return numericColumns * fit;
        }
    }

    /** {@return the best header among the rows of a sample, if any row can be one} */
    static Optional<Header> find(Sample sample) {
        Optional<Header> best = Optional.empty();
        for (int row = 0; row < sample.rows().size() - 1; row++) {
            Optional<Header> candidate = at(sample.rows(), row);
            if (candidate.isPresent() && (best.isEmpty()
                    || candidate.get().weight() > best.get().weight() && !isAgain(sample, best, row))) {
                best = candidate;
            }
        }
        return best;
    }

    private static Optional<Header> at(List<SampleRow> rows, int row) {
        SampleRow names = rows.get(row);
        if (!isNames(names)) {
            return Optional.empty();
        }
        boolean unitRow = row + 2 < rows.size() && isUnits(rows.get(row + 1), rows.get(row + 2));
        int from = row + (unitRow ? 2 : 1);
        if (from >= rows.size() || !hasNumber(rows.get(from))) {
            return Optional.empty();
        }
        List<SampleRow> below = upToNextHeader(rows.subList(from, Math.min(rows.size(), from + ROWS_BELOW)), names);
        if (below.isEmpty()) {
            return Optional.empty();
        }
        int numeric = 0;
        for (int column = 0; column < names.usedCells(); column++) {
            boolean named = !names.isBlank(column) && !names.isNumber(column);
            numeric += named && isNumeric(below, column) ? 1 : 0;
        }
        return numeric == 0 ? Optional.empty() : Optional.of(new Header(row, unitRow, numeric, fit(names, below)));
    }

    /** A header that stands again before each pull is the same one. */
    private static boolean isAgain(Sample sample, Optional<Header> best, int row) {
        return sample.rows().get(row).isSame(sample.rows().get(best.get().row()));
    }

    /** The title of the next pull stands above its header and speaks against none. */
    private static List<SampleRow> upToNextHeader(List<SampleRow> below, SampleRow names) {
        int next = 0;
        while (next < below.size() && !below.get(next).isSame(names)) {
            next++;
        }
        int end = next;
        while (next < below.size() && end > 1 && below.get(end - 1).usedCells() == 1 && !below.get(end - 1).isNumber(0)) {
            end--;
        }
        return below.subList(0, end);
    }

    private static boolean isNames(SampleRow row) {
        int numbers = 0;
        int names = 0;
        for (int column = 0; column < row.usedCells(); column++) {
            if (row.isNumber(column)) {
                numbers++;
            } else if (!row.isBlank(column)) {
                names++;
            }
        }
        return names > numbers;
    }

    /** A row of units has no number above a number: a lone letter may be the symbol of a unit and a name of the data's own. */
    private static boolean isUnits(SampleRow row, SampleRow below) {
        for (int column = 0; column < row.usedCells(); column++) {
            if (row.isNumber(column) && below.isNumber(column)) {
                return false;
            }
        }
        return hasNumber(below) && holdsUnits(row);
    }

    private static boolean holdsUnits(SampleRow row) {
        int units = 0;
        int others = 0;
        for (int column = 0; column < row.usedCells(); column++) {
            String cell = row.cell(column).strip();
            if (!cell.isEmpty() && !cell.equals("-")) {
                boolean unit = !row.isNumber(column) && (UnitText.find(HeaderCell.unitOf(cell)).isPresent() || isBracketed(cell));
                units += unit ? 1 : 0;
                others += unit ? 0 : 1;
            }
        }
        return units > others;
    }

    private static boolean isBracketed(String cell) {
        return cell.length() >= 2 && "([{".indexOf(cell.charAt(0)) >= 0 && ")]}".indexOf(cell.charAt(cell.length() - 1)) >= 0;
    }

    private static boolean hasNumber(SampleRow row) {
        for (int column = 0; column < row.cells().size(); column++) {
            if (row.isNumber(column)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isNumeric(List<SampleRow> below, int column) {
        int numbers = 0;
        int texts = 0;
        for (SampleRow row : below) {
            if (row.isNumber(column)) {
                numbers++;
            } else if (!row.isBlank(column)) {
                texts++;
            }
        }
        boolean startsWithText = !below.get(0).isNumber(column) && !below.get(0).isBlank(column);
        return numbers > 0 && (texts <= 1 || !startsWithText && numbers >= NUMERIC_SHARE * (numbers + texts));
    }

    private static double fit(SampleRow names, List<SampleRow> below) {
        int within = 0;
        int numbers = 0;
        int filled = 0;
        for (SampleRow row : below) {
            within += row.usedCells() <= names.cells().size() ? 1 : 0;
            for (int column = 0; column < row.usedCells(); column++) {
                filled += row.isBlank(column) ? 0 : 1;
                numbers += row.isNumber(column) ? 1 : 0;
            }
        }
        return (double) within / below.size() * numbers / Math.max(1, filled);
    }
}
