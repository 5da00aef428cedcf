package fairpull.engine.stats;

import java.util.SplittableRandom;

/**
 * Random deviates from a seed: the same seed gives the same row of deviates, whatever the version of the JDK. Not to be shared between
 * threads.
 */
public final class Deviates {
    private final SplittableRandom random;
    private double kept = Double.NaN;

    /** Starts a row of deviates. */
    public Deviates(long seed) {
        random = new SplittableRandom(seed);
    }

    /** {@return a deviate uniform in [0, 1)} */
    public double uniform() {
        return random.nextDouble();
    }

    /**
     * A standard normal deviate, by the polar method.
     *
     * @return the deviate
     * @see "Marsaglia and Bray (1964), SIAM Review 6, 260–264"
     */
    public double normal() {
        double ready = kept;
        if (ready == ready) {
            kept = Double.NaN;
            return ready;
        }
        double x;
        double y;
        double s;
        do {
            x = 2 * random.nextDouble() - 1;
            y = 2 * random.nextDouble() - 1;
            s = x * x + y * y;
        } while (s >= 1 || s == 0);
        double scale = Math.sqrt(-2 * Math.log(s) / s);
        kept = y * scale;
        return x * scale;
    }

    /**
     * A χ² deviate: twice a gamma deviate of shape ν/2; for shapes below 1 one of shape + 1 times U^(1/shape).
     *
     * @param degreesOfFreedom ν, above 0 and finite
     * @return the deviate
     * @see "Marsaglia and Tsang (2000), ACM Transactions on Mathematical Software 26, 363–372"
     */
    public double chiSquare(double degreesOfFreedom) {
        double shape = degreesOfFreedom / 2;
        double lift = shape < 1 ? Math.pow(1 - uniform(), 1 / shape) : 1;
        double d = (shape < 1 ? shape + 1 : shape) - 1.0 / 3;
        double c = 1 / Math.sqrt(9 * d);
        while (true) {
            double x = normal();
            double v = 1 + c * x;
            if (v > 0) {
                v = v * v * v;
                if (Math.log(1 - uniform()) < 0.5 * x * x + d * (1 - v + Math.log(v))) {
                    return 2 * d * v * lift;
                }
            }
        }
    }
}
