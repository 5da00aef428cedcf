package fairpull.report.wording;

import fairpull.domain.audit.AuditAnswer;
import fairpull.domain.audit.Grade;
import fairpull.domain.audit.GradedClaim;
import fairpull.domain.audit.Printed;
import fairpull.domain.audit.Publication;
import fairpull.domain.audit.ScatterShares;
import fairpull.domain.finding.Interval;
import fairpull.domain.unit.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What published figures can and cannot show. An audit speaks of figures, never of whoever published them. */
public final class AuditWords {
    private AuditWords() {
    }

    /** {@return how the claims stand, in a few words} */
    public static String heading(AuditAnswer answer) {
        List<Grade> grades = answer.claims().stream().map(claim -> claim.graded().grade()).toList();
        return grades.isEmpty() ? "What the published figures can show" : grades.size() == 1 ? "The claim is " + grade(grades.get(0))
                : grades.stream().filter(grade -> grade == Grade.SHOWN).count() + " of " + grades.size() + " claims are shown";
    }

    /** {@return a grade in words} */
    public static String grade(Grade grade) {
        return grade.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** {@return each claim with its grade, the reason and the figures behind it} */
    public static List<Said> claims(AuditAnswer answer) {
        return answer.claims().stream().map(claim -> new Said("“" + claim.claim().words() + "”", grade(claim.graded().grade()) + ": "
                + reason(claim, answer.publication().figure(claim.claim().figure())))).toList();
    }

    private static String reason(AuditAnswer.OfClaim claim, Publication.Figure figure) {
        GradedClaim graded = claim.graded();
        Unit unit = figure.before().unit();
        if (claim.byValues()) {
            return "the values published one by one give a gain of " + interval(graded.ordinary(), unit) + ".";
        }
        String least = claim.claim().gain().isPresent() ? "what is claimed" : "zero";
        return switch (graded.reason()) {
            case FIGURES_FALL_SHORT -> "the printed figures differ by " + DifferenceWords.gain(figure)
                    + ", less than is claimed, whatever their rounding.";
            case BELOW_WHAT_IS_CLAIMED -> "at the worst plausible scatter the gain is " + interval(graded.worst(), unit)
                    + ", below what is claimed.";
            case RIGS_DIFFER -> "the figures are of two rigs, which read 5 to 10" + Numbers.THIN + "% apart (common practice, no source).";
            case OTHER_CHANGES -> "something else was changed with the part, and the figures cannot tell the two apart.";
            case STANDARDS_DIFFER -> "one correction was quoted before and another after.";
            case BAROMETERS_DIFFER -> "the pressure at the rig stands behind one correction, one reduced to sea level behind the other.";
            case ORDINARY_SCATTER_EXPLAINS_IT -> "on a rig of ordinary scatter the gain is " + interval(graded.ordinary(), unit)
                    + ", which reaches down to " + least + ".";
            case HANGS_ON_WHAT_IS_NOT_DISCLOSED -> "on a rig of ordinary scatter the gain is " + interval(graded.ordinary(), unit)
                    + "; with scatter and all that is not disclosed at their worst it is " + interval(graded.worst(), unit) + ".";
            case NO_RETURN -> "the gain is " + interval(graded.worst(), unit)
                    + " at the worst, but the state before was not run again: heat and weather that moved meanwhile are not excluded.";
            case STANDS_AT_THE_WORST -> "even with scatter and all that is not disclosed at their worst the gain is "
                    + interval(graded.worst(), unit) + ".";
        };
    }

    private static String chance(double share) {
        return share < 0.005 ? "less than 1" + Numbers.THIN + "%" : Numbers.chance(share);
    }

    private static String interval(Interval interval, Unit unit) {
        double low = unit.differenceFromSi(interval.low());
        double high = unit.differenceFromSi(interval.high());
        Numbers numbers = Numbers.resolving((high - low) / 2, unit.symbol());
        return numbers.signedBare(low) + " to " + numbers.signed(high) + " (" + Numbers.level(interval.level()) + " interval)";
    }

    /** {@return what each figure can show} */
    public static List<Said> figures(AuditAnswer answer) {
        List<Said> said = new ArrayList<>();
        for (AuditAnswer.OfFigure figure : answer.figures()) {
            Publication.Figure printed = figure.figure();
            said.add(new Said(printed.name(), printed(printed.before()) + " before, " + printed(printed.after()) + " after: "
                    + DifferenceWords.gain(printed) + " of gain."));
            figure.test().ifPresent(test -> said.add(new Said(test.paired() ? "Paired t test of its values" : "t test of its values",
                    "t = " + Numbers.brief(test.t(), "") + " with " + Numbers.withDegreesOfFreedom(test.degreesOfFreedom()) + ", "
                            + Numbers.p(test.pValue()) + ".")));
            figure.tippingPull().ifPresent(tipping -> said.add(chance(figure, tipping)));
            figure.nearestMix().ifPresent(mix -> said.add(new Said("Mixed corrections", "quoting " + mix.before().id() + " before and "
                    + mix.after().id() + " after gives an unchanged car " + percent(mix.apparentGain())
                    + " at 25" + Numbers.THIN + "°C and 990" + Numbers.THIN + "hPa of dry air.")));
            figure.errors().ifPresent(errors -> said.add(new Said("If 1" + Numbers.THIN + "% were true",
                    "such a comparison would come out in " + chance(errors.power())
                    + " of cases, then " + Numbers.brief(errors.exaggeration(), "")
                    + " times too large on average and in " + chance(errors.wrongSign()) + " with the wrong sign.")));
        }
        return said;
    }

    private static Said chance(AuditAnswer.OfFigure figure, double tipping) {
        return new Said("Chance alone", "an unchanged car differs as much in " + chance(figure.chanceAlone())
                + " of pairs at ordinary scatter, " + chance(figure.chanceLeast()) + " to " + chance(figure.chanceMost())
                + " over the plausible range (pull scatter " + percent(ScatterShares.LEAST.pull()) + " to "
                + percent(ScatterShares.MOST.pull()) + "; common practice, no source). It tips at a pull scatter of " + percent(tipping)
                + ", above which that is more than 5" + Numbers.THIN + "%.");
    }

    private static String percent(double share) {
        return Numbers.brief(100 * share, "%");
    }

    private static String printed(Printed figure) {
        return String.format(Locale.ROOT, "%." + figure.decimals() + "f", figure.value()) + Numbers.THIN + figure.unit().symbol();
    }
}
