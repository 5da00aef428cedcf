package fairpull.engine.curve;

import java.util.Arrays;

/**
 * Local linear fits to a curve: at each speed x the value there of the straight line that minimises Σ K((xᵢ − x)/h)·(yᵢ − a − b·(xᵢ − x))²,
 * with the kernel of Epanechnikov, K(u) = ¾·(1 − u²) for |u| &lt; 1, so that the window reaches h to either side. A window that holds
 * fewer than {@value #FEWEST} speeds gives no fit of its own: there the neighbours are joined by a straight line. Nothing is said outside
 * the speeds of the curve.
 *
 * <p>Checked against: lm with weights in R (computed/local-linear-r).
 *
 * @see "Fan and Gijbels (1996), Local Polynomial Modelling and Its Applications, Chapman and Hall, section 3.1"
 */
final class LocalLinear {
    static final int FEWEST = 3;

    private final double[] speeds;
    private final double[] values;
    private final double bandwidth;

    /** Fits to values at rising, distinct speeds. */
    LocalLinear(double[] speeds, double[] values, double bandwidthRadPerS) {
        if (!(bandwidthRadPerS > 0)) {
            throw new IllegalArgumentException("a bandwidth must be above 0, was " + bandwidthRadPerS);
        }
        this.speeds = speeds;
        this.values = values;
        this.bandwidth = bandwidthRadPerS;
    }

    /** {@return the value at a speed; NaN outside the speeds of the curve} */
    double at(double speed) {
        if (!(speed >= speeds[0] && speed <= speeds[speeds.length - 1])) {
            return Double.NaN;
        }
        return isInterpolated(speed) ? joined(speed) : fitted(speed);
    }

    /** {@return whether too few speeds lie within the window of a speed} */
    boolean isInterpolated(double speed) {
        return end(speed) - begin(speed) < FEWEST;
    }

    /** The first place within the window; its border, where the weight is 0, lies outside. */
    private int begin(double speed) {
        int place = Arrays.binarySearch(speeds, speed - bandwidth);
        return place >= 0 ? place + 1 : -place - 1;
    }

    private int end(double speed) {
        int place = Arrays.binarySearch(speeds, speed + bandwidth);
        return place >= 0 ? place : -place - 1;
    }

    private double joined(double speed) {
        int place = Arrays.binarySearch(speeds, speed);
        if (place >= 0) {
            return values[place];
        }
        int above = -place - 1;
        double share = (speed - speeds[above - 1]) / (speeds[above] - speeds[above - 1]);
        return values[above - 1] + share * (values[above] - values[above - 1]);
    }

    /** The line goes through the weighted means; sums are taken about them, where they keep their digits. */
    private double fitted(double speed) {
        int begin = begin(speed);
        int end = end(speed);
        double weights = 0;
        double meanDistance = 0;
        double meanValue = 0;
        for (int i = begin; i < end; i++) {
            double u = (speeds[i] - speed) / bandwidth;
            double weight = 1 - u * u;
            weights += weight;
            meanDistance += weight * u;
            meanValue += weight * (values[i] - values[begin]);
        }
        meanDistance /= weights;
        meanValue /= weights;
        double squares = 0;
        double products = 0;
        for (int i = begin; i < end; i++) {
            double u = (speeds[i] - speed) / bandwidth;
            double weight = 1 - u * u;
            squares += weight * (u - meanDistance) * (u - meanDistance);
            products += weight * (u - meanDistance) * (values[i] - values[begin] - meanValue);
        }
        return values[begin] + meanValue - meanDistance * products / squares;
    }
}
