package fairpull.engine.audit;

import fairpull.domain.audit.Assumed;
import fairpull.domain.audit.BudgetTerm;
import fairpull.domain.audit.Quote;
import fairpull.domain.audit.ScatterShares;
import fairpull.domain.audit.TypeErrors;
import fairpull.domain.finding.Interval;
import fairpull.engine.stats.DifferenceOfMaxima;
import fairpull.engine.stats.Normal;
import fairpull.engine.stats.StudentT;

/**
 * A published difference d at level L under what is assumed of it. Without any change D = L·s_p·(max over the pulls after − max over those
 * before, where a figure is the best of several) + N(0, σ²), with σ² = L²·(Σ s_p²/n over figures that are no maximum + k·s_r², k the
 * refits that enter + j·s_day², j the days that do) + rounding of both figures, h²/3 each for half a last digit h.
 *
 * <p>The interval is d − q(1 − α/2) … d − q(α/2), q the quantiles of D, so that what picking gives is taken off; what may have moved one
 * figure as a whole moves both ends outwards. α is 5 % for a figure named before, and for one picked afterwards the two-sided tail beyond
 * the critical value of the largest of those picked from ({@link PickedSpeed}).
 *
 * <p>Scatter of ν degrees of freedom (Satterthwaite 1946 over the layers, each with its own) takes Student's t in place of the normal,
 * through its p-value: q(α) becomes q(1 − Φ(t_ν(α))), and P(D ≥ d) = p becomes 1 − F_ν(z), z the normal quantile of p. For means and
 * single pulls that is the t distribution itself; for the best of several an approximation.
 *
 * @see "Satterthwaite (1946), An approximate distribution of estimates of variance components, Biometrics Bulletin 2, 110–114"
 */
public final class PublishedDifference {
    private static final double LEVEL = 0.95;
    /** So many standard deviations out, tails are lost in rounding, and quantiles go on as those of a normal distribution. */
    private static final double FAR = 7;
    /** Half the middle of a normal distribution between these is one standard deviation. */
    private static final double ONE_DEVIATION = Normal.upperTail(1);

