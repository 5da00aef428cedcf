package fairpull.engine.audit;

import fairpull.domain.audit.Assumed;
import fairpull.domain.audit.Quote;
import fairpull.domain.finding.Interval;
import fairpull.engine.stats.DifferenceOfMaxima;
import fairpull.engine.stats.Normal;

/**
 * A published difference d at level L under what is assumed of it. Without any change D = L·s_p·(max over the pulls after − max over those
 * before, where a figure is the best of several) + N(0, σ²), with σ² = L²·(Σ s_p²/n over figures that are no maximum + 2·s_r² where
 * refitted + 2·s_day² on another day) + rounding of both figures, h²/3 each for half a last digit h.
 *
 * <p>The interval is d − q(1 − α/2) … d − q(α/2), q the quantiles of D, so that what picking gives is taken off; its near end is lowered by
 * the offset. α is 5 % for a figure named before, and for one picked afterwards the two-sided tail beyond the critical value of the
 * largest of those picked from ({@link PickedSpeed}).
 */
public final class PublishedDifference {
    private static final double LEVEL = 0.95;

    private final double difference;
    private final double level;
    private final Assumed assumed;
    private final DifferenceOfMaxima unchanged;

    /**
     * A difference to be looked at.
     *
     * @param difference after − before, turned so that a gain is positive
     * @param level of the figure before, above 0, in the same unit
     * @param halfDigit half a unit of the last printed digit, in the same unit
     * @param assumed what is taken for granted
     */
    public PublishedDifference(double difference, double level, double halfDigit, Assumed assumed) {
        this.difference = difference;
        this.level = level;
        this.assumed = assumed;
        double pull = level * assumed.scatter().pull();
        double variance = 2 * halfDigit * halfDigit / 3 + ofMean(assumed.before(), pull) + ofMean(assumed.after(), pull)
                + (assumed.refitted() ? 2 * square(level * assumed.scatter().refit()) : 0)
                + (assumed.otherDay() ? 2 * square(level * assumed.scatter().day()) : 0);
        this.unchanged = new DifferenceOfMaxima(pull, Math.sqrt(variance), maximumOf(assumed.before()), maximumOf(assumed.after()));
    }

    private static double ofMean(Quote quote, double pull) {
        return quote.isPicked() ? 0 : pull * pull / quote.pulls();
    }

    private static int maximumOf(Quote quote) {
        return quote.isPicked() ? quote.pulls() : 0;
    }

    private static double square(double value) {
        return value * value;
    }

    /** {@return P(|D| ≥ |d|) without any change, for a figure named before} */
    public double chanceAlone() {
        return unchanged.bothTails(difference);
    }

    /** {@return P(|D| ≥ |d|) without any change were scatter and rounding so many times what is assumed, for a figure named before} */
    public double chanceAlone(double times) {
        return unchanged.bothTails(difference / times);
    }

    /** {@return how many times the assumed scatter would make |D| reach |d| in 5 % of unchanged pairs; less and the figure stands} */
    public double tippingFactor() {
        return Math.abs(difference) / unchanged.sizeReached(1 - LEVEL);
    }

    /** {@return what picking the best of several gives without any change} */
    public double pickedBest() {
        return unchanged.mean();
    }

    /** {@return the standard error that a normal difference as wide as this one has: half the middle 95 % ÷ 1.96} */
    public double standardErrorOfInterval() {
        double tail = (1 - LEVEL) / 2;
        return (unchanged.upperQuantile(tail) - unchanged.upperQuantile(1 - tail)) / (2 * Normal.upperQuantile(tail));
    }

    /** {@return the interval of the true difference} */
    public Interval interval() {
        double tail = Normal.upperTail(assumed.criticalValue());
        double high = unchanged.upperQuantile(tail);
        double low = unchanged.upperQuantile(1 - tail);
        return new Interval(LEVEL, difference - high - assumed.offset() * level, difference - low);
    }
}
