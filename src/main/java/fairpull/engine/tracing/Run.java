package fairpull.engine.tracing;

import java.util.ArrayList;
import java.util.List;

/**
 * Pixels of a line's colour that touch each other in one column.
 *
 * @param top the first row
 * @param bottom the row behind the last one
 * @param mass the shares of the line's colour, summed: the line's extent down the column in pixels
 * @param centre their centroid, in pixels from the upper edge: the middle of the line to a fraction of a pixel
 * @param strongest the largest share
 * @param above how the run ends above
 * @param below how it ends below
 */
record Run(int top, int bottom, double mass, double centre, double strongest, Edge above, Edge below) {
    /** A pixel belongs to a line from this share on; fainter ones only at its edge. */
    private static final double BELONGS = 0.3;
    private static final double FULL = 0.9;
    private static final int DEEPEST_EDGE = 3;

    /**
     * An end of a run.
     *
     * @param row where the line ends, to a fraction of a pixel
     * @param covered whether another colour lies right beyond it, so that the line may go on beneath
     */
    record Edge(double row, boolean covered) {
    }

    boolean isBesideAnother() {
        return above.covered() || below.covered();
    }

    /** {@return the middle of a line of such an extent, of which another colour hides one edge; NaN where it hides both or none} */
    double centreFromFreeEdge(double extent) {
        if (above.covered() == below.covered()) {
            return Double.NaN;
        }
        return above.covered() ? below.row() - extent / 2 : above.row() + extent / 2;
    }

    int height() {
        return bottom - top;
    }

    /** {@return whether it reaches into rows, with so much to spare} */
    boolean reaches(double fromRow, double toRow, double spare) {
        return top <= toRow + spare && bottom >= fromRow - spare;
    }

    boolean touches(Run other) {
        return reaches(other.top, other.bottom, 0);
    }

    /** {@return the runs of a column that reach into some rows, whole, from the top} */
    static List<Run> within(Ink ink, int column, int fromRow, int toRow) {
        List<Run> runs = new ArrayList<>();
        int last = Math.min(ink.picture().height(), toRow);
        for (int row = Math.max(0, fromRow); row < last; row++) {
            if (ink.share(column, row) >= BELONGS) {
                Run run = around(ink, column, row);
                runs.add(run);
                row = run.bottom();
            }
        }
        return runs;
    }

    private static Run around(Ink ink, int column, int row) {
        int top = row;
        while (ink.share(column, top - 1) >= BELONGS) {
            top--;
        }
        int bottom = row + 1;
        while (ink.share(column, bottom) >= BELONGS) {
            bottom++;
        }
        double mass = 0;
        double moment = 0;
        double strongest = 0;
        for (int place = top - 1; place <= bottom; place++) {
            double share = ink.share(column, place);
            mass += share;
            moment += share * (place + 0.5);
            strongest = Math.max(strongest, share);
        }
        Edge above = new Edge(edge(ink, column, top - 1, bottom), isCovered(ink, column, top, -1));
        Edge below = new Edge(edge(ink, column, bottom, top - 1), isCovered(ink, column, bottom - 1, 1));
        return new Run(top, bottom, mass, moment / mass, strongest, above, below);
    }

    /** The pixels at an edge hold the line up to their share; behind the first full one it has begun, at the latest at the other end. */
    private static double edge(Ink ink, int column, int from, int end) {
        int inwards = from < end ? 1 : -1;
        double partly = 0;
        int row = from;
        while (row != end && ink.share(column, row) < FULL && Math.abs(row - from) < DEEPEST_EDGE) {
            partly += ink.share(column, row);
            row += inwards;
        }
        return inwards > 0 ? row - partly : row + 1 + partly;
    }

    private static boolean isCovered(Ink ink, int column, int last, int outwards) {
        return ink.isCovered(column, last + outwards) || ink.isCovered(column, last + 2 * outwards);
    }
}
