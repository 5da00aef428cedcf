package fairpull.report.wording;

import fairpull.domain.audit.AuditAnswer;
import fairpull.domain.audit.AuditCheck;
import fairpull.domain.audit.AuditCheck.State;
import fairpull.domain.audit.Found;
import fairpull.domain.audit.FoundFigure;
import fairpull.domain.audit.Procedure;
import fairpull.domain.audit.Publication;
import fairpull.domain.audit.Quote;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What figures, curves and procedure of a publication show against each other, and what could explain it. */
final class AuditCheckWords {
    private AuditCheckWords() {
    }

    static List<Said> checks(AuditAnswer answer) {
        List<Said> said = new ArrayList<>();
        for (AuditCheck check : answer.checks()) {
            check.found().forEach(found -> said.add(new Said(head(check.code()),
                    text(check.code(), found, answer.publication()))));
        }
        List<String> clear = answer.checks().stream().filter(check -> check.state() == State.CLEAR)
                .map(check -> clear(check.code())).toList();
        if (!clear.isEmpty()) {
            said.add(new Said("Looked at and clear", String.join("; ", clear) + "."));
        }
        return said;
    }

    private static String head(AuditCheck.Code code) {
        return switch (code) {
            case FIGURES_IDENTITY, CURVES_IDENTITY -> "Power and torque";
            case VALUES_AGAINST_FIGURES -> "Figure and values";
            case VALUES_DO_NOT_SCATTER -> "Values without scatter";
            case CURVES_MEET -> "Where the curves meet";
            case TEXT_AGAINST_PLOT -> "Text and plot";
            case CURVE_PLATEAU -> "Equal values in a row";
            case CURVE_STRETCH_COPIED, CURVE_IS_MULTIPLE -> "Both curves alike";
            case GAIN_AT_START_ONLY -> "A gain at the start alone";
            case CURVE_THINNED -> "A long curve";
            case PICKED_PULLS -> "The best of several";
            case PICKED_SPEED -> "Picked afterwards";
            case UNCORRECTED_DAYS -> "Two days without correction";
            case BAROMETERS -> "Two kinds of barometer";
            case SMOOTHING -> "Two kinds of smoothing";
            case NO_RETURN -> "No way back";
            case ODDITIES -> "To be asked";
        };
    }

    private static String clear(AuditCheck.Code code) {
        return switch (code) {
            case FIGURES_IDENTITY -> "the figures of power and torque agree with each other";
            case VALUES_AGAINST_FIGURES -> "the printed figures are what their values come to";
            case VALUES_DO_NOT_SCATTER -> "values published one by one scatter";
            case CURVES_IDENTITY -> "the curves of power and torque agree with each other";
            case CURVES_MEET -> "the curves cross where their units say";
            case TEXT_AGAINST_PLOT -> "the curves show what the text says";
            case CURVE_PLATEAU -> "no equal values in a row at the top of a curve";
            case CURVE_STRETCH_COPIED -> "no stretch of a curve stands in the other";
            case CURVE_IS_MULTIPLE -> "no curve is a multiple of the other";
            case GAIN_AT_START_ONLY -> "the gain is not confined to the start of the sweep";
            case CURVE_THINNED -> "every point of the curves was looked at";
            case PICKED_PULLS -> "picking among pulls adds nothing";
            case PICKED_SPEED -> "the figure was named before the test";
            case UNCORRECTED_DAYS -> "weather is corrected for, or both were run on one day";
            case BAROMETERS -> "one kind of barometer";
            case SMOOTHING -> "one smoothing";
            case NO_RETURN -> "the state before was run again";
            case ODDITIES -> "what is said of the procedure goes together";
        };
    }

