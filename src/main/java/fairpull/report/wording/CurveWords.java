package fairpull.report.wording;

import fairpull.domain.finding.CurveFigure;
import fairpull.domain.finding.CurveFinding;
import fairpull.domain.finding.CurvePoint;
import fairpull.domain.finding.Judgement;
import fairpull.domain.plan.Correction;
import fairpull.domain.plan.Measure;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** What was found over engine speed, and the words in its charts. */
public final class CurveWords {
    private CurveWords() {
    }

    /** {@return the finding over engine speed as a heading} */
    public static String heading(CurveFinding curve) {
        return "Over engine speed, " + ranges(curve).substring(0, 1).toLowerCase(Locale.ROOT) + ranges(curve).substring(1);
    }

    /** {@return where a gain or a loss is shown, in one sentence without its full stop} */
    public static String ranges(CurveFinding curve) {
        String share = Numbers.chance(curve.shareShown()) + " of the speeds compared";
        if (curve.gains().isEmpty() && curve.losses().isEmpty()) {
            return "No change is shown at any speed";
        }
        if (curve.losses().isEmpty()) {
            return "A gain is shown " + CurveNumbers.ranges(curve.gains()) + ", " + share;
        }
        String loss = "a loss " + CurveNumbers.ranges(curve.losses());
        return curve.gains().isEmpty() ? "A loss is shown " + CurveNumbers.ranges(curve.losses())
                : "A gain is shown " + CurveNumbers.ranges(curve.gains()) + " (" + share + "), and " + loss;
    }

    /** {@return what {@link #ranges} leaves out, in sentences: each of many ranges, and that a gain lies near the start alone} */
    static List<String> shown(CurveFinding curve) {
        List<String> sentences = new ArrayList<>();
        if (CurveNumbers.areMany(curve.gains())) {
            sentences.add("A gain is shown " + CurveNumbers.everyRange(curve.gains()) + ".");
        }
        if (CurveNumbers.areMany(curve.losses())) {
            sentences.add("A loss is shown " + CurveNumbers.everyRange(curve.losses()) + ".");
        }
        curve.transientGain().ifPresent(range -> sentences.add("The gain lies near the start of the sweep only ("
                + CurveNumbers.range(range) + "). A throttle that opened quicker, or a pull begun at another speed, would look the same: "
                + "compare how the pulls began before calling it power."));
        return sentences;
    }

    /** {@return what the heading rests on, in sentences} */
    public static List<String> paragraphs(CurveFinding curve) {
        CurveNumbers numbers = CurveNumbers.of(curve);
        List<String> sentences = new ArrayList<>();
        CurvePoint largest = curve.points().stream()
                .max(Comparator.comparingDouble((CurvePoint point) -> Math.abs(point.estimate().change()))).orElseThrow();
        sentences.add("The largest change is " + numbers.signed(largest.estimate().change()) + " at "
                + CurveNumbers.rpm(largest.speedRadPerS()) + ", band " + numbers.ends(largest.band()) + ". That speed was picked after "
                + "looking, so the band speaks for it, which holds for all speeds at once; the narrower interval of one speed is for a "
                + "speed that was named before the day.");
        sentences.addAll(shown(curve));
        if (!curve.declared()) {
            sentences.add("The plan names no speeds at which curves are compared: they are those that the pulls cover.");
        }
        return sentences;
    }

    /** {@return what the marks of the two curve charts mean} */
    public static String caption() {
        return "First the change, with the band that holds for all speeds at once; a black bar beneath marks the speeds at which a gain "
                + "is shown, an open bar those of a loss. Then the curves: A thin and drawn through, B thick and broken; thin lines are "
                + "installs, faint ones single pulls.";
    }

