package fairpull.engine.stats;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Outliers of a sample that is normal but for them, at most a given number.
 *
 * @see "Rosner (1983), Percentage points for a generalized ESD many-outlier procedure, Technometrics 25, 165–172"
 */
public final class ExtremeStudentizedDeviate {
    private ExtremeStudentizedDeviate() {
    }

    /**
     * The outliers. R_i is the largest |x − x̄|/s among what is left once i − 1 values are taken away, held against
     * λ_i = (n−i)·t / √((n−i−1+t²)(n−i+1)), t the quantile 1 − α/(2(n−i+1)) at n − i − 1 degrees of freedom; the number of outliers is
     * the largest i with R_i > λ_i.
     *
     * @param values the sample
     * @param atMost how many outliers are looked for
     * @param alpha chance of naming any where there are none
     * @return indices of the outliers, furthest first
     */
    public static List<Integer> outliers(double[] values, int atMost, double alpha) {
        List<Integer> removed = new ArrayList<>();
        boolean[] gone = new boolean[values.length];
        int outliers = 0;
        for (int i = 1; i <= atMost && values.length - i - 1 >= 1; i++) {
            double[] meanAndDeviation = describe(values, gone);
            int furthest = furthest(values, gone, meanAndDeviation[0]);
            double r = Math.abs(values[furthest] - meanAndDeviation[0]) / meanAndDeviation[1];
            gone[furthest] = true;
            removed.add(furthest);
            if (r > criticalValue(values.length, i, alpha)) {
                outliers = i;
            }
        }
        return List.copyOf(removed.subList(0, outliers));
    }

    /**
     * λ_i.
     *
     * @param size number of values n
     * @param i which step, from 1
     * @param alpha chance of naming any outlier where there are none
     * @return the critical value
     */
    public static double criticalValue(int size, int i, double alpha) {
        int left = size - i;
        double t = StudentT.upperQuantile(alpha / (2.0 * (left + 1)), left - 1.0);
        return left * t / Math.sqrt((left - 1 + t * t) * (left + 1));
    }

    private static double[] describe(double[] values, boolean[] gone) {
        double[] left = new double[values.length];
        int count = 0;
        for (int k = 0; k < values.length; k++) {
            if (!gone[k]) {
                left[count++] = values[k];
            }
        }
        double mean = Sums.mean(Arrays.copyOf(left, count));
        double squares = 0;
        for (int k = 0; k < count; k++) {
            squares += (left[k] - mean) * (left[k] - mean);
        }
        return new double[] {mean, Math.sqrt(squares / (count - 1))};
    }

    private static int furthest(double[] values, boolean[] gone, double mean) {
        int furthest = -1;
        for (int k = 0; k < values.length; k++) {
            if (!gone[k] && (furthest < 0 || Math.abs(values[k] - mean) > Math.abs(values[furthest] - mean))) {
                furthest = k;
            }
        }
        return furthest;
    }
}
