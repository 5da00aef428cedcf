package fairpull.engine.heat;

import fairpull.engine.stats.LinearColumns;
import java.util.Arrays;
import java.util.OptionalDouble;

/**
 * Where the search for time constants begins: given them, amplitudes and ambient follow by ordinary least squares, so a scan over a grid
 * of time constants alone sees every valley.
 *
 * @see "Golub and Pereyra (1973), The differentiation of pseudo-inverses and nonlinear least squares problems whose variables separate,
 *     SIAM J. Numer. Anal. 10, 413–432"
 */
final class StartingPoint {
    private static final int GRID = 48;
    /** Time constants from a hundredth of the log to twenty times its length are tried. */
    private static final double SHORTEST = 0.01;
    private static final double LONGEST = 20;

    private StartingPoint() {
    }

    /** {@return starting values in the order of {@link Exponentials}} */
    static double[] of(double[] timesS, double[] temperaturesK, int count, OptionalDouble ambientK) {
        double[] grid = grid(timesS[timesS.length - 1]);
        double[][] columns = new double[GRID + 1][];
        for (int g = 0; g < GRID; g++) {
            double tau = grid[g];
            columns[g] = Arrays.stream(timesS).map(t -> Math.exp(-t / tau)).toArray();
        }
        columns[GRID] = new double[timesS.length];
        Arrays.fill(columns[GRID], 1);
        double base = ambientK.orElse(temperaturesK[temperaturesK.length - 1]);
        double[] excess = Arrays.stream(temperaturesK).map(t -> t - base).toArray();
        LinearColumns linear = LinearColumns.of(columns, excess);
        int[] best = best(linear, count, ambientK.isEmpty());
        return start(grid, best, linear.coefficients(best), count, base);
    }

    private static double[] grid(double spanS) {
        double[] grid = new double[GRID];
        for (int g = 0; g < GRID; g++) {
            grid[g] = spanS * SHORTEST * Math.pow(LONGEST / SHORTEST, g / (GRID - 1.0));
        }
        return grid;
    }

    private static int[] best(LinearColumns linear, int count, boolean fitAmbient) {
        int[] best = {};
        double least = Double.POSITIVE_INFINITY;
        for (int one = 0; one < GRID; one++) {
            for (int other = count == 1 ? one : one + 1; other < (count == 1 ? one + 1 : GRID); other++) {
                int[] chosen = chosen(one, other, count, fitAmbient);
                double sum = linear.residualSumOfSquares(chosen);
                if (sum < least) {
                    least = sum;
                    best = chosen;
                }
            }
        }
        return best;
    }

    private static int[] chosen(int one, int other, int count, boolean fitAmbient) {
        int[] exponentials = count == 1 ? new int[] {one} : new int[] {one, other};
        if (!fitAmbient) {
            return exponentials;
        }
        int[] all = Arrays.copyOf(exponentials, count + 1);
        all[count] = GRID;
        return all;
    }

    private static double[] start(double[] grid, int[] chosen, double[] coefficients, int count, double base) {
        double[] start = new double[count + chosen.length];
        for (int k = 0; k < count; k++) {
            start[k] = Math.log(grid[chosen[k]]);
        }
        System.arraycopy(coefficients, 0, start, count, chosen.length);
        if (chosen.length > count) {
            start[2 * count] += base;
        }
        return start;
    }
}
