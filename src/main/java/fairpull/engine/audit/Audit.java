package fairpull.engine.audit;

import fairpull.domain.air.AirState;
import fairpull.domain.air.Barometer;
import fairpull.domain.audit.Assumed;
import fairpull.domain.audit.AuditAnswer;
import fairpull.domain.audit.AuditCheck;
import fairpull.domain.audit.BeforeAfter;
import fairpull.domain.audit.BudgetTerm;
import fairpull.domain.audit.ChanceAlone;
import fairpull.domain.audit.CurvePair;
import fairpull.domain.audit.GradedClaim.Ends;
import fairpull.domain.audit.Printed;
import fairpull.domain.audit.Procedure;
import fairpull.domain.audit.Publication;
import fairpull.domain.audit.Returning;
import fairpull.domain.audit.ScatterRange;
import fairpull.domain.audit.ScatterShares;
import fairpull.domain.plan.Correction;
import fairpull.domain.unit.Quantity;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * Audits a publication: what each figure can show, what comes of each question put to it, how each claim stands ({@link Grading}), by
 * the values behind a figure where they were published one by one ({@link ByValues}).
 */
public final class Audit {
    private static final double TRUE_GAIN = 0.01;
    /** With fewer degrees of freedom a difference has no variance, and how much too large it is no stable mean. */
    private static final double FEWEST_WITH_A_MEAN = 2;
    private static final int CHANCES = 80;
    private static final double BEYOND = 1.25;

    private final Publication publication;
    private final List<AuditCheck> checks;
    private final double pickedCritical;

    private Audit(Publication publication, List<CurvePair> curves) {
        this.publication = publication;
        this.checks = Questions.of(publication, curves);
        this.pickedCritical = publication.procedure().quoting().namedBefore().orElse(false) ? Assumptions.oneFigure()
                : SweptSpan.of(publication.procedure(), curves).criticalValue();
    }

    /**
     * Audits a publication.
     *
     * @param publication what was published
     * @param curves its curves as they were read
     * @return what it can and cannot show
     */
    public static AuditAnswer of(Publication publication, List<CurvePair> curves) {
        Audit audit = new Audit(publication, curves);
        return new AuditAnswer(publication, curves, publication.figures().stream().map(audit::figure).toList(),
                audit.checks, publication.claims().stream().map(audit::claim).toList(),
                Disclosure.missing(publication, audit.pickedCritical));
    }

    private AuditAnswer.OfFigure figure(Publication.Figure figure) {
        ScatterRange scatter = scatter(figure);
        PublishedDifference ordinary = difference(figure, scatter.ordinary());
        boolean scatters = scatters(figure) && !repeatsInstalls(figure);
        ChanceAlone chance = scatters ? chance(figure, ordinary, scatter) : ChanceAlone.UNKNOWN;
        return new AuditAnswer.OfFigure(figure, scatter, chance, mixes(figure),
                scatters && ordinary.degreesOfFreedom() > FEWEST_WITH_A_MEAN
                        ? Optional.of(ordinary.errorsAt(TRUE_GAIN * figure.before().si())) : Optional.empty(),
                figure.values().filter(Publication.Values::scatter).map(ByValues::test),
                scatters(figure) ? budget(figure, scatter) : List.of());
    }

    private ChanceAlone chance(Publication.Figure figure, PublishedDifference ordinary, ScatterRange scatter) {
        return new ChanceAlone(ordinary.chanceAlone(),
                difference(figure, scatter.least()).chanceAlone(), difference(figure, scatter.most()).chanceAlone(),
                OptionalDouble.of(ordinary.tippingFactor() * scatter.ordinary().pull()), chances(ordinary, scatter));
    }

    /** Of values that are pulls, or may be, their own scatter counts; strap-downs and days they do not repeat. */
    private ScatterRange scatter(Publication.Figure figure) {
        ScatterRange known = PlausibleScatter.of(publication.procedure().scatter(), figure.before());
        return pulls(figure).map(values -> ByValues.scatter(values, known)).orElse(known);
    }

    private static Optional<Publication.Values> pulls(Publication.Figure figure) {
        return figure.values().filter(values -> values.scatter() && !repeatsInstalls(figure));
    }

    /** Values that are said to repeat whole installs tell their scatter themselves, and that of a rig says nothing beside it. */
    private static boolean repeatsInstalls(Publication.Figure figure) {
        return figure.values().filter(values -> values.each().isPresent() && ByValues.repeatInstalls(values)).isPresent();
    }

    private AuditAnswer.Mixes mixes(Publication.Figure figure) {
        Procedure procedure = publication.procedure();
        AirState air = RangeOfAir.usual(procedure);
        boolean corrected = figure.isOfEngine();
        double gain = figure.gainSi() / figure.before().si();
        return new AuditAnswer.Mixes(corrected && gain != 0
                ? MixedStandards.nearest(gain, procedure.correcting().corrections(), air) : Optional.empty(), air,
                corrected && Assumptions.mayMixBarometers(procedure)
                        ? BarometerMix.elevationGiving(Assumptions.correction(procedure), gain) : OptionalDouble.empty());
    }

