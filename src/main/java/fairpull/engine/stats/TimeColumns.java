package fairpull.engine.stats;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The columns of a design that come from sessions and the clock; the judge and the planner build theirs here. */
public final class TimeColumns {
    private TimeColumns() {
    }

    /**
     * A mean for every session: beside the constant, one indicator for each session but the first.
     *
     * @param session for each pull the index of its session: 0 … number of sessions − 1
     * @return the indicators
     */
    public static List<double[]> sessions(int[] session) {
        List<double[]> columns = new ArrayList<>();
        for (int s = 1; s <= Arrays.stream(session).max().orElse(0); s++) {
            double[] column = new double[session.length];
            for (int k = 0; k < column.length; k++) {
                column[k] = session[k] == s ? 1 : 0;
            }
            columns.add(column);
        }
        return columns;
    }

    /**
     * Drift with one slope over all sessions: minutes centred within each session, then their square.
     *
     * @param session for each pull the index of its session
     * @param minutes for each pull its clock
     * @param terms 0 for none, 1 for linear, 2 for quadratic
     * @return as many columns as terms
     */
    public static List<double[]> drift(int[] session, double[] minutes, int terms) {
        List<double[]> columns = new ArrayList<>();
        if (terms > 0) {
            double[] centred = OneWay.of(session, minutes).deviations();
            columns.add(centred);
            if (terms > 1) {
                columns.add(Arrays.stream(centred).map(t -> t * t).toArray());
            }
        }
        return columns;
    }
}
