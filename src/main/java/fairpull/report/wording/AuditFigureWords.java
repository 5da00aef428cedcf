package fairpull.report.wording;

import fairpull.domain.air.AirState;
import fairpull.domain.audit.AuditAnswer;
import fairpull.domain.audit.BudgetTerm;
import fairpull.domain.audit.Printed;
import fairpull.domain.audit.Publication;
import fairpull.domain.audit.ScatterRange;
import fairpull.domain.audit.ScatterShares;
import fairpull.domain.audit.StandardsMixed;
import fairpull.domain.audit.TypeErrors;
import java.util.ArrayList;
import java.util.List;

/** What each published figure can show: chance alone, what explains it, what but the part moves it. */
final class AuditFigureWords {
    /** What is smaller, as a share of the figure, is the noise of sums: no rig tells it. */
    private static final double NOTHING = 1e-6;
    private static final double PERCENT = 100;
    private static final double PASCALS = 100;

    private AuditFigureWords() {
    }

    static List<Said> figures(AuditAnswer answer) {
        List<Said> said = new ArrayList<>();
        for (AuditAnswer.OfFigure figure : answer.figures()) {
            said.add(new Said(figure.figure().name(), difference(figure.figure())));
            figure.test().ifPresent(test -> said.add(new Said(test.paired() ? "Paired t test of its values" : "t test of its values",
                    "t = " + Numbers.brief(test.t(), "") + " with " + Numbers.withDegreesOfFreedom(test.degreesOfFreedom()) + ", "
                            + Numbers.p(test.pValue()) + ".")));
            figure.chance().tippingPull().ifPresent(tipping -> said.add(chance(figure, tipping)));
            said.addAll(mixes(figure.mixes()));
            figure.errors().map(AuditFigureWords::errors).filter(errors -> !said.contains(errors)).ifPresent(said::add);
            if (!figure.budget().isEmpty()) {
                said.add(budget(figure));
            }
        }
        if (answer.figures().stream().anyMatch(figure -> !figure.budget().isEmpty())) {
            said.add(new Said("How to read that", "± is one standard deviation, + what is added; “at worst” is with scatter, "
                    + "strap-downs and all that is not disclosed at the worst."));
        }
        return said;
    }

    private static String difference(Publication.Figure figure) {
        String at = figure.at().filter(speed -> !figure.name().contains(speed.number()))
                .map(speed -> ", at " + printed(speed)).orElse("");
        return printed(figure.before()) + " before, " + printed(figure.after()) + " after" + at + ": " + DifferenceWords.noun(figure) + ".";
    }

    private static List<Said> mixes(AuditAnswer.Mixes mixes) {
        List<Said> said = new ArrayList<>();
        mixes.standards().ifPresent(mix -> said.add(new Said("Mixed corrections", "quoting " + PlanWords.standard(mix.before())
                + " before and " + PlanWords.standard(mix.after()) + " after gives an unchanged car " + mixed(mix, mixes.air()) + ".")));
        mixes.barometers().ifPresent(height -> said.add(new Said("Mixed barometers", "a pressure reduced to sea level before and the one "
                + "at the rig after give an unchanged car as much on a rig " + Numbers.resolving(height, "m").with(height)
                + " above the sea.")));
        return said;
    }

    /** {@return what mixed standards give an unchanged car, and in which air} */
    static String mixed(StandardsMixed mix, AirState air) {
        return tenths(mix.apparentGain()) + " at 25" + Numbers.THIN + "°C and " + Math.round(air.dryPressurePa() / PASCALS) + Numbers.THIN
                + "hPa of dry air";
    }

    private static Said errors(TypeErrors errors) {
        return new Said("If 1" + Numbers.THIN + "% were true", "such a comparison would tell it from chance (error rate 5"
                + Numbers.THIN + "%) in "
                + chance(errors.power())
                + " of cases; where it does, the gain comes out " + tooLarge(errors.exaggeration()) + " on average, and with the wrong "
                + "sign in " + chance(errors.wrongSign()) + ".");
    }

