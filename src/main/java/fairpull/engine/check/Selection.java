package fairpull.engine.check;

import java.util.Arrays;

/**
 * The middle of numbers without sorting all of them: checks take medians of every window of every pull.
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
        int high = n - 1;
        while (low < high) {
            double pivot = values[low + high >>> 1];
            int i = low;
            int j = high;
            while (i <= j) {
                while (values[i] < pivot) {
                    i++;
                }
                while (values[j] > pivot) {
                    j--;
                }
                if (i <= j) {
                    double moved = values[i];
                    values[i++] = values[j];
                    values[j--] = moved;
                }
            }
            if (rank <= j) {
                high = j;
            } else if (rank >= i) {
                low = i;
            } else {
                break;
            }
        }
        return values[rank];
    }
}