    private static String text(AuditCheck.Code code, Found found, Publication publication) {
        return switch (code) {
            case FIGURES_IDENTITY -> quoted(found) + " " + side(found) + ": power is " + ratio(found, FoundFigure.RATIO)
                    + " times torque × engine speed at " + rpm(found, FoundFigure.SPEED) + ", and rounding allows "
                    + ratio(found, FoundFigure.LEAST_RATIO) + " to " + ratio(found, FoundFigure.MOST_RATIO)
                    + ". The figures do not agree with each other" + mixUp(found) + ".";
            case VALUES_AGAINST_FIGURES -> found.about() + " " + side(found) + " is printed as " + printed(found, publication)
                    + ", and " + (found.symbols().equals("best") ? "the best of its values is " : "its values average ")
                    + within(found, FoundFigure.OF_VALUES) + "; rounding allows ±" + within(found, FoundFigure.ALLOWED) + ".";
            case VALUES_DO_NOT_SCATTER -> "every value of " + found.about() + " after " + apart(found)
                    + " the one before. Values that do not scatter cannot be tested: coarse rounding takes their "
                    + "scatter away, and so does reckoning one side from the other.";
            case CURVES_IDENTITY -> curvesIdentity(found);
            case CURVES_MEET -> meet(found);
            case TEXT_AGAINST_PLOT -> found.about() + " " + side(found) + " is printed as " + printed(found, publication)
                    + ", and the curve of " + found.symbols() + " shows " + within(found, FoundFigure.SHOWN)
                    + "; reading and rounding allow ±" + within(found, FoundFigure.ALLOWED) + ".";
            case CURVE_PLATEAU -> "the curve of " + found.about() + " " + side(found) + " stands at "
                    + Numbers.given(found.told(FoundFigure.VALUE), found.unit().symbol())
                    + " over " + count(found, FoundFigure.POINTS) + " points in a row: a limit of the instrument looks like that, and so "
                    + "do values filled in.";
            case CURVE_STRETCH_COPIED -> count(found, FoundFigure.POINTS) + " points in a row of the curves of " + found.about()
                    + " are equal to the last digit, as two pulls hardly ever are: one file read for both looks like that, and so does "
                    + "coarse rounding.";
            case CURVE_IS_MULTIPLE -> "the curve of " + found.about() + " after is the one before times "
                    + ratio(found, FoundFigure.FACTOR) + " in every point, within rounding, though two pulls differ in their noise. "
                    + "A curve reckoned from the other looks like that, and so does one pull under two corrections.";
            case GAIN_AT_START_ONLY -> "up to " + Numbers.brief(found.unit().fromSi(found.si(FoundFigure.UNTIL)), found.unit().symbol())
                    + " the gain of " + found.about() + " is " + tenths(found, FoundFigure.GAIN_AT_START)
                    + " on average, above it " + tenths(found, FoundFigure.GAIN_AFTER)
                    + ": another throttle, tip-in or load at the start does that too.";
            case CURVE_THINNED -> "of the " + count(found, FoundFigure.PUBLISHED_POINTS) + " points of the curve of " + found.about() + " "
                    + side(found) + " " + count(found, FoundFigure.POINTS) + " were looked at, evenly taken, with its highest and its "
                    + "last. What stands between them alone was not seen.";
            case PICKED_PULLS -> pickedPulls(found, publication);
            case PICKED_SPEED -> picked(found);
            case UNCORRECTED_DAYS -> "the figures are of two days and neither is corrected: air between 5 and 35" + Numbers.THIN
                    + "°C and a barometer that moves by 2.5" + Numbers.THIN + "% either way give an unchanged car up to "
                    + AuditFigureWords.whole(found.told(FoundFigure.APPARENT_GAIN)) + " (common practice, no source).";
            case BAROMETERS -> barometers(found) + ".";
            case SMOOTHING -> String.join(" before, ", found.symbols().split(" → ", 2)) + " after: smoothing moves "
                    + "peaks, and whatever is read where a curve is steep.";
            case NO_RETURN -> (found.symbols().isEmpty() ? "the state before was not run again"
                    : "the order " + found.symbols() + " does not return to the state before")
                    + ": whatever moved meanwhile, such as heat, fuel and weather, is in the difference.";
            case ODDITIES -> OddityWords.text(found, publication);
        };
    }

    private static String curvesIdentity(Found found) {
        return "along the curves " + quoted(found) + " " + side(found)
                + " power is " + AuditFigureWords.tenths(found.told(FoundFigure.RATIO) - 1)
                + " off torque × engine speed in the middle (reading allows ±"
                + AuditFigureWords.percent(found.told(FoundFigure.RATIO_ALLOWED)) + "), at worst by "
                + AuditFigureWords.percent(found.told(FoundFigure.WORST_BEYOND)) + " more than that, at "
                + rpm(found, FoundFigure.WORST_AT) + ". The curves do not agree with each other" + mixUp(found) + ".";
    }

    private static String meet(Found found) {
        return "printed in " + found.symbols().replace(", ", " and ") + ", power and torque are the same number at "
                + rpm(found, FoundFigure.EXPECTED_SPEED) + ", by the definition of both units; the curves "
                + quoted(found) + " " + side(found)
                + (Double.isNaN(found.told(FoundFigure.MET_SPEED)) ? " do not meet" : " meet at " + rpm(found, FoundFigure.MET_SPEED))
                + " (reading allows ±" + rpm(found, FoundFigure.SPEED_ALLOWED) + "). One of the axes or units may be mislabelled.";
    }

