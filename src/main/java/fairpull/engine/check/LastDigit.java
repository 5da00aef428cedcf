package fairpull.engine.check;

import fairpull.domain.pull.Samples;

/** With how many decimals numbers were written, told from the numbers. */
public final class LastDigit {
    private static final int MOST_DECIMALS = 9;

    private LastDigit() {
    }

    /**
     * One unit of the last digit.
     *
     * @param readings in the unit in which they were written
     * @return 1, 0.1, 0.01 … down to 10⁻⁹, the largest of which all finite readings are multiples
     */
    public static double of(Samples readings) {
        double digit = 1;
        for (int decimals = 0; decimals < MOST_DECIMALS; decimals++) {
            double scale = Math.pow(10, decimals);
            digit = 1 / scale;
            if (areWhole(readings, scale)) {
                return digit;
            }
        }
        return digit;
    }

    private static boolean areWhole(Samples readings, double scale) {
        for (int row = 0; row < readings.size(); row++) {
            if (Double.isFinite(readings.at(row)) && !isWhole(readings.at(row) * scale)) {
                return false;
            }
        }
        return true;
    }

    /** Readings went through SI: a whole number comes back with the noise of the last bits. */
    private static boolean isWhole(double value) {
        return Math.abs(value - Math.rint(value)) <= 1e-9 * Math.max(1, Math.abs(value));
    }
}
