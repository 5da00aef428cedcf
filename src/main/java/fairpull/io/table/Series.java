package fairpull.io.table;

import java.util.Arrays;

/** The numbers of one channel, each with its own time, rising. */
final class Series {
    private double[] times = new double[64];
    private double[] values = new double[64];
    private int count;
    private int mostKept = Integer.MAX_VALUE;
    private int stride = 1;
    private long seen;
    private double last = Double.NEGATIVE_INFINITY;
    private boolean falling;
    private int repeated;

    /** A series that lets go of every second number whenever it has so many. */
    static Series keeping(int most) {
        Series series = new Series();
        series.mostKept = most;
        return series;
    }

    /** Takes a number; of several at one time the first counts. */
    void add(double time, double value) {
        falling |= time < last;
        if (time == last) {
            repeated++;
            return;
        }
        last = time;
        if (seen++ % stride != 0) {
            return;
        }
        if (count == times.length) {
            times = Arrays.copyOf(times, count + (count >> 1));
            values = Arrays.copyOf(values, times.length);
        }
        times[count] = time;
        values[count++] = value;
        if (count >= mostKept) {
            thin();
        }
    }

    private void thin() {
        for (int i = 0; 2 * i < count; i++) {
            times[i] = times[2 * i];
            values[i] = values[2 * i];
        }
        count = (count + 1) / 2;
        stride *= 2;
    }

    int size() {
        return count;
    }

    /** {@return whether a time is earlier than the one before it} */
    boolean isFalling() {
        return falling;
    }

    /** {@return how many numbers had the time of the one before and were let go} */
    int repeated() {
        return repeated;
    }

    /** {@return whether every number was kept} */
    boolean isWhole() {
        return stride == 1;
    }

    double[] times() {
        return Arrays.copyOf(times, count);
    }

    /** {@return the values at other times, rising: on straight lines between its own, NaN before the first and after the last of these} */
    double[] at(double[] others) {
        double[] read = new double[others.length];
        int before = 0;
        for (int i = 0; i < others.length; i++) {
            while (before < count - 1 && times[before + 1] <= others[i]) {
                before++;
            }
            read[i] = at(others[i], before);
        }
        return read;
    }

    private double at(double time, int before) {
        if (count == 0 || time < times[0] || time > times[count - 1]) {
            return Double.NaN;
        }
        if (time == times[before]) {
            return values[before];
        }
        double share = (time - times[before]) / (times[before + 1] - times[before]);
        return values[before] + share * (values[before + 1] - values[before]);
    }
}
