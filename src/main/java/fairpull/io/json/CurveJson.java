package fairpull.io.json;

import fairpull.domain.curve.SpeedRange;
import fairpull.domain.finding.CurveFigure;
import fairpull.domain.finding.CurveFinding;
import fairpull.domain.finding.CurvePoint;
import fairpull.domain.unit.Units;
import java.util.List;
import java.util.Locale;

/** A difference curve as JSON: speeds in rpm, everything else in the unit of the curves. */
public final class CurveJson {
    private CurveJson() {
    }

    /** {@return the finding of a table of curves} */
    public static String document(CurveFinding finding, List<String> warnings) {
        return tree(finding).texts("warnings", warnings).document();
    }

    static Tree tree(CurveFinding finding) {
        Tree tree = Tree.empty().text("unit", finding.unit().symbol()).text("speedUnit", Units.RPM.symbol())
                .number("bandwidth", finding.bandwidthRadPerS() > 0 ? rpm(finding.bandwidthRadPerS()) : Double.NaN)
                .flag("declared", finding.declared()).number("level", finding.level()).number("criticalValue", finding.criticalValue())
                .number("degreesOfFreedom", finding.degreesOfFreedom()).whole("draws", finding.draws())
                .text("refitScatter", words(finding.recordUsed()));
        tree.trees("gains", finding.gains(), CurveJson::range).trees("losses", finding.losses(), CurveJson::range)
                .number("shareShown", finding.shareShown());
        finding.transientGain().ifPresentOrElse(range -> {
            Tree transientGain = Tree.empty();
            range(transientGain, range);
            tree.tree("transientGain", transientGain);
        }, () -> tree.nothing("transientGain"));
        return tree.trees("figures", finding.figures(), CurveJson::figure).trees("points", finding.points(), CurveJson::point)
                .trees("pulls", finding.curves().resampled(), (pull, one) -> pull.text("install", one.install())
                        .text("part", one.part().name()).text("pull", one.pull()).number("low", rpm(one.lowRadPerS()))
                        .number("high", rpm(one.highRadPerS())).number("rawPeak", one.rawPeak()).number("gridPeak", one.gridPeak())
                        .whole("interpolated", one.interpolated()));
    }

    private static void range(Tree tree, SpeedRange range) {
        tree.number("low", rpm(range.lowRadPerS())).number("high", rpm(range.highRadPerS()));
    }

    private static void figure(Tree tree, CurveFigure figure) {
        tree.text("figure", words(figure.kind()))
                .number("fromSpeed", rpm(figure.speeds().lowRadPerS()))
                .number("toSpeed", rpm(figure.speeds().highRadPerS())).text("unit", figure.unit())
                .number("a", figure.meanA()).number("b", figure.meanB())
                .number("change", figure.estimate().change()).number("standardError", figure.estimate().standardError())
                .number("degreesOfFreedom", figure.estimate().degreesOfFreedom()).number("pValue", figure.estimate().pValue())
                .number("low", figure.interval().low()).number("high", figure.interval().high());
    }

    private static void point(Tree tree, CurvePoint point) {
        tree.number("speed", rpm(point.speedRadPerS())).number("a", point.meanA()).number("b", point.meanB())
                .number("change", point.estimate().change()).number("standardError", point.estimate().standardError())
                .number("degreesOfFreedom", point.estimate().degreesOfFreedom()).number("low", point.own().low())
                .number("high", point.own().high()).number("bandLow", point.band().low()).number("bandHigh", point.band().high());
    }

    static Tree speed(Tree tree, String key, double radPerS) {
        return tree.number(key, rpm(radPerS));
    }

    /** A speed came from rpm through SI: the noise of the last digits is taken off. */
    private static double rpm(double radPerS) {
        return Math.round(Units.RPM.fromSi(radPerS) * 1e6) / 1e6;
    }

    private static String words(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
