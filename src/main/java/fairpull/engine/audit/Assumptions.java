package fairpull.engine.audit;

import fairpull.domain.air.Barometer;
import fairpull.domain.audit.Assumed;
import fairpull.domain.audit.Procedure;
import fairpull.domain.audit.Quote;
import fairpull.domain.audit.RunOrder;
import fairpull.domain.audit.Sameness;
import fairpull.domain.audit.ScatterShares;
import fairpull.domain.plan.Correction;
import fairpull.domain.plan.Part;
import fairpull.engine.stats.Normal;
import java.util.Optional;

/**
 * What is taken for granted of a published pair: once everything not disclosed as done well, once at its worst plausible value. What was
 * disclosed stands in both.
 *
 * <p>Worst plausible, common practice, no source: a single pull before and the best of five after, a mean of one pull where their number
 * was not said; refit scatter in full even where the straps stayed on, as the part itself was fitted anew; another day; the figure picked
 * afterwards; the standards mixed by the pair with the largest apparent gain ({@link MixedStandards}); and, unless both were run on one
 * day on one rig, a sea-level barometer before and one at the rig after ({@link BarometerMix}), 300 m up where no elevation was given.
 */
public final class Assumptions {
    /** Height of a rig of which nothing is said; common practice, no source. */
    public static final double USUAL_ELEVATION_M = 300;
    private static final double ERROR_RATE = 0.05;
    private static final int WORST_PULLS = 5;
    private static final int USUAL_PULLS = 3;

    private Assumptions() {
    }

    /** {@return everything that was not disclosed done well: single pulls, one strap-down, one day, one standard, named before} */
    public static Assumed ordinary(Procedure procedure, ScatterShares scatter, double pickedCritical) {
        return new Assumed(doneWell(procedure.quoted().before(), procedure.pulls().before()),
                doneWell(procedure.quoted().after(), procedure.pulls().after()), scatter,
                is(procedure.strapDown(), Sameness.DIFFERENT) ? refits(procedure) : 0, is(procedure.day(), Sameness.DIFFERENT), 0,
                procedure.barometers().differs() ? barometer(procedure) : 0,
                procedure.namedBefore().orElse(true) ? oneFigure() : pickedCritical);
    }

    /** {@return everything that was not disclosed at its worst plausible value} */
    public static Assumed worst(Procedure procedure, ScatterShares scatter, double pickedCritical) {
        return new Assumed(worst(procedure.quoted().before(), procedure.pulls().before(), Quote.Kind.MEAN, 1),
                worst(procedure.quoted().after(), procedure.pulls().after(), Quote.Kind.BEST, WORST_PULLS), scatter,
                refits(procedure), !is(procedure.day(), Sameness.SAME), standards(procedure), barometer(procedure),
                procedure.namedBefore().orElse(false) ? oneFigure() : pickedCritical);
    }

    /** What was not said of the pulls behind a figure: a mean, of three where a mean or the best of some was said. */
    private static Quote doneWell(Optional<Quote.Kind> kind, Optional<Integer> pulls) {
        Quote.Kind known = kind.orElse(Quote.Kind.MEAN);
        return known == Quote.Kind.SINGLE ? Quote.single() : new Quote(known, pulls.orElse(kind.isPresent() ? USUAL_PULLS : 1));
    }

    private static Quote worst(Optional<Quote.Kind> kind, Optional<Integer> pulls, Quote.Kind otherwise, int number) {
        Quote.Kind known = kind.orElse(otherwise);
        return known == Quote.Kind.SINGLE ? Quote.single() : new Quote(known, pulls.orElse(known == Quote.Kind.MEAN ? 1 : number));
    }

    /** Means over the installs of a disclosed order carry the refit variance 1/k of each side; any other figure is of one install. */
    private static double refits(Procedure procedure) {
        boolean means = procedure.quoted().before().filter(Quote.Kind.MEAN::equals).isPresent()
                && procedure.quoted().after().filter(Quote.Kind.MEAN::equals).isPresent();
        Optional<RunOrder> order = procedure.order().filter(known -> means);
        return order.map(known -> 1.0 / known.installs(Part.A) + 1.0 / known.installs(Part.B)).orElse(2.0);
    }

    /** The largest apparent gain over the pairs of standards that what was disclosed leaves open. */
    private static double standards(Procedure procedure) {
        return MixedStandards.all(MixedStandards.REFERENCE).stream()
                .filter(pair -> open(procedure.correctionBefore(), pair.before()) && open(procedure.correctionAfter(), pair.after()))
                .mapToDouble(pair -> Math.max(0, pair.apparentGain())).max().orElse(0);
    }

    /** A rig does not change its barometer within a day, so that only a disclosed difference counts there. */
    static double barometer(Procedure procedure) {
        boolean oneDay = is(procedure.rig(), Sameness.SAME) && is(procedure.day(), Sameness.SAME);
        boolean raises = open(procedure.barometers().before(), Barometer.Kind.SEA_LEVEL)
                && open(procedure.barometers().after(), Barometer.Kind.STATION);
        if (!raises || oneDay && !procedure.barometers().differs()) {
            return 0;
        }
        return Math.max(0, BarometerMix.apparentGain(correction(procedure), elevation(procedure)));
    }

    /** {@return the correction of both figures, where it was disclosed; SAE J1349 otherwise} */
    static Correction correction(Procedure procedure) {
        return procedure.correctionAfter().or(procedure::correctionBefore).orElse(Correction.SAE_J1349);
    }

    private static double elevation(Procedure procedure) {
        return procedure.elevation().map(height -> height.si()).orElse(USUAL_ELEVATION_M);
    }

    private static <T> boolean open(Optional<T> disclosed, T tried) {
        return disclosed.map(tried::equals).orElse(true);
    }

    private static boolean is(Optional<Sameness> disclosed, Sameness wanted) {
        return disclosed.filter(wanted::equals).isPresent();
    }

    static double oneFigure() {
        return Normal.upperQuantile(ERROR_RATE / 2);
    }
}
