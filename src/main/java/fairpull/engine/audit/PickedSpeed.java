package fairpull.engine.audit;

import fairpull.engine.stats.MaximumT;
import java.util.ArrayList;
import java.util.List;

/**
 * The largest of the differences along a sweep: the value that it passes by chance in 5 % of unchanged pairs, in standard errors of one
 * speed. Differences at speeds δ apart are taken to be correlated by exp(−δ²/(2·ℓ²)), ℓ the correlation length; the cosine between
 * Gaussian bumps of exp(−x²/ℓ²) is exactly that.
 */
public final class PickedSpeed {
    /**
     * How far along the sweep differences hang together at the least: 100 rpm, as if hardly smoothed; common practice, no source. A length
     * of 400 rpm, usual for smoothed curves, asks for 2.9 in place of 3.3 standard errors; unchanged cars whose curves are rougher than
     * that then pass in up to 15 % of publications at the high end of scatter (GradingSharesTest has the shares at this length).
     */
    public static final double CORRELATION_LENGTH_RPM = 100;
    /** How long a sweep is taken to be where nothing is disclosed: 4000 rpm; common practice, no source. */
    public static final double SWEEP_RPM = 4000;
    /** No engine sweeps through more; longer ones are reckoned as this. */
    public static final double LONGEST_RPM = 20_000;

    private static final MaximumT.Scatter KNOWN = new MaximumT.Scatter(Double.POSITIVE_INFINITY, 0);
    private static final double ERROR_RATE = 0.05;
    private static final int DRAWS = 4000;
    private static final long SEED = 1953;
    private static final int PER_LENGTH = 4;
    private static final double REACH = 3;

    private PickedSpeed() {
    }

    /**
     * The critical value.
     *
     * @param sweep from the lowest to the highest speed, 0 or more
     * @param correlationLength ℓ, above 0, in the same unit
     * @return two-sided, 5 %; that of one speed for a sweep of 0
     * @throws IllegalArgumentException if an argument is out of its range
     */
    public static double criticalValue(double sweep, double correlationLength) {
        if (!(sweep >= 0 && correlationLength > 0 && sweep / correlationLength < 1000)) {
            throw new IllegalArgumentException("no sweep of " + sweep + " with a correlation length of " + correlationLength);
        }
        int speeds = 1 + (int) Math.ceil(PER_LENGTH * sweep / correlationLength);
        int margin = (int) (REACH * PER_LENGTH);
        List<double[]> bumps = new ArrayList<>();
        for (int speed = 0; speed < speeds; speed++) {
            double[] bump = new double[speeds + 2 * margin];
            for (int k = 0; k < bump.length; k++) {
                double apart = (double) (k - margin - speed) / PER_LENGTH;
                bump[k] = Math.exp(-apart * apart);
            }
            bumps.add(bump);
        }
        MaximumT maximum = MaximumT.of(bumps);
        return maximum.criticalValue(maximum.draw(SEED, DRAWS, KNOWN, true), KNOWN, ERROR_RATE, true);
    }
}