    private final double difference;
    private final double level;
    private final double halfDigit;
    private final Assumed assumed;
    private final double degreesOfFreedom;
    private final DifferenceOfMaxima unchanged;
    private final DifferenceOfMaxima mirrored;

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
        this.halfDigit = halfDigit;
        this.assumed = assumed;
        this.degreesOfFreedom = satterthwaite();
        this.unchanged = maxima(square(deviation(BudgetTerm.Kind.ROUNDING)) + ofMeans() + square(deviation(BudgetTerm.Kind.REFIT))
                + square(deviation(BudgetTerm.Kind.DAY)));
        this.mirrored = unchanged.mirrored();
    }

    private DifferenceOfMaxima maxima(double variance) {
        return new DifferenceOfMaxima(level * assumed.scatter().pull(), Math.sqrt(variance), maximumOf(assumed.before()),
                maximumOf(assumed.after()));
    }

    private double ofMeans() {
        double pull = level * assumed.scatter().pull();
        return ofMean(assumed.before(), pull) + ofMean(assumed.after(), pull);
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

    private double satterthwaite() {
        ScatterShares scatter = assumed.scatter();
        double pulls = square(level * scatter.pull()) * (weight(assumed.before()) + weight(assumed.after()));
        double refit = square(deviation(BudgetTerm.Kind.REFIT));
        double day = square(deviation(BudgetTerm.Kind.DAY));
        double all = pulls + refit + day + square(deviation(BudgetTerm.Kind.ROUNDING));
        double open = square(pulls) / scatter.freedom().pull() + square(refit) / scatter.freedom().refit()
                + square(day) / scatter.freedom().day();
        return open > 0 ? all * all / open : Double.POSITIVE_INFINITY;
    }

    private static double weight(Quote quote) {
        return quote.isPicked() ? 1 : 1.0 / quote.pulls();
    }

    /** {@return how far one thing moves the difference of an unchanged car, as {@link BudgetTerm.Kind} has it} */
    public double deviation(BudgetTerm.Kind kind) {
        return switch (kind) {
            case PULLS -> ofPulls();
            case REFIT -> level * assumed.scatter().refit() * Math.sqrt(assumed.refits());
            case DAY -> level * assumed.scatter().day() * Math.sqrt(assumed.days());
            case ROUNDING -> halfDigit * Math.sqrt(2.0 / 3);
            case PICKED_BEST -> pickedBest();
            case PICKED_SPEED -> (assumed.criticalValue() - Assumptions.oneFigure()) * standardErrorOfInterval();
            case RIG -> assumed.shifts().rig() * level;
            case STANDARDS -> assumed.shifts().standards() * level;
            case BAROMETER -> assumed.shifts().barometer() * level;
            case WEATHER -> assumed.shifts().weather() * level;
        };
    }

    private double ofPulls() {
        if (maximumOf(assumed.before()) == 0 && maximumOf(assumed.after()) == 0) {
            return Math.sqrt(ofMeans());
        }
        DifferenceOfMaxima pulls = maxima(ofMeans());
        return (pulls.upperQuantile(ONE_DEVIATION) - pulls.upperQuantile(1 - ONE_DEVIATION)) / 2;
    }

    /** {@return P(|D| ≥ |d|) without any change, for a figure named before} */
    public double chanceAlone() {
        return chanceAlone(1);
    }

    /** {@return P(|D| ≥ |d|) without any change were scatter and rounding so many times what is assumed, for a figure named before} */
    public double chanceAlone(double times) {
        double size = Math.abs(difference) / times;
        return Math.min(1, tail(unchanged, size) + tail(mirrored, size));
    }

    /** {@return P(D ≥ d) of an unchanged pair} */
    private double tail(DifferenceOfMaxima maxima, double d) {
        return StudentT.upperTail(maxima.deviate(d), degreesOfFreedom);
    }

    /**
     * {@return what such comparisons make of a true gain: how often they come out, |D + θ| beyond what an unchanged pair passes with the
     * error rate (for a figure picked afterwards, as seldom as the critical value has it), and how much too large they are then}
     *
     * @param trueGain θ, above 0, in the unit of the difference
     */
    public TypeErrors errorsAt(double trueGain) {
        double t = StudentT.upperQuantile(Normal.upperTail(assumed.criticalValue()), degreesOfFreedom);
        return Exaggeration.of(trueGain, sizeReached(t), d -> tail(unchanged, d), d -> tail(mirrored, d),
                standardErrorOfInterval());
    }

    private double sizeReached(double t) {
        return t > FAR ? Math.abs(pickedBest()) + t * standardErrorOfInterval() : unchanged.sizeReached(2 * Normal.upperTail(t));
    }

    /** {@return how many times the assumed scatter would make |D| reach |d| in 5 % of unchanged pairs; less and the figure stands} */
    public double tippingFactor() {
        double t = StudentT.upperQuantile((1 - LEVEL) / 2, degreesOfFreedom);
        return Math.abs(difference) / sizeReached(t);
    }

    /** {@return what picking the best of several gives without any change} */
    public double pickedBest() {
        return unchanged.mean();
    }

    /** {@return degrees of freedom behind the scatter; infinite where it is taken as known} */
    public double degreesOfFreedom() {
        return degreesOfFreedom;
    }

    /** {@return the standard error that a normal difference as wide as this one has: half the middle 95 % ÷ 1.96} */
    public double standardErrorOfInterval() {
        double tail = (1 - LEVEL) / 2;
        return (unchanged.upperQuantile(tail) - unchanged.upperQuantile(1 - tail)) / (2 * Normal.upperQuantile(tail));
    }

    /** {@return the interval of the true difference} */
    public Interval interval() {
        double t = StudentT.upperQuantile(Normal.upperTail(assumed.criticalValue()), degreesOfFreedom);
        double shift = assumed.shifts().together() * level;
        return new Interval(LEVEL, difference - quantile(unchanged, t) - shift, difference + quantile(mirrored, t) + shift);
    }

    /** {@return the value that is passed as seldom as a normal deviate passes t} */
    private double quantile(DifferenceOfMaxima maxima, double t) {
        return t > FAR ? maxima.mean() + t * standardErrorOfInterval() : maxima.upperQuantile(Normal.upperTail(t));
    }
}
