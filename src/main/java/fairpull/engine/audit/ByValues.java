package fairpull.engine.audit;

import fairpull.domain.audit.Assumed;
import fairpull.domain.audit.GradedClaim.Ends;
import fairpull.domain.audit.Procedure;
import fairpull.domain.audit.Publication.Figure;
import fairpull.domain.audit.Publication.Values;
import fairpull.domain.audit.Publication.Values.Each;
import fairpull.domain.audit.Quote;
import fairpull.domain.audit.ScatterRange;
import fairpull.domain.audit.ScatterShares;
import fairpull.domain.audit.TTest;
import fairpull.domain.finding.Interval;
import fairpull.domain.plan.Better;
import fairpull.engine.stats.Normal;
import fairpull.engine.stats.StudentT;
import java.util.Optional;

/**
 * Between which ends a gain lies whose values were published one by one. What a value repeats, its scatter tells: installs and specimens
 * carry all that differs between two of them, so that their t test stands for itself. Pulls of one install tell the scatter of pulls alone
 * and take that of strap-downs and days from what is stated or plausible, as any other mean of pulls does ({@link PublishedDifference}).
 */
final class ByValues {
    private final Figure figure;
    private final Values values;
    private final Procedure procedure;
    private final double pickedCritical;
    private final ScatterRange scatter;

    /** The values of a figure; {@code scatter} is what it is held against where they are pulls. */
    ByValues(Figure figure, Values values, Procedure procedure, double pickedCritical, ScatterRange scatter) {
        this.figure = figure;
        this.values = values;
        this.procedure = procedure;
        this.pickedCritical = pickedCritical;
        this.scatter = scatter;
    }

    /** {@return the t test of values, as they are paired or not} */
    static TTest test(Values values) {
        return values.paired() ? PublishedValues.paired(values.before(), values.after())
                : PublishedValues.unpaired(values.before(), values.after());
    }

    /** {@return whether values repeat whole installs, as far as was said} */
    static boolean repeatInstalls(Values values) {
        return !values.each().equals(Optional.of(Each.PULL));
    }

    /** {@return between which ends the gain lies} */
    Ends ends() {
        return repeatInstalls(values) ? ofInstalls() : ofPulls();
    }

    private Ends ofInstalls() {
        TTest test = test(values);
        Assumed ordinary = Assumptions.ordinary(procedure, scatter.ordinary(), pickedCritical);
        Assumed worst = Assumptions.worst(procedure, scatter.most(), pickedCritical);
        return new Ends(interval(test, ordinary), interval(test, worst));
    }

    private Interval interval(TTest test, Assumed assumed) {
        double t = StudentT.upperQuantile(Normal.upperTail(assumed.criticalValue()), test.degreesOfFreedom());
        double reach = t * test.standardError() + assumed.shifts().together() * figure.before().si();
        double gain = figure.better().gainOf(test.difference());
        return new Interval(test.interval().level(), gain - reach, gain + reach);
    }

    private Ends ofPulls() {
        TTest pooled = PublishedValues.pooled(values.before(), values.after());
        double before = values.before().stream().average().orElseThrow();
        Better better = figure.better();
        Grading.Pair pair = new Grading.Pair(better.gainOf(pooled.difference()), before, figure.before().halfDigitSi());
        return Grading.ends(pair, means(procedure, values), pickedCritical, scatter(values, scatter));
    }

    /** {@return the procedure with a mean of the values on either side; of one install: the order says nothing of them} */
    static Procedure means(Procedure procedure, Values values) {
        Procedure ofOne = procedure.with(procedure.returning().withOrder(Optional.empty()));
        return ofOne.with(ofOne.quoting().withQuotes(new Quote(Quote.Kind.MEAN, values.before().size()),
                new Quote(Quote.Kind.MEAN, values.after().size())));
    }

    /** {@return the scatter with that of values, taken for pulls, in place of the pulls'} */
    static ScatterRange scatter(Values values, ScatterRange scatter) {
        TTest pooled = PublishedValues.pooled(values.before(), values.after());
        double deviation = pooled.standardError() / Math.sqrt(1.0 / values.before().size() + 1.0 / values.after().size());
        double pull = deviation / values.before().stream().average().orElseThrow();
        double freedom = pooled.degreesOfFreedom();
        return new ScatterRange(with(scatter.least(), pull, freedom), with(scatter.ordinary(), pull, freedom),
                with(scatter.most(), pull, freedom), true, scatter.refitStated());
    }

    private static ScatterShares with(ScatterShares shares, double pull, double freedom) {
        return new ScatterShares(pull, shares.refit(), shares.day(),
                new ScatterShares.Freedom(freedom, shares.freedom().refit(), shares.freedom().day()));
    }
}