    /** {@return whether anything is known of how such a figure scatters} */
    private boolean scatters(Publication.Figure figure) {
        return figure.isOfEngine() || publication.procedure().scatter().flatMap(stated -> stated.pull().share(figure.before())).isPresent();
    }

    /** What moves the figure, in the order of {@link BudgetTerm.Kind}; what does not move it at all is left out. */
    private List<BudgetTerm> budget(Publication.Figure figure, ScatterRange scatter) {
        PublishedDifference ordinary = difference(figure, scatter.ordinary());
        PublishedDifference worst = difference(figure, Assumptions.worst(procedureBehind(figure), scatter.most(), pickedCritical));
        return Arrays.stream(BudgetTerm.Kind.values())
                .map(kind -> new BudgetTerm(kind, ordinary.deviation(kind), worst.deviation(kind)))
                .filter(term -> term.ordinary() != 0 || term.worst() != 0)
                .filter(term -> !repeatsInstalls(figure) || term.kind().movesAlways()).toList();
    }

    private static List<ChanceAlone.At> chances(PublishedDifference ordinary, ScatterRange scatter) {
        double usual = scatter.ordinary().pull();
        double most = Math.max(scatter.most().pull(), ordinary.tippingFactor() * usual) * BEYOND;
        return IntStream.rangeClosed(1, CHANCES).mapToDouble(k -> most * k / CHANCES)
                .mapToObj(pull -> new ChanceAlone.At(pull, ordinary.chanceAlone(pull / usual))).toList();
    }

    private PublishedDifference difference(Publication.Figure figure, ScatterShares scatter) {
        return difference(figure, Assumptions.ordinary(procedureBehind(figure), scatter, pickedCritical));
    }

    static PublishedDifference difference(Publication.Figure figure, Assumed assumed) {
        Grading.Pair pair = pair(figure);
        return new PublishedDifference(pair.difference(), pair.level(), pair.halfDigit(), assumed);
    }

    private static Grading.Pair pair(Publication.Figure figure) {
        double halfDigit = Math.hypot(figure.before().halfDigitSi(), figure.after().halfDigitSi()) / Math.sqrt(2);
        return new Grading.Pair(figure.gainSi(), figure.before().si(), halfDigit);
    }

    /** Where values are pulls, or may be, the figure is their mean. */
    private Procedure procedureBehind(Publication.Figure figure) {
        return pulls(figure).map(values -> ByValues.means(procedureOf(figure), values)).orElseGet(() -> procedureOf(figure));
    }

    /** Only power and torque move with the air: any other figure is taken as one that nothing of it can move. */
    private Procedure procedureOf(Publication.Figure figure) {
        return figure.isOfEngine() ? publication.procedure() : publication.procedure()
                .with(publication.procedure().correcting()
                        .withCorrections(BeforeAfter.of(Correction.SAE_J1349, Correction.SAE_J1349))
                        .withBarometers(BeforeAfter.of(Barometer.Kind.STATION, Barometer.Kind.STATION)));
    }

    private AuditAnswer.OfClaim claim(Publication.Claim claim) {
        Publication.Figure figure = publication.figure(claim.figure());
        Grading.Claimed claimed = claim.gain().map(gain -> new Grading.Claimed(si(gain, figure), halfDigit(gain, figure)))
                .orElse(new Grading.Claimed(0, 0));
        Procedure procedure = procedureOf(figure);
        Grading grading = Grading.of(pair(figure), figure.values().filter(Audit::areSpecimens).isPresent()
                ? procedure.with(Returning.NOT_DISCLOSED.withSaid(Optional.of(true))) : procedure,
                Doubted.by(checks, publication, figure), figure.values().filter(values -> values.each().isEmpty()).isPresent());
        Optional<Ends> ends = ends(figure, procedure);
        return new AuditAnswer.OfClaim(claim, grading.grade(claimed, ends), figure.values().isPresent(),
                grading.grade(new Grading.Claimed(0, 0), ends).grade());
    }

    /** Specimens are no state of one car that could be run again. */
    private static boolean areSpecimens(Publication.Values values) {
        return values.each().equals(Optional.of(Publication.Values.Each.SPECIMEN));
    }

    private Optional<Ends> ends(Publication.Figure figure, Procedure procedure) {
        ScatterRange scatter = PlausibleScatter.of(publication.procedure().scatter(), figure.before());
        Optional<Publication.Values> tested = figure.values()
                .filter(values -> values.scatter() && (scatters(figure) || ByValues.repeatInstalls(values)));
        return tested.map(values -> new ByValues(figure, values, procedure, pickedCritical, scatter).ends())
                .or(() -> scatters(figure) && figure.values().isEmpty()
                        ? Optional.of(Grading.ends(pair(figure), procedure, pickedCritical, scatter)) : Optional.empty());
    }

    private static double halfDigit(Printed gain, Publication.Figure figure) {
        return gain.unit().quantity() == Quantity.FRACTION ? gain.halfDigitSi() * figure.before().si() : gain.halfDigitSi();
    }

    private static double si(Printed gain, Publication.Figure figure) {
        return gain.unit().quantity() == Quantity.FRACTION ? gain.si() * figure.before().si()
                : gain.unit().differenceToSi(gain.value());
    }
}
