package fairpull.engine.check;

import java.util.Arrays;

/**
 * The middle of numbers without sorting all of them: checks take medians of every window of every pull. Parted as by Lomuto, in one
 * direction and without a branch: numbers of a noisy channel cannot be foretold, and Hoare's two directions wait for each.
 *
 * @see "Hoare (1961), Algorithm 65: Find, Communications of the ACM 4 (7)"
 */
final class Selection {
    private Selection() {
    }

    /** {@return the median of the first so many numbers; NaN of nothing} They are put into another order. */
    static double median(double[] values, int n) {
        if (n == 0) {
            return Double.NaN;
        }
        if (hasGap(values, n)) {
            Arrays.sort(values, 0, n);
            return (values[(n - 1) / 2] + values[n / 2]) / 2;
        }
        double upper = select(values, n, n / 2);
        if (n % 2 == 1) {
            return upper;
        }
        double lower = values[0];
        for (int i = 1; i < n / 2; i++) {
            lower = Math.max(lower, values[i]);
        }
        return (lower + upper) / 2;
    }

    private static boolean hasGap(double[] values, int n) {
        for (int i = 0; i < n; i++) {
            if (Double.isNaN(values[i])) {
                return true;
            }
        }
        return false;
    }

    /** Brings the number of a rank to its place, none above it before and none below it behind. */
    private static double select(double[] values, int n, int rank) {
        int low = 0;
        int high = n;
        while (high - low > 1) {
            double pivot = values[low + high >>> 1];
            int middle = belowFirst(values, low, high, pivot);
            if (middle == low) {
                middle = equalFirst(values, low, high, pivot);
                if (rank < middle) {
                    return pivot;
                }
            }
            if (rank < middle) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return values[rank];
    }

    /** {@return how far the numbers below a pivot now reach} Every number is moved, so that none of noise's coin tosses becomes a jump. */
    private static int belowFirst(double[] values, int low, int high, double pivot) {
        int middle = low;
        for (int i = low; i < high; i++) {
            double value = values[i];
            values[i] = values[middle];
            values[middle] = value;
            middle += value < pivot ? 1 : 0;
        }
        return middle;
    }

    private static int equalFirst(double[] values, int low, int high, double pivot) {
        int middle = low;
        for (int i = low; i < high; i++) {
            double value = values[i];
            values[i] = values[middle];
            values[middle] = value;
            middle += value == pivot ? 1 : 0;
        }
        return middle;
    }
}
