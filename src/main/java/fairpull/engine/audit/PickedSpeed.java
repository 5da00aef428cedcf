package fairpull.engine.audit;

import fairpull.engine.stats.Normal;
import fairpull.engine.stats.Roots;

/**
 * The largest of the differences along a sweep: the value that it passes by chance in 5 % of unchanged pairs, in standard errors of one
 * speed. Differences at speeds δ apart are taken to be normal, correlated by exp(−δ²/(2·ℓ²)), ℓ the correlation length. Along a sweep of
 * length T they cross a value c upwards T/(2πℓ)·exp(−c²/2) times on average (Rice), so that
 * P(max |Z| &gt; c) ≤ 2·(1 − Φ(c)) + T/(πℓ)·exp(−c²/2), which is near to it for c beyond 2 (Davies). The answer is the c that makes
 * this 5 %: it takes no simulation and no grid, errs to the side of asking for more, and is that of one speed for a sweep of no length.
 *
 * <p>Checked against: the largest of correlated normal values on a grid ({@link fairpull.engine.stats.MaximumT}, PickedSpeedTest).
 *
 * @see "Rice (1945), Mathematical analysis of random noise, Bell System Technical Journal 24, 46–156"
 * @see "Davies (1987), Hypothesis testing when a nuisance parameter is present only under the alternative, Biometrika 74, 33–43"
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

    private static final double ERROR_RATE = 0.05;
    /** Passed more often than that by a single speed already. */
    private static final double LEAST = 1;

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
        double crossings = sweep / (Math.PI * correlationLength);
        if (!(sweep >= 0 && correlationLength > 0 && crossings < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("no sweep of " + sweep + " with a correlation length of " + correlationLength);
        }
        double most = Math.sqrt(2 * Math.log((1 + crossings) / ERROR_RATE));
        return Roots.between(c -> 2 * Normal.upperTail(c) + crossings * Math.exp(-c * c / 2) - ERROR_RATE, LEAST, most);
    }
}
