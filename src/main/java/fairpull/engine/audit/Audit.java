package fairpull.engine.audit;

import fairpull.domain.audit.Assumed;
import fairpull.domain.audit.AuditAnswer;
import fairpull.domain.audit.BeforeAfter;
import fairpull.domain.audit.BudgetTerm;
import fairpull.domain.audit.CurvePair;
import fairpull.domain.audit.GradedClaim;
import fairpull.domain.audit.GradedClaim.Reason;
import fairpull.domain.audit.Printed;
import fairpull.domain.audit.Procedure;
import fairpull.domain.audit.Publication;
import fairpull.domain.audit.ScatterRange;
import fairpull.domain.audit.ScatterShares;
import fairpull.domain.audit.StandardsMixed;
import fairpull.domain.audit.TTest;
import fairpull.domain.finding.Interval;
import fairpull.domain.plan.Correction;
import fairpull.domain.unit.Quantity;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * Audits a publication: what each figure can show, what comes of each question put to it, how each claim stands. A claim about values that
 * were published one by one is held against the interval of their t test; any other is graded as {@link Grading} has it.
 */
public final class Audit {
    private static final double TRUE_GAIN = 0.01;
    private static final double ERROR_RATE = 0.05;
    private static final int CHANCES = 80;
    private static final double BEYOND = 1.25;

    private final Publication publication;
    private final double pickedCritical;

    private Audit(Publication publication, List<CurvePair> curves) {
        this.publication = publication;
        this.pickedCritical = publication.procedure().namedBefore().orElse(false) ? Assumptions.oneFigure()
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
                Questions.of(publication, curves), publication.claims().stream().map(audit::claim).toList(),
                Disclosure.missing(publication, audit.pickedCritical));
    }

    private AuditAnswer.OfFigure figure(Publication.Figure figure) {
        ScatterRange scatter = PlausibleScatter.of(publication.procedure().scatter(), figure.before());
        PublishedDifference ordinary = difference(figure, scatter.ordinary());
        boolean scatters = isCorrected(figure);
        double gain = figure.gainSi() / figure.before().si();
        Optional<StandardsMixed> mix = scatters && publication.procedure().mayMixStandards()
                ? Optional.of(MixedStandards.nearest(gain, MixedStandards.REFERENCE)) : Optional.empty();
        double standardError = ordinary.standardErrorOfInterval();
        return new AuditAnswer.OfFigure(figure, scatter, ordinary.chanceAlone(), difference(figure, scatter.least()).chanceAlone(),
                difference(figure, scatter.most()).chanceAlone(),
                scatters ? OptionalDouble.of(ordinary.tippingFactor() * scatter.ordinary().pull()) : OptionalDouble.empty(),
                scatters ? chances(ordinary, scatter) : List.of(), mix,
                scatters && !publication.procedure().barometers().isSame()
                        ? BarometerMix.elevationGiving(Assumptions.correction(publication.procedure()), gain) : OptionalDouble.empty(),
                scatters ? Optional.of(Exaggeration.at(TRUE_GAIN * figure.before().si(), standardError, ERROR_RATE)) : Optional.empty(),
                figure.values().map(Audit::test), scatters ? budget(figure, scatter) : List.of());
    }

    /** What moves the figure, in the order of {@link BudgetTerm.Kind}; what does not move it at all is left out. */
    private List<BudgetTerm> budget(Publication.Figure figure, ScatterRange scatter) {
        PublishedDifference ordinary = difference(figure, scatter.ordinary());
        PublishedDifference worst = difference(figure, Assumptions.worst(procedureOf(figure), scatter.most(), pickedCritical));
        return Arrays.stream(BudgetTerm.Kind.values())
                .map(kind -> new BudgetTerm(kind, ordinary.deviation(kind), worst.deviation(kind)))
                .filter(term -> term.ordinary() != 0 || term.worst() != 0).toList();
    }

    private static List<AuditAnswer.ChanceAt> chances(PublishedDifference ordinary, ScatterRange scatter) {
        double usual = scatter.ordinary().pull();
        double most = Math.max(scatter.most().pull(), ordinary.tippingFactor() * usual) * BEYOND;
        return IntStream.rangeClosed(1, CHANCES).mapToDouble(k -> most * k / CHANCES)
                .mapToObj(pull -> new AuditAnswer.ChanceAt(pull, ordinary.chanceAlone(pull / usual))).toList();
    }

    private PublishedDifference difference(Publication.Figure figure, ScatterShares scatter) {
        return difference(figure, Assumptions.ordinary(procedureOf(figure), scatter, pickedCritical));
    }

    private static PublishedDifference difference(Publication.Figure figure, Assumed assumed) {
        Grading.Pair pair = pair(figure);
        return new PublishedDifference(pair.difference(), pair.level(), pair.halfDigit(), assumed);
    }

    private static Grading.Pair pair(Publication.Figure figure) {
        double halfDigit = Math.hypot(figure.before().halfDigitSi(), figure.after().halfDigitSi()) / Math.sqrt(2);
        return new Grading.Pair(figure.gainSi(), figure.before().si(), halfDigit);
    }

    /** Only power and torque are brought to reference air. */
    private Procedure procedureOf(Publication.Figure figure) {
        return isCorrected(figure) ? publication.procedure()
                : publication.procedure().withCorrections(BeforeAfter.of(Correction.NONE, Correction.NONE));
    }

    private static boolean isCorrected(Publication.Figure figure) {
        Quantity quantity = figure.before().unit().quantity();
        return quantity == Quantity.POWER || quantity == Quantity.TORQUE;
    }

    private static TTest test(Publication.Values values) {
        return values.paired() ? PublishedValues.paired(values.before(), values.after())
                : PublishedValues.unpaired(values.before(), values.after());
    }

    private AuditAnswer.OfClaim claim(Publication.Claim claim) {
        Publication.Figure figure = publication.figure(claim.figure());
        double claimed = claim.gain().map(gain -> si(gain, figure)).orElse(0.0);
        return figure.values().map(values -> new AuditAnswer.OfClaim(claim, byValues(figure, values, claimed), true))
                .orElseGet(() -> new AuditAnswer.OfClaim(claim, Grading.grade(pair(figure), claimed, procedureOf(figure), pickedCritical,
                        PlausibleScatter.of(publication.procedure().scatter(), figure.before())), false));
    }

    private static double si(Printed gain, Publication.Figure figure) {
        return gain.unit().quantity() == Quantity.FRACTION ? gain.si() * figure.before().si()
                : gain.unit().differenceToSi(gain.value());
    }

    private static GradedClaim byValues(Publication.Figure figure, Publication.Values values, double claimed) {
        Interval change = test(values).interval();
        double one = figure.better().gainOf(change.low());
        double other = figure.better().gainOf(change.high());
        Interval gain = new Interval(change.level(), Math.min(one, other), Math.max(one, other));
        Reason reason = gain.high() < claimed ? Reason.BELOW_WHAT_IS_CLAIMED
                : gain.low() > claimed ? Reason.STANDS_AT_THE_WORST : Reason.ORDINARY_SCATTER_EXPLAINS_IT;
        return new GradedClaim(Grading.gradeOf(reason), reason, claimed, figure.gainSi(), gain, gain);
    }
}