    private static String tooLarge(double times) {
        String told = Numbers.significant(times, 2);
        return told.equals("1") ? "at its true size" : told + " times too large";
    }

    private static Said chance(AuditAnswer.OfFigure figure, double tipping) {
        if (!(tipping > 0)) {
            return new Said("Chance alone", "both figures are equal: there is nothing for it to explain.");
        }
        String alone = "run twice without any change, a car differs by as much in " + chance(figure.chance().ordinary()) + " of cases at ";
        String tips = " Above a pull scatter of " + Numbers.resolving(tipping * PERCENT, "%").with(tipping * PERCENT)
                + " it is more than 5" + Numbers.THIN + "% of cases.";
        ScatterRange scatter = figure.scatter();
        if (scatter.pullStated()) {
            return new Said("Chance alone", alone + "the scatter that is known (pulls " + percent(scatter.ordinary().pull())
                    + (scatter.refitStated() ? ", refits " + percent(scatter.ordinary().refit()) : "") + ")." + tips);
        }
        return new Said("Chance alone", alone + "ordinary scatter, and in " + range(figure)
                + " over the plausible range (pull scatter " + percent(ScatterShares.LEAST.pull()) + " to "
                + percent(ScatterShares.MOST.pull()) + "; common practice, no source)." + tips);
    }

    private static String range(AuditAnswer.OfFigure figure) {
        String least = chance(figure.chance().least());
        String most = chance(figure.chance().most());
        return least.equals(most) ? least : least + " to " + most;
    }

    private static Said budget(AuditAnswer.OfFigure figure) {
        return new Said("What else moves it", String.join("; ", figure.budget().stream().map(term -> term(term, figure.figure())).toList())
                + ".");
    }

    private static String term(BudgetTerm term, Publication.Figure figure) {
        String ordinary = size(term.kind(), term.ordinary(), figure.before());
        String worst = size(term.kind(), term.worst(), figure.before());
        boolean isWorse = Math.abs(term.worst()) > Math.abs(term.ordinary()) && !ordinary.equals(worst);
        return name(term.kind()) + " " + (isWorse ? ordinary + ", at worst " + worst : ordinary);
    }

    /** Two significant digits: a scatter is not known better. */
    private static String size(BudgetTerm.Kind kind, double size, Printed level) {
        if (Math.abs(size) < NOTHING * level.si()) {
            return "none";
        }
        double printed = level.unit().differenceFromSi(size);
        Numbers numbers = Numbers.resolving(printed, level.unit().symbol());
        return kind.isShift() ? numbers.signed(printed) : "±" + numbers.with(printed);
    }

    /** {@return what moves a difference, in a few words} */
    private static String name(BudgetTerm.Kind kind) {
        return switch (kind) {
            case PULLS -> "scatter of the pulls";
            case REFIT -> "strapping down anew";
            case DAY -> "another day";
            case ROUNDING -> "rounding";
            case PICKED_BEST -> "picking the best of several";
            case PICKED_SPEED -> "picking the speed";
            case RIG -> "another rig";
            case STANDARDS -> "mixed corrections";
            case BAROMETER -> "mixed barometers";
            case WEATHER -> "weather that is not corrected for";
        };
    }

    static String chance(double share) {
        return share < 0.005 ? "less than 1" + Numbers.THIN + "%" : Numbers.chance(share);
    }

    static String percent(double share) {
        return Numbers.brief(100 * share, "%");
    }

    /** {@return a share as percent with its sign, to a tenth} */
    static String tenths(double share) {
        return Numbers.resolving(1, "%").signed(100 * share);
    }

    /** {@return a share as percent with its sign, to the percent} */
    static String whole(double share) {
        return Numbers.resolving(PERCENT / 10, "%").signed(PERCENT * share);
    }

    static String printed(Printed figure) {
        return figure.number().replace('-', '−') + Numbers.THIN + figure.unit().symbol();
    }
}
