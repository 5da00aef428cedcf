package fairpull.report.wording;

import fairpull.domain.audit.CurvePair;
import fairpull.domain.audit.CurveSeen;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.Units;

/** The published curves of a quantity as they were read, in words. */
public final class SeenCurvesWords {
    private SeenCurvesWords() {
    }

    /** {@return what is drawn, in a few words} */
    public static String title(CurvePair pair) {
        return "Published curves of " + pair.published().name() + " over engine speed, A before and B after";
    }

    /** {@return the axis of the values: quantity and unit} */
    public static String axis(CurvePair pair) {
        Unit unit = pair.published().unit();
        return unit.quantity().words() + ", " + unit.symbol();
    }

    /** {@return how the charts of read curves are to be read} */
    public static String key() {
        return "A, thin: before. B, thick and broken: after. A band around a line is what reading it off a picture leaves open.";
    }

    /** {@return where both curves run, in a sentence each, and how well they were read} */
    public static String description(CurvePair pair) {
        return runs("A", pair.before(), pair) + " " + runs("B", pair.after(), pair) + " In it: " + reading(pair) + ".";
    }

    private static String runs(String part, CurveSeen curve, CurvePair pair) {
        Unit unit = pair.published().unit();
        Numbers numbers = Numbers.resolving(Math.abs(unit.differenceFromSi(range(curve))) / 100, unit.symbol());
        return part + " runs from " + numbers.bare(unit.fromSi(curve.values().at(0))) + " to "
                + numbers.with(unit.fromSi(curve.values().at(curve.size() - 1))) + ", "
                + Math.round(Units.RPM.fromSi(curve.range().lowRadPerS())) + " to "
                + Math.round(Units.RPM.fromSi(curve.range().highRadPerS())) + " rpm, in " + curve.size() + " points.";
    }

    private static double range(CurveSeen curve) {
        return curve.values().stream().max().orElseThrow() - curve.values().stream().min().orElseThrow();
    }

    /** {@return how well the curves were read: the error of a table is nothing, that of a picture what the tracing found} */
    public static String reading(CurvePair pair) {
        if (!pair.before().isTraced() && !pair.after().isTraced()) {
            return "no reading error: the values stand in figures";
        }
        return "standard reading error, median: A " + median(pair.before(), pair) + ", B " + median(pair.after(), pair)
                + " · the band around a line is ± 2 of them";
    }

    private static String median(CurveSeen curve, CurvePair pair) {
        if (!curve.isTraced()) {
            return "none";
        }
        Unit unit = pair.published().unit();
        double[] errors = curve.valueErrors().stream().sorted().toArray();
        return Numbers.brief(unit.differenceFromSi(errors[errors.length / 2]), unit.symbol());
    }
}