    /** {@return the settings in small type, the same at the foot of every chart} */
    public static String settings(CurveFinding curve, Judgement judgement) {
        Measure deciding = judgement.plan().question().deciding();
        String corrected = deciding.correction() == Correction.NONE ? "no correction for air"
                : PlanWords.standard(deciding.correction());
        return String.join(" · ", corrected, "bandwidth ±" + Numbers.THIN + CurveNumbers.rpm(curve.bandwidthRadPerS()),
                Numbers.level(curve.level()) + " for all speeds together", Numbers.count(curve.curves().rows().size(), "pull") + ", "
                + Numbers.count(installs(curve), "install"), SealWords.code(judgement.seal()));
    }

    static long installs(CurveFinding curve) {
        return curve.curves().rows().stream().map(row -> row.install()).distinct().count();
    }

    /** {@return the axis of the curves: quantity and unit} */
    public static String axis(CurveFinding curve) {
        return curve.unit().quantity().words() + ", " + curve.unit().symbol();
    }

    /** {@return the axis of the change} */
    public static String changeAxis(CurveFinding curve) {
        return "change in " + curve.unit().quantity().words() + ", " + FindingWords.CHANGE + ", " + curve.unit().symbol();
    }

    /** {@return the axis of what is left over} */
    public static String residualAxis(CurveFinding curve) {
        return "left over in " + curve.unit().quantity().words() + ", " + curve.unit().symbol();
    }

    /** {@return the curves in a few words} */
    public static String curvesTitle(CurveFinding curve) {
        return "Curves of A and B over engine speed, " + axis(curve);
    }

    /** {@return the curves in a sentence} */
    public static String curvesDescription(CurveFinding curve) {
        CurveNumbers numbers = CurveNumbers.of(curve);
        CurvePoint first = curve.points().get(0);
        CurvePoint last = curve.points().get(curve.points().size() - 1);
        return "A runs from " + numbers.bare(first.meanA()) + " to " + numbers.bare(last.meanA()) + ", B from "
                + numbers.bare(first.meanB()) + " to " + numbers.bare(last.meanB()) + Numbers.THIN + curve.unit().symbol() + ", "
                + CurveNumbers.bareRpm(first.speedRadPerS()) + " to " + CurveNumbers.rpm(last.speedRadPerS()) + ".";
    }

    /** {@return the difference in a few words} */
    public static String changeTitle(CurveFinding curve) {
        return "Change " + FindingWords.CHANGE + " over engine speed with its " + Numbers.level(curve.level()) + " band";
    }

    /** {@return the label of the worthwhile gain} */
    public static String worthwhile(double gain, CurveFinding curve) {
        return "worthwhile " + (gain > 0 ? "+" : "−") + Numbers.given(Math.abs(gain), curve.unit().symbol());
    }

    /** {@return what stands in place of the bar where nothing is shown} */
    public static String nothingShown() {
        return "no change is shown at any speed";
    }

    /** {@return what is left over, in a few words} */
    public static String residualTitle() {
        return "What each install leaves over, over engine speed";
    }

    /** {@return what is left over, in a sentence} */
    public static String residualDescription(CurveFinding curve) {
        return Numbers.count(installs(curve), "install") + "; pulls less the mean of their install, and each install less the mean of "
                + "its part.";
    }

    /** {@return over the figures made of the curves} */
    public static String figuresHeading() {
        return "Peak, mean and area, each judged by the same model";
    }

    /** {@return what the figures of a curve are for} */
    public static String figuresNote(CurveFinding curve) {
        return "Each interval is that of its own figure at " + Numbers.level(curve.level()) + ", not of all three at once. The "
                + "largest value stands beside the speeds at which the pulls reach it, mean and area beside those that every pull covers. "
                + "The verdict rests on the deciding measure alone.";
    }

    /** {@return a figure made of each pull's curve} */
    public static String figure(CurveFigure.Kind kind) {
        return switch (kind) {
            case PEAK -> "largest value";
            case MEAN -> "mean of the curve";
            case AREA -> "area under the curve";
        };
    }

    /** {@return the speeds that a figure comes from} */
    static String figureSpeeds(CurveFigure figure) {
        return (figure.kind() == CurveFigure.Kind.PEAK ? "reached " : "over the speeds that every pull covers, ")
                + CurveNumbers.range(figure.speeds());
    }
}
