package fairpull.engine.stats;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Values of pulls within installs within sessions, reduced to what a nested model needs: size and mean of every install, and the sum of
 * squares within installs. Means are held as deviations from a value of the data, so that a large common offset costs no digits.
 */
public final class NestedSums {
    private final int[][] pulls;
    private final double[][] means;
    private final double origin;
    private final double withinSquares;
    private final int installs;
    private final int values;

    private NestedSums(int[][] pulls, double[][] means, double origin, OneWay split) {
        this.pulls = pulls;
        this.means = means;
        this.origin = origin;
        this.withinSquares = split.withinSumOfSquares();
        this.installs = split.sizes().length;
        this.values = Arrays.stream(split.sizes()).sum();
    }

    /**
     * Reduces a table.
     *
     * @param session for each value the index of its session: 0 … number of sessions − 1, each with at least one value
     * @param install for each value the index of its install, unique over all sessions: 0 … number of installs − 1, each with at least one
     * @param values the values
     * @return the sums
     * @throws IllegalArgumentException if an install lies in two sessions
     */
    public static NestedSums of(int[] session, int[] install, double[] values) {
        double origin = values[0];
        OneWay split = OneWay.of(install, Arrays.stream(values).map(value -> value - origin).toArray());
        int[] sessionOf = sessionOfInstalls(session, install, split.sizes().length);
        int sessions = Arrays.stream(sessionOf).max().orElseThrow() + 1;
        int[][] pulls = new int[sessions][];
        double[][] means = new double[sessions][];
        for (int s = 0; s < sessions; s++) {
            int wanted = s;
            int[] members = IntStream.range(0, sessionOf.length).filter(i -> sessionOf[i] == wanted).toArray();
            pulls[s] = Arrays.stream(members).map(i -> split.sizes()[i]).toArray();
            means[s] = Arrays.stream(members).mapToDouble(i -> split.means()[i]).toArray();
        }
        return new NestedSums(pulls, means, origin, split);
    }

    private static int[] sessionOfInstalls(int[] session, int[] install, int installs) {
        int[] sessionOf = new int[installs];
        Arrays.fill(sessionOf, -1);
        for (int k = 0; k < install.length; k++) {
            if (sessionOf[install[k]] >= 0 && sessionOf[install[k]] != session[k]) {
                throw new IllegalArgumentException("install " + install[k] + " lies in two sessions");
            }
            sessionOf[install[k]] = session[k];
        }
        return sessionOf;
    }

    /** {@return whether pulls are repeated within an install, so that pull scatter shows apart} */
    public boolean repeatsPulls() {
        return values > installs;
    }

    /** {@return whether installs are repeated within a session, so that refit scatter shows apart from the day} */
    public boolean repeatsInstalls() {
        return installs > pulls.length;
    }

    /** {@return whether there are several sessions} */
    public boolean repeatsSessions() {
        return pulls.length > 1;
    }

    /** {@return Σ (value − mean of its install)²} */
    public double withinSquares() {
        return withinSquares;
    }

    /** {@return the number of values} */
    public int values() {
        return values;
    }

    /** {@return the number of installs} */
    public int installs() {
        return installs;
    }

    /** {@return the number of sessions} */
    public int sessions() {
        return pulls.length;
    }

    double origin() {
        return origin;
    }

    int[] pullsOf(int session) {
        return pulls[session];
    }

    /** Means of the installs of a session, less {@link #origin()}. */
    double[] meansOf(int session) {
        return means[session];
    }
}
