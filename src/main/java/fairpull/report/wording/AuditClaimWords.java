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
import java.util.Optional;

/** How the claims of a publication stand. */
final class AuditClaimWords {
    /** How often an unchanged figure lies beyond the upper end of a 95 % interval. */
    private static final double ONE_SIDED = 0.025;

    private AuditClaimWords() {
    }

    /** {@return how the claims stand, in a few words} */
    static String heading(AuditAnswer answer) {
        List<Grade> grades = answer.claims().stream().map(claim -> claim.graded().grade()).toList();
        return grades.isEmpty() ? "What the published figures can show" : grades.size() == 1 ? "The claim is " + grade(grades.get(0))
                : several(grades.size(), (int) grades.stream().filter(grade -> grade == Grade.SHOWN).count());
    }

    private static String several(int claims, int shown) {
        if (shown == 0) {
            return claims == 2 ? "Neither claim is shown" : "None of " + claims + " claims is shown";
        }
        if (shown == claims) {
            return (claims == 2 ? "Both" : "All " + claims) + " claims are shown";
        }
        return shown + " of " + claims + " claims " + (shown == 1 ? "is" : "are") + " shown";
    }

    /** {@return a grade in words} */
    static String grade(Grade grade) {
        return grade.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** {@return each claim with its grade, the reason and the figures behind it} */
    static List<Said> claims(AuditAnswer answer) {
        List<Said> said = new ArrayList<>(answer.claims().stream().map(claim -> new Said("“" + claim.claim().words() + "”",
                grade(claim.graded().grade()) + ": " + reason(answer, claim))).toList());
        several(answer).ifPresent(said::add);
        return said;
    }

    /** One in forty of unchanged figures comes out as a gain, and of several one does more often (Boole's inequality). */
    private static Optional<Said> several(AuditAnswer answer) {
        long figures = answer.claims().stream().map(claim -> claim.claim().figure()).distinct().count();
        boolean shown = answer.claims().stream().anyMatch(claim -> claim.graded().grade() == Grade.SHOWN);
        return figures < 2 || !shown ? Optional.empty() : Optional.of(new Said("Claims of " + figures + " figures",
                "each is judged by itself, at " + Numbers.level(0.95) + ": were nothing changed, one or more of " + figures
                        + " figures would come out as a gain in up to " + Numbers.chance(Math.min(1, ONE_SIDED * figures))
                        + " of publications."));
    }

    /** {@return why a claim stands as it does, with the figures behind it} */
    static String reason(AuditAnswer answer, AuditAnswer.OfClaim claim) {
        ScatterRange scatter = answer.figureOf(claim).scatter();
        return reason(answer, claim, atWorst(scatter, answer), known(scatter));
    }

    private static String known(ScatterRange scatter) {
        return scatter.pullStated() ? "at the scatter that is known " : "on a rig of ordinary scatter ";
    }

    /** What the interval at the worst allows for. */
    private static String atWorst(ScatterRange scatter, AuditAnswer answer) {
        boolean known = scatter.pullStated() && scatter.refitStated();
        if (answer.undisclosed().isEmpty()) {
            return known ? "with the scatter of a refit counted in full" : "with scatter at the worst";
        }
        return known ? "with all that is not disclosed at the worst" : "with scatter and all that is not disclosed at the worst";
    }

    private static String reason(AuditAnswer answer, AuditAnswer.OfClaim claim, String worst, String ordinary) {
        Publication publication = answer.publication();
        Publication.Figure figure = publication.figure(claim.claim().figure());
        return switch (claim.graded().reason()) {
            case FIGURES_DISAGREE -> "what is published about “" + figure.name() + "” does not go together, as is told below, and which "
                    + "part of it is right is open.";
            case FIGURES_FALL_SHORT -> "the printed figures come to " + DifferenceWords.noun(figure) + ", "
                    + claim.claim().gain().map(gain -> "less than the " + AuditFigureWords.printed(gain) + " claimed")
                            .orElse("where a gain is claimed") + ", however they were rounded.";
            case SCATTER_UNKNOWN -> "it cannot be judged: how much such figures differ without any change is not known, as neither a "
                    + "scatter nor values of whole installs were published.";
            case RIGS_DIFFER -> "the figures are of two rigs, and rigs read 5 to 10" + Numbers.THIN
                    + "% apart (common practice, no source).";
            case OTHER_CHANGES -> "something else was changed with the part, and the figures cannot tell the two apart.";
            case STANDARDS_DIFFER -> "one correction was quoted before and another after"
                    + answer.figureOf(claim).mixes().standards().map(mix -> ", which alone gives an unchanged car "
                            + AuditFigureWords.mixed(mix, answer.figureOf(claim).mixes().air())).orElse("") + ".";
            case BAROMETERS_DIFFER -> AuditCheckWords.barometers(answer) + ".";
            case BELOW_WHAT_IS_CLAIMED, ORDINARY_SCATTER_EXPLAINS_IT, HANGS_ON_WHAT_IS_NOT_DISCLOSED,
                    WHAT_HAS_NO_SIZE_IS_NOT_DISCLOSED, NO_RETURN, STANDS_AT_THE_WORST ->
                    byEnds(claim, publication, worst, ordinary);
        };
    }

    private static String byEnds(AuditAnswer.OfClaim claim, Publication publication, String worst, String ordinary) {
        GradedClaim.Ends ends = claim.graded().ends().orElseThrow();
        Unit unit = publication.figure(claim.claim().figure()).before().unit();
        String atOrdinary = (claim.byValues() ? "by the values published one by one " : ordinary) + "the gain is "
                + interval(ends.ordinary(), unit);
        String atWorst = claim.byValues() && ends.worst().equals(ends.ordinary()) ? atOrdinary
                : "even " + worst + " the gain is " + interval(ends.worst(), unit);
        return switch (claim.graded().reason()) {
            case BELOW_WHAT_IS_CLAIMED -> atWorst + ", below what is claimed.";
            case ORDINARY_SCATTER_EXPLAINS_IT -> atOrdinary + ", which leaves "
                    + (claim.claim().gain().isPresent() ? "less than is claimed" : "zero") + " possible.";
            case HANGS_ON_WHAT_IS_NOT_DISCLOSED -> atOrdinary + "; " + worst + " it is " + interval(ends.worst(), unit) + ".";
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
