package fairpull.io.table;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * The stretches of a line in which the columns of a table stand: where at least one line has a character, between places that are blank
 * in every line.
 *
 * @param lines the lines
 * @param starts where each stretch begins, counted from 0
 * @param ends where each ends, itself not in it
 */
record Stretches(List<String> lines, List<Integer> starts, List<Integer> ends) {

    static Stretches of(List<String> lines) {
        BitSet used = new BitSet();
        for (String line : lines) {
            for (int at = 0; at < line.length(); at++) {
                if (line.charAt(at) > ' ' && line.charAt(at) != '\u00a0') {
                    used.set(at);
                }
            }
        }
        List<Integer> starts = new ArrayList<>();
        List<Integer> ends = new ArrayList<>();
        for (int from = used.nextSetBit(0); from >= 0; from = used.nextSetBit(ends.get(ends.size() - 1))) {
            starts.add(from);
            ends.add(used.nextClearBit(from));
        }
        return new Stretches(lines, List.copyOf(starts), List.copyOf(ends));
    }

    int count() {
        return starts.size();
    }

    /**
     * Where to cut, so that a wider cell further down still falls into its column: right behind a column that is followed by one set
     * flush right, right before the next one where this is set flush left, else in the middle of the gap.
     */
    int[] cuts() {
        int[] cuts = new int[Math.max(0, count() - 1)];
        for (int column = 0; column < cuts.length; column++) {
            int end = ends.get(column);
            int next = starts.get(column + 1);
            cuts[column] = isFlushRight(column + 1) ? end : isFlushLeft(column) ? next : (end + next + 1) / 2;
        }
        return cuts;
    }

    private boolean isFlushRight(int column) {
        int last = ends.get(column) - 1;
        return lines.stream().allMatch(line -> isBlank(line, column) || last < line.length() && line.charAt(last) > ' ');
    }

    private boolean isFlushLeft(int column) {
        int first = starts.get(column);
        return lines.stream().allMatch(line -> isBlank(line, column) || first < line.length() && line.charAt(first) > ' ');
    }

    private boolean isBlank(String line, int column) {
        int from = Math.min(starts.get(column), line.length());
        return line.substring(from, Math.min(ends.get(column), line.length())).isBlank();
    }
}
