package fairpull.report.wording;

import fairpull.domain.audit.AuditAnswer;
import fairpull.domain.audit.Grade;
import fairpull.domain.audit.GradedClaim;
import fairpull.domain.audit.Publication;
import fairpull.domain.audit.ScatterRange;
import fairpull.domain.audit.Undisclosed;
import fairpull.domain.finding.Interval;
import fairpull.domain.unit.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** How the claims of a publication stand. */
final class AuditClaimWords {
    private AuditClaimWords() {
    }

    /** {@return how the claims stand, in a few words} */
    static String heading(AuditAnswer answer) {
        List<Grade> grades = answer.claims().stream().map(claim -> claim.graded().grade()).toList();
        return grades.isEmpty() ? "What the published figures can show" : grades.size() == 1 ? "The claim is " + grade(grades.get(0))
                : grades.stream().filter(grade -> grade == Grade.SHOWN).count() + " of " + grades.size() + " claims are shown";
    }

    /** {@return a grade in words} */
    static String grade(Grade grade) {
        return grade.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** {@return each claim with its grade, the reason and the figures behind it} */
    static List<Said> claims(AuditAnswer answer) {
        return answer.claims().stream().map(claim -> new Said("“" + claim.claim().words() + "”", grade(claim.graded().grade()) + ": "
                + reason(answer, claim))).toList();
    }

    /** {@return why a claim stands as it does, with the figures behind it} */
    static String reason(AuditAnswer answer, AuditAnswer.OfClaim claim) {
        return reason(claim, answer.publication(), scatter(answer, claim));
    }

    private static ScatterRange scatter(AuditAnswer answer, AuditAnswer.OfClaim claim) {
        return answer.figures().stream().filter(figure -> figure.figure().name().equals(claim.claim().figure()))
                .map(AuditAnswer.OfFigure::scatter).findFirst().orElse(ScatterRange.ASSUMED);
    }

    private static String known(ScatterRange scatter) {
        return scatter.pullStated() ? "at the scatter that is known " : "on a rig of ordinary scatter ";
    }

    private static String open(ScatterRange scatter) {
        return scatter.pullStated() && scatter.refitStated() ? "all that is not disclosed" : "scatter and all that is not disclosed";
    }

    private static String reason(AuditAnswer.OfClaim claim, Publication publication, ScatterRange scatter) {
        Publication.Figure figure = publication.figure(claim.claim().figure());
        Unit unit = figure.before().unit();
        return switch (claim.graded().reason()) {
            case FIGURES_DISAGREE -> "the publication contradicts itself about “" + figure.name() + "”, as is told below, so that nothing "
                    + "can be built on the figure.";
            case FIGURES_FALL_SHORT -> "the printed figures differ by " + DifferenceWords.gain(figure)
                    + ", less than is claimed, whatever their rounding.";
            case SCATTER_UNKNOWN -> "it cannot be judged: how much such figures differ without any change is not known, as neither a "
                    + "scatter nor values of whole installs were published.";
            case RIGS_DIFFER -> "the figures are of two rigs, which read 5 to 10" + Numbers.THIN
                    + "% apart (common practice, no source).";
            case OTHER_CHANGES -> "something else was changed with the part, and the figures cannot tell the two apart.";
            case STANDARDS_DIFFER -> "one correction was quoted before and another after.";
            case BAROMETERS_DIFFER -> "the pressure at the rig stands behind one correction, one reduced to sea level behind the other.";
            case BELOW_WHAT_IS_CLAIMED, ORDINARY_SCATTER_EXPLAINS_IT, HANGS_ON_WHAT_IS_NOT_DISCLOSED,
                    WHAT_HAS_NO_SIZE_IS_NOT_DISCLOSED, NO_RETURN, STANDS_AT_THE_WORST ->
                    byEnds(claim, publication, claim.graded().ends().orElseThrow(), unit, scatter);
        };
    }

    private static String byEnds(AuditAnswer.OfClaim claim, Publication publication, GradedClaim.Ends ends, Unit unit,
            ScatterRange scatter) {
        String ordinary = claim.byValues() ? "by the values published one by one the gain is " + interval(ends.ordinary(), unit)
                : known(scatter) + "the gain is " + interval(ends.ordinary(), unit);
        String worst = interval(ends.worst(), unit);
        String atWorst = claim.byValues() && ends.worst().equals(ends.ordinary()) ? ordinary
                : "even with " + open(scatter) + " at the worst the gain is " + worst;
        return switch (claim.graded().reason()) {
            case BELOW_WHAT_IS_CLAIMED -> atWorst + ", below what is claimed.";
            case ORDINARY_SCATTER_EXPLAINS_IT -> ordinary + ", which reaches down to "
                    + (claim.claim().gain().isPresent() ? "what is claimed" : "zero") + ".";
            case HANGS_ON_WHAT_IS_NOT_DISCLOSED -> ordinary + "; with " + open(scatter) + " at the worst it is " + worst + ".";
            case WHAT_HAS_NO_SIZE_IS_NOT_DISCLOSED -> atWorst + ", but it was not said "
                    + String.join(", nor ", unsized(claim, publication)) + ".";
            case NO_RETURN -> atWorst + ", but the state before was not run again: heat and weather that moved meanwhile are not "
                    + "excluded.";
            default -> atWorst + ".";
        };
    }

    /** What bars a claim from being shown though no size can be put on it. */
    private static List<String> unsized(AuditAnswer.OfClaim claim, Publication publication) {
        List<String> items = new ArrayList<>();
        if (publication.figure(claim.claim().figure()).values().filter(values -> values.each().isEmpty()).isPresent()) {
            items.add(UndisclosedWords.item(Undisclosed.Item.VALUES));
        }
        if (publication.procedure().keeping().allElse().isEmpty()) {
            items.add(UndisclosedWords.item(Undisclosed.Item.OTHER_CHANGES));
        }
        if (publication.procedure().returning().returned().isEmpty()) {
            items.add(UndisclosedWords.item(Undisclosed.Item.RETURN));
        }
        return items;
    }

    private static String interval(Interval interval, Unit unit) {
        double low = unit.differenceFromSi(interval.low());
        double high = unit.differenceFromSi(interval.high());
        Numbers numbers = Numbers.resolving((high - low) / 2, unit.symbol());
        return numbers.signedBare(low) + " to " + numbers.signed(high) + " (" + Numbers.level(interval.level()) + " interval)";
    }
}
