package fairpull.engine.stats;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * The chart of individual values: centre at their mean, limits at 3 sigma, sigma from the mean moving range of neighbours over
 * d2 = 1.128. Two rules mark a point: it lies beyond a limit; or it completes a run of eight on one side of the centre.
 *
 * @param centre mean of the values
 * @param sigma mean moving range / 1.128
 * @see "NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2 (moving ranges); Western Electric, Statistical Quality Control
 *     Handbook, 1956 (the rules; from memory)"
 */
public record IndividualsChart(double centre, double sigma) {
    /** Expected range of two standard normal values, 2/√π, to the digits that tables print. */
    public static final double D2 = 1.128;
    /** So many sigma off the centre stand the limits. */
    public static final double WIDTH = 3;
    /** So many points in a row on one side make a run. */
    public static final int RUN = 8;

    /**
     * The chart of some values.
     *
     * @param values in the order of time, at least two
     * @return centre and sigma
     * @throws IllegalArgumentException if there are fewer than two values
     */
    public static IndividualsChart of(double[] values) {
        if (values.length < 2) {
            throw new IllegalArgumentException("a moving range needs two values");
        }
        double ranges = 0;
        for (int k = 1; k < values.length; k++) {
            ranges += Math.abs(values[k] - values[k - 1]);
        }
        return new IndividualsChart(Sums.mean(values), ranges / (values.length - 1) / D2);
    }

    /** {@return the lower limit} */
    public double low() {
        return centre - WIDTH * sigma;
    }

    /** {@return the upper limit} */
    public double high() {
        return centre + WIDTH * sigma;
    }

    /** {@return the places of the values beyond a limit} */
    public List<Integer> beyond(double[] values) {
        List<Integer> places = new ArrayList<>();
        for (int k = 0; k < values.length; k++) {
            if (values[k] < low() || values[k] > high()) {
                places.add(k);
            }
        }
        return places;
    }

    /** {@return the place where the first run of eight on one side begins; a value on the centre breaks a run} */
    public OptionalInt firstRun(double[] values) {
        int length = 0;
        double side = 0;
        for (int k = 0; k < values.length; k++) {
            double here = Math.signum(values[k] - centre);
            length = here != 0 && here == side ? length + 1 : here == 0 ? 0 : 1;
            side = here;
            if (length == RUN) {
                return OptionalInt.of(k - RUN + 1);
            }
        }
        return OptionalInt.empty();
    }
}
