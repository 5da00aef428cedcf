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
 * @param beside whether another colour lies right above or below, so that the line may be partly hidden
 */
record Run(int top, int bottom, double mass, double centre, boolean beside) {
    /** A pixel belongs to a line from this share on; fainter ones only at its edge. */
    private static final double BELONGS = 0.25;

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
        for (int place = top - 1; place <= bottom; place++) {
            double share = ink.share(column, place);
            mass += share;
            moment += share * (place + 0.5);
        }
        boolean beside = ink.isCovered(column, top - 1) || ink.isCovered(column, top - 2) || ink.isCovered(column, bottom)
                || ink.isCovered(column, bottom + 1);
        return new Run(top, bottom, mass, moment / mass, beside);
    }
}
