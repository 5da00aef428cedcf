package fairpull.io.table;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** One row of cells; reused from row to row, so whoever keeps a cell copies it. */
final class Row {
    private char[] text = new char[256];
    private int[] ends = new int[16];
    private int cells;
    private int line;
    private boolean quoted;

    void begin(int atLine) {
        cells = 0;
        line = atLine;
        quoted = false;
    }

    void add(char[] buffer, int offset, int length, boolean inQuotes) {
        int from = cells == 0 ? 0 : ends[cells - 1];
        if (from + length > text.length) {
            text = Arrays.copyOf(text, Math.max(text.length * 2, from + length));
        }
        if (cells == ends.length) {
            ends = Arrays.copyOf(ends, ends.length * 2);
        }
        System.arraycopy(buffer, offset, text, from, length);
        ends[cells++] = from + length;
        quoted |= inQuotes;
    }

    /** {@return the line on which the row begins, counted from 1} */
    int line() {
        return line;
    }

    int size() {
        return cells;
    }

    /** {@return whether any cell stands in quotes} */
    boolean isQuoted() {
        return quoted;
    }

    /** {@return a view of a cell, valid until the next row; nothing beyond the end of the row} */
    CharSequence cell(int index) {
        if (index >= cells) {
            return "";
        }
        int from = index == 0 ? 0 : ends[index - 1];
        return new Cell(text, from, ends[index]);
    }

    /** {@return whether the row has the cells of a row of the sample, whatever blanks and nameless cells stand round them} */
    boolean isSame(Sample.SampleRow other) {
        if (cells == 0 || !startsLike(other.cell(0))) {
            return false;
        }
        for (int i = 0; i < Math.max(cells, other.cells().size()); i++) {
            if (!cell(i).toString().strip().equals(other.cell(i).strip())) {
                return false;
            }
        }
        return true;
    }

    /** {@return whether its first cell is all that the row holds, and holds text} */
    boolean isTitle() {
        int end = cells == 0 ? 0 : ends[0];
        if (end == 0 || text[0] >= '0' && text[0] <= '9') {
            return false;
        }
        for (int i = end; i < ends[cells - 1]; i++) {
            if (text[i] > ' ') {
                return false;
            }
        }
        Cell first = new Cell(text, 0, end);
        return NumberText.evidence(first) == NumberText.Evidence.TEXT && !NumberText.isBlank(first);
    }

    private boolean startsLike(String other) {
        int length = ends[0];
        return length == 0 ? other.isBlank() : text[0] <= ' ' || !other.isEmpty() && (other.charAt(0) <= ' ' || other.charAt(0) == text[0]);
    }

    /** {@return whether no cell holds anything} */
    boolean isBlank() {
        for (int i = 0; i < (cells == 0 ? 0 : ends[cells - 1]); i++) {
            if (text[i] > ' ') {
                return false;
            }
        }
        return true;
    }

    /** {@return the cells as text of their own} */
    List<String> copy() {
        List<String> copies = new ArrayList<>(cells);
        for (int i = 0; i < cells; i++) {
            copies.add(cell(i).toString());
        }
        return copies;
    }

    /** A stretch of the row's characters. */
    private record Cell(char[] text, int from, int to) implements CharSequence {
        @Override
        public int length() {
            return to - from;
        }

        @Override
        public char charAt(int index) {
            return text[from + index];
        }

        @Override
        public CharSequence subSequence(int start, int end) {
            return new Cell(text, from + start, from + end);
        }

        @Override
        public String toString() {
            return new String(text, from, to - from);
        }
    }
}
