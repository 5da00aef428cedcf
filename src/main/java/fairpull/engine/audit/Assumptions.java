package fairpull.engine.audit;

import fairpull.domain.air.Barometer;
import fairpull.domain.audit.Assumed;
import fairpull.domain.audit.Assumed.Shifts;
import fairpull.domain.audit.BeforeAfter;
import fairpull.domain.audit.Procedure;
import fairpull.domain.audit.Quote;
import fairpull.domain.audit.Quoting;
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
 * <p>Worst plausible, common practice, no source: a single pull before and the best of five after (for the far end of an interval the other
 * way round), a mean of one pull where their number was not said; refit scatter in full even where the straps stayed on, as the part itself
 * was fitted anew; another day; the figure picked afterwards; another rig, which reads up to {@value #RIGS_APART} apart; the standards
 * mixed by the pair with the largest apparent gain in any plausible air ({@link MixedStandards}, {@link RangeOfAir}); for figures that
 * were not corrected, the thinnest air before and the densest after; and, unless both were run on one day on one rig, a sea-level
 * barometer before and one at the rig after ({@link BarometerMix}).
 *
 * <p>Days count by the order where it parts them: their variance enters by how unequally each holds both parts
 * ({@link RunOrder#dayWeight}). Figures of two days that were not corrected scatter by the weather as well.
 */
public final class Assumptions {
    /**
     * How far another rig may read from this one, as a share of the level: rigs read 5 to 10 % apart (common practice, no source;
     * coast-downs of one car over several rollers spread 5 to 11 %, EPA LDTP 78-05).
     */
    static final double RIGS_APART = 0.10;
    /**
     * One standard deviation that the weather of another day gives a figure that was not corrected: 8 hPa and 5 °C, each 1 % of power
     * (common practice, no source).
     */
    static final double WEATHER = 0.014;
    private static final double ERROR_RATE = 0.05;
    private static final int WORST_PULLS = 5;
    private static final int USUAL_PULLS = 3;

    private Assumptions() {
    }

    /** {@return everything that was not disclosed done well: single pulls, one strap-down, one day, one standard, named before} */
    public static Assumed ordinary(Procedure procedure, ScatterShares scatter, double pickedCritical) {
        Quoting quoting = procedure.quoting();
        double days = daysApart(procedure).orElse(0.0);
        double refits = is(procedure.keeping().strapDown(), Sameness.DIFFERENT) ? refits(procedure) : 0;
        Shifts shifts = new Shifts(0, 0, procedure.correcting().barometers().differs() ? barometer(procedure) : 0, 0);
        return new Assumed(doneWell(quoting.kinds().before(), quoting.pulls().before()),
                doneWell(quoting.kinds().after(), quoting.pulls().after()), weathered(scatter, procedure),
                refits, days, shifts, quoting.namedBefore().orElse(true) ? oneFigure() : pickedCritical);
    }

    /** {@return everything that was not disclosed at its worst plausible value, so that the near end of the gain is at its lowest} */
    public static Assumed worst(Procedure procedure, ScatterShares scatter, double pickedCritical) {
        return worst(procedure, scatter, pickedCritical, BeforeAfter.of(new Quote(Quote.Kind.MEAN, 1),
                new Quote(Quote.Kind.BEST, WORST_PULLS)));
    }

    /** {@return the same, so that the far end is at its highest} */
    static Assumed farthest(Procedure procedure, ScatterShares scatter, double pickedCritical) {
        return worst(procedure, scatter, pickedCritical, BeforeAfter.of(new Quote(Quote.Kind.BEST, WORST_PULLS),
                new Quote(Quote.Kind.MEAN, 1)));
    }

    private static Assumed worst(Procedure procedure, ScatterShares scatter, double pickedCritical, BeforeAfter<Quote> quotes) {
        Quoting quoting = procedure.quoting();
        return new Assumed(worst(quoting.kinds().before(), quoting.pulls().before(), quotes.before().orElseThrow()),
                worst(quoting.kinds().after(), quoting.pulls().after(), quotes.after().orElseThrow()),
                weathered(scatter, procedure), refits(procedure), daysApart(procedure).orElse(2.0), shifts(procedure),
                quoting.namedBefore().orElse(false) ? oneFigure() : pickedCritical);
    }

    /** What was not said of the pulls behind a figure: a mean, of three where a mean or the best of some was said. */
    private static Quote doneWell(Optional<Quote.Kind> kind, Optional<Integer> pulls) {
        Quote.Kind known = kind.orElse(Quote.Kind.MEAN);
        return known == Quote.Kind.SINGLE ? Quote.single() : new Quote(known, pulls.orElse(kind.isPresent() ? USUAL_PULLS : 1));
    }

    private static Quote worst(Optional<Quote.Kind> kind, Optional<Integer> pulls, Quote otherwise) {
        Quote.Kind known = kind.orElse(otherwise.kind());
        int number = pulls.orElse(known == otherwise.kind() ? otherwise.pulls() : 1);
        return known == Quote.Kind.SINGLE ? Quote.single() : new Quote(known, number);
    }

    /** Means over the installs of a disclosed order carry the refit variance 1/k of each side; any other figure is of one install. */
    private static double refits(Procedure procedure) {
        return orderOfMeans(procedure).map(known -> 1.0 / known.installs(Part.A) + 1.0 / known.installs(Part.B)).orElse(2.0);
    }

    /** How often the variance of days enters; empty where nothing says whether there was more than one. */
    private static Optional<Double> daysApart(Procedure procedure) {
        return orderOfMeans(procedure).filter(order -> order.numberOfDays() > 1).map(RunOrder::dayWeight)
                .or(() -> procedure.returning().order().filter(order -> order.numberOfDays() > 1).map(order -> 2.0))
                .or(() -> procedure.keeping().day().map(day -> day == Sameness.DIFFERENT ? 2.0 : 0));
    }

    private static Optional<RunOrder> orderOfMeans(Procedure procedure) {
        boolean means = procedure.quoting().kinds().equals(BeforeAfter.of(Quote.Kind.MEAN, Quote.Kind.MEAN));
        return procedure.returning().order().filter(known -> means);
    }

    private static ScatterShares weathered(ScatterShares scatter, Procedure procedure) {
        return isUncorrected(procedure) ? new ScatterShares(scatter.pull(), scatter.refit(), Math.hypot(scatter.day(), WEATHER),
                scatter.freedom()) : scatter;
    }

    /** Of mixed standards and weather only the larger: a figure that is corrected has no weather left. */
    private static Shifts shifts(Procedure procedure) {
        double standards = standards(procedure);
        double weather = weather(procedure);
        return new Shifts(procedure.keeping().rig().isEmpty() ? RIGS_APART : 0, standards < weather ? 0 : standards, barometer(procedure),
                standards < weather ? weather : 0);
    }

    /** The largest apparent gain over the pairs of standards that what was disclosed leaves open. */
    private static double standards(Procedure procedure) {
        BeforeAfter<Correction> said = procedure.correcting().corrections();
        return said.isSame() ? 0
                : RangeOfAir.of(procedure).states().stream().flatMap(air -> MixedStandards.open(said, air).stream())
                        .mapToDouble(pair -> Math.max(0, pair.apparentGain())).max().orElse(0);
    }

    /** {@return what the air of two days may make of figures that are not corrected, or may not be} */
    static double weather(Procedure procedure) {
        boolean uncorrected = procedure.correcting().corrections().allows(Correction.NONE, Correction.NONE);
        return uncorrected && daysApart(procedure).orElse(2.0) > 0 ? RangeOfAir.of(procedure).uncorrected() : 0;
    }

    /** {@return whether neither figure was corrected} */
    static boolean isUncorrected(Procedure procedure) {
        return procedure.correcting().corrections().equals(BeforeAfter.of(Correction.NONE, Correction.NONE));
    }

    /** A rig does not change its barometer within a day, so that only a disclosed difference counts there. */
    static double barometer(Procedure procedure) {
        BeforeAfter<Barometer.Kind> said = procedure.correcting().barometers();
        boolean raises = procedure.correcting().restsOnBarometers() && said.allows(Barometer.Kind.SEA_LEVEL, Barometer.Kind.STATION);
        if (!raises || isOneSession(procedure) && !said.differs()) {
            return 0;
        }
        return Math.max(0, BarometerMix.apparentGain(correction(procedure), RangeOfAir.elevation(procedure)));
    }

    /** {@return whether what was disclosed leaves open that the barometers of both figures differ, or says that they do} */
    static boolean mayMixBarometers(Procedure procedure) {
        BeforeAfter<Barometer.Kind> said = procedure.correcting().barometers();
        return procedure.correcting().restsOnBarometers() && (said.differs() || !said.isKnown() && !isOneSession(procedure));
    }

    private static boolean isOneSession(Procedure procedure) {
        return is(procedure.keeping().rig(), Sameness.SAME) && is(procedure.keeping().day(), Sameness.SAME);
    }

    /** {@return the correction of both figures, where it was disclosed; SAE J1349 otherwise} */
    static Correction correction(Procedure procedure) {
        BeforeAfter<Correction> said = procedure.correcting().corrections();
        return said.after().or(said::before).orElse(Correction.SAE_J1349);
    }

    private static boolean is(Optional<Sameness> disclosed, Sameness wanted) {
        return disclosed.filter(wanted::equals).isPresent();
    }

    static double oneFigure() {
        return Normal.upperQuantile(ERROR_RATE / 2);
    }
}