    private static String pickedPulls(Found found, Publication publication) {
        Procedure procedure = publication.procedure();
        boolean known = procedure.scatter().flatMap(stated -> stated.pull().share(publication.figure(found.about()).before())).isPresent();
        double adds = found.told(FoundFigure.ADDS);
        String size = Numbers.resolving(adds, found.unit().symbol()).with(Math.abs(adds));
        return found.about() + ": " + quoted(procedure.quoting().after()) + " after, against "
                + quoted(procedure.quoting().before()) + " before, "
                + (adds > 0 ? "adds " + size : "takes " + size + " off the gain") + " on average without any change, at "
                + (known ? "the scatter that is known." : "ordinary scatter.");
    }

    private static String quoted(Optional<Quote> quote) {
        Quote known = quote.orElseThrow();
        return known.pulls() == 1 ? "a single pull" : "the " + (known.isPicked() ? "best" : "mean") + " of " + known.pulls() + " pulls";
    }

    private static String picked(Found found) {
        double low = found.told(FoundFigure.FROM);
        String among = Double.isNaN(low) ? " of a sweep of usual length"
                : " of a sweep from " + Numbers.given(Math.rint(low)) + " to " + rpm(found, FoundFigure.TO);
        return "chance alone takes the largest difference" + among + " beyond "
                + Numbers.brief(found.told(FoundFigure.CRITICAL_VALUE), "") + " standard errors as often as one named before beyond "
                + Numbers.brief(found.told(FoundFigure.NAMED_BEFORE), "") + ": in 5" + Numbers.THIN + "% of unchanged pairs.";
    }

    /** {@return what two kinds of barometer make of an unchanged car, of a publication that says it had them; without its full stop} */
    static String barometers(AuditAnswer answer) {
        return answer.checks().stream().filter(check -> check.code() == AuditCheck.Code.BAROMETERS)
                .flatMap(check -> check.found().stream()).map(AuditCheckWords::barometers).findFirst()
                .orElse("one correction rests on the pressure at the rig, the other on a pressure reduced to sea level");
    }

    private static String barometers(Found found) {
        return "one correction rests on a pressure reduced to sea level, the other on the pressure at the rig"
                + (Double.isNaN(found.told(FoundFigure.APPARENT_GAIN)) ? "; how much that makes cannot be told without the elevation"
                : ": at " + Numbers.brief(found.told(FoundFigure.ELEVATION), "m") + " that alone gives an unchanged car "
                + tenths(found, FoundFigure.APPARENT_GAIN));
    }

    /** Names of two, each by itself: a name may hold a comma. */
    private static String quoted(Found found) {
        return "“" + String.join("” and “", found.names()) + "”";
    }

    private static String mixUp(Found found) {
        return found.symbols().isEmpty() ? "" : ". What would explain it: " + found.symbols();
    }

    private static String side(Found found) {
        return switch (found.side()) {
            case BEFORE -> "before";
            case AFTER -> "after";
            case BOTH -> "before and after";
        };
    }

    private static String ratio(Found found, FoundFigure figure) {
        return Numbers.given(Math.round(found.told(figure) * 1e4) / 1e4);
    }

    private static String rpm(Found found, FoundFigure figure) {
        return Numbers.given(Math.rint(found.told(figure)), "rpm");
    }

    /** The figure with the digits that were printed. */
    private static String printed(Found found, Publication publication) {
        Publication.Figure figure = publication.figure(found.about());
        return AuditFigureWords.printed(found.side() == AuditCheck.Side.BEFORE ? figure.before() : figure.after());
    }

    /** As fine as what rounding and reading allow, to two of its digits. */
    private static String within(Found found, FoundFigure figure) {
        return Numbers.resolving(found.told(FoundFigure.ALLOWED), found.unit().symbol()).with(found.told(figure));
    }

    private static String tenths(Found found, FoundFigure figure) {
        return AuditFigureWords.tenths(found.told(figure));
    }

    private static String apart(Found found) {
        double apart = found.told(FoundFigure.DIFFERENCE);
        return apart == 0 ? "equals"
                : "lies " + Numbers.brief(Math.abs(apart), found.unit().symbol()) + (apart < 0 ? " below" : " above");
    }

    private static String count(Found found, FoundFigure figure) {
        return String.valueOf(Math.round(found.told(figure)));
    }
}
