package fairpull.engine.audit;

import fairpull.domain.audit.Assumed;
import fairpull.domain.audit.AuditAnswer;
import fairpull.domain.audit.CurvePair;
import fairpull.domain.audit.GradedClaim;
import fairpull.domain.audit.GradedClaim.Reason;
import fairpull.domain.audit.Printed;
import fairpull.domain.audit.Procedure;
import fairpull.domain.audit.Publication;
import fairpull.domain.audit.ScatterShares;
import fairpull.domain.audit.StandardsMixed;
import fairpull.domain.audit.TTest;
import fairpull.domain.finding.Interval;
import fairpull.domain.unit.Quantity;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * Audits a publication: what each figure can show, how each claim stands. A claim about values that were published one by one is held
 * against the interval of their t test; any other is graded as {@link Grading} has it.
 */
public final class Audit {
    private static final double TRUE_GAIN = 0.01;
    private static final double ERROR_RATE = 0.05;
    private static final int CHANCES = 80;
    private static final double BEYOND = 1.25;

    private final Publication publication;
    private final Procedure procedure;
    private final double pickedCritical;

    private Audit(Publication publication) {
        this.publication = publication;
        this.procedure = publication.procedure();
        this.pickedCritical = procedure.namedBefore().orElse(false) ? Assumptions.oneFigure()
                : PickedSpeed.criticalValue(PickedSpeed.SWEEP_RPM, PickedSpeed.CORRELATION_LENGTH_RPM);
    }

    /**
     * Audits a publication.
     *
     * @param publication what was published
     * @param curves its curves as they were read
     * @return what it can and cannot show
     */
    public static AuditAnswer of(Publication publication, List<CurvePair> curves) {
        Audit audit = new Audit(publication);
        return new AuditAnswer(publication, curves, publication.figures().stream().map(audit::figure).toList(),
                publication.claims().stream().map(audit::claim).toList(), Disclosure.missing(publication, audit.pickedCritical));
    }

    private AuditAnswer.OfFigure figure(Publication.Figure figure) {
        PublishedDifference ordinary = difference(figure, ScatterShares.ORDINARY);
        boolean scatters = figure.before().unit().quantity() == Quantity.POWER || figure.before().unit().quantity() == Quantity.TORQUE;
        double gain = figure.gainSi() / figure.before().si();
        Optional<StandardsMixed> mix = scatters && procedure.mayMixStandards()
                ? Optional.of(MixedStandards.nearest(gain, MixedStandards.REFERENCE)) : Optional.empty();
        double standardError = ordinary.standardErrorOfInterval();
        return new AuditAnswer.OfFigure(figure, ordinary.chanceAlone(), difference(figure, ScatterShares.LEAST).chanceAlone(),
                difference(figure, ScatterShares.MOST).chanceAlone(),
                scatters ? OptionalDouble.of(ordinary.tippingFactor() * ScatterShares.ORDINARY.pull()) : OptionalDouble.empty(),
                scatters ? chances(ordinary) : List.of(), mix,
                scatters ? Optional.of(Exaggeration.at(TRUE_GAIN * figure.before().si(), standardError, ERROR_RATE)) : Optional.empty(),
                figure.values().map(Audit::test));
    }

    private static List<AuditAnswer.ChanceAt> chances(PublishedDifference ordinary) {
        double most = Math.max(ScatterShares.MOST.pull(), ordinary.tippingFactor() * ScatterShares.ORDINARY.pull()) * BEYOND;
        return IntStream.rangeClosed(1, CHANCES).mapToDouble(k -> most * k / CHANCES)
                .mapToObj(pull -> new AuditAnswer.ChanceAt(pull, ordinary.chanceAlone(pull / ScatterShares.ORDINARY.pull()))).toList();
    }

    private PublishedDifference difference(Publication.Figure figure, ScatterShares scatter) {
        Assumed assumed = Assumptions.ordinary(procedure, scatter, pickedCritical);
        return new PublishedDifference(figure.gainSi(), figure.before().si(), figure.before().halfDigitSi(), assumed);
    }

    private static TTest test(Publication.Values values) {
        return values.paired() ? PublishedValues.paired(values.before(), values.after())
                : PublishedValues.unpaired(values.before(), values.after());
    }

    private AuditAnswer.OfClaim claim(Publication.Claim claim) {
        Publication.Figure figure = publication.figure(claim.figure());
        double claimed = claim.gain().map(gain -> si(gain, figure)).orElse(0.0);
        return figure.values().map(values -> new AuditAnswer.OfClaim(claim, byValues(figure, values, claimed), true))
                .orElseGet(() -> new AuditAnswer.OfClaim(claim, Grading.grade(new Grading.Pair(figure.gainSi(), figure.before().si(),
                        figure.before().halfDigitSi()), claimed, procedure, pickedCritical), false));
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
