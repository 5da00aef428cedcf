package fairpull.engine.audit;

import fairpull.domain.audit.Assumed;
import fairpull.domain.audit.Procedure;
import fairpull.domain.audit.Quote;
import fairpull.domain.audit.Sameness;
import fairpull.domain.audit.ScatterShares;
import fairpull.domain.plan.Correction;
import fairpull.engine.stats.Normal;
import java.util.Optional;

/**
 * What is taken for granted of a published pair: once everything not disclosed as done well, once at its worst plausible value. What was
 * disclosed stands in both.
 *
 * <p>Worst plausible, common practice, no source: a single pull before and the best of five after; refit scatter in full even where the
 * straps stayed on, as the part itself was fitted anew; another day; the figure picked afterwards; the standards mixed by the pair with
 * the largest apparent gain ({@link MixedStandards}).
 */
public final class Assumptions {
    private static final double ERROR_RATE = 0.05;
    private static final int WORST_PULLS = 5;
    private static final int USUAL_PULLS = 3;

    private Assumptions() {
    }

    /** {@return everything that was not disclosed done well: single pulls, one strap-down, one day, one standard, named before} */
    public static Assumed ordinary(Procedure procedure, ScatterShares scatter, double pickedCritical) {
        return new Assumed(doneWell(procedure.quoted().before(), procedure.pulls().before()),
                doneWell(procedure.quoted().after(), procedure.pulls().after()), scatter,
                is(procedure.strapDown(), Sameness.DIFFERENT), is(procedure.day(), Sameness.DIFFERENT), 0,
                procedure.namedBefore().orElse(true) ? oneFigure() : pickedCritical);
    }

    /** {@return everything that was not disclosed at its worst plausible value} */
    public static Assumed worst(Procedure procedure, ScatterShares scatter, double pickedCritical) {
        return new Assumed(worst(procedure.quoted().before(), procedure.pulls().before(), Quote.Kind.MEAN, 1),
                worst(procedure.quoted().after(), procedure.pulls().after(), Quote.Kind.BEST, WORST_PULLS), scatter,
                true, !is(procedure.day(), Sameness.SAME), offset(procedure),
                procedure.namedBefore().orElse(false) ? oneFigure() : pickedCritical);
    }

    /** What was not said of the pulls behind a figure: a mean, of three where a mean or the best of some was said. */
    private static Quote doneWell(Optional<Quote.Kind> kind, Optional<Integer> pulls) {
        Quote.Kind known = kind.orElse(Quote.Kind.MEAN);
        return known == Quote.Kind.SINGLE ? Quote.single()
                : new Quote(known, pulls.orElse(kind.isPresent() ? USUAL_PULLS : 1));
    }

    private static Quote worst(Optional<Quote.Kind> kind, Optional<Integer> pulls, Quote.Kind otherwise, int number) {
        Quote.Kind known = kind.orElse(otherwise);
        return known == Quote.Kind.SINGLE ? Quote.single() : new Quote(known, pulls.orElse(known == Quote.Kind.MEAN ? 1 : number));
    }

    /** The largest apparent gain over the pairs of standards that what was disclosed leaves open. */
    private static double offset(Procedure procedure) {
        return MixedStandards.all(MixedStandards.REFERENCE).stream()
                .filter(pair -> open(procedure.correctionBefore(), pair.before()) && open(procedure.correctionAfter(), pair.after()))
                .mapToDouble(pair -> Math.max(0, pair.apparentGain())).max().orElse(0);
    }

    private static boolean open(Optional<Correction> disclosed, Correction tried) {
        return disclosed.map(tried::equals).orElse(true);
    }

    private static boolean is(Optional<Sameness> disclosed, Sameness wanted) {
        return disclosed.filter(wanted::equals).isPresent();
    }

    static double oneFigure() {
        return Normal.upperQuantile(ERROR_RATE / 2);
    }
}
