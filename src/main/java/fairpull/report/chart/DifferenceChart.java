package fairpull.report.chart;

import fairpull.domain.curve.SpeedRange;
import fairpull.domain.finding.CurveFinding;
import fairpull.domain.finding.CurvePoint;
import fairpull.report.chart.SpeedPlot.Pen;
import fairpull.report.wording.CurveNumbers;
import fairpull.report.wording.CurveWords;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The change over engine speed with its simultaneous band, against zero and the worthwhile gain; beneath it a black bar over the speeds
 * at which a gain is shown, an open bar where a loss is.
 */
public final class DifferenceChart {
    private static final double HEIGHT = 300;
    private static final double TOP = 30;
    private static final double RIGHT = 16;
    private static final double STRIP = 26;
    /** At the ends of a curve the band may be many times as wide as elsewhere; the rest should still be legible. */
    private static final double MOST_HALF_WIDTHS = 3;

    private final CurveFinding curve;
    private final OptionalDouble worthwhile;
    private final String settings;
    private final double width;
    private final CurveNumbers numbers;
    private final SpeedPlot plot;
    private final List<Shape> shapes = new ArrayList<>();

    private DifferenceChart(CurveFinding curve, OptionalDouble worthwhile, String settings, double width) {
        this.curve = curve;
        this.worthwhile = worthwhile;
        this.settings = settings;
        this.width = width;
        this.numbers = CurveNumbers.of(curve);
        double reach = MOST_HALF_WIDTHS * numbers.halfWidth();
        double low = Math.min(0, worthwhile.orElse(0));
        double high = Math.max(0, worthwhile.orElse(0));
        for (CurvePoint point : curve.points()) {
            double change = point.estimate().change();
            low = Math.min(low, Math.max(point.band().low(), change - reach));
            high = Math.max(high, Math.min(point.band().high(), change + reach));
        }
        double margin = high > low ? 0.08 * (high - low) : 1;
        double left = Axes.leftMargin(low - margin, high + margin);
        this.plot = new SpeedPlot(new Bounds(left, TOP, width - left - RIGHT, HEIGHT - TOP), width, curve.curves().grid().firstRadPerS(),
                curve.curves().grid().lastRadPerS(), low - margin, high + margin);
    }

    /**
     * {@return the chart}
     *
     * @param worthwhile the worthwhile gain, negative where less is better
     * @param settings what stands at its foot
     */
    public static Chart of(CurveFinding curve, OptionalDouble worthwhile, String settings) {
        return width -> new DifferenceChart(curve, worthwhile, settings, width).draw();
    }

    private Drawing draw() {
        Stretches.of(curve).forEach(this::band);
        shapes.addAll(plot.frame(CurveWords.changeAxis(curve)));
        shapes.add(across(0, Role.INK, 1.4, Shape.Dash.SOLID));
        worthwhile.ifPresent(gain -> shapes.add(across(gain, Role.GATE, 1.2, Shape.Dash.BROKEN)));
        for (List<CurvePoint> stretch : Stretches.of(curve)) {
            shapes.addAll(plot.line(stretch.size(), place -> stretch.get(place).speedRadPerS(),
                    place -> stretch.get(place).estimate().change(), new Pen(Role.B, 2.2, Shape.Dash.SOLID)));
        }
        labels();
        Bounds strip = new Bounds(plot.panel().x(), HEIGHT, plot.panel().width(), STRIP);
        shownRanges(strip);
        shapes.addAll(plot.speeds(strip));
        Foot foot = new Foot(settings, width);
        shapes.addAll(foot.under(strip.bottom()));
        return new Drawing(width, strip.bottom() + foot.height(), CurveWords.changeTitle(curve),
                CurveWords.ranges(curve), shapes);
    }

    private Shape across(double value, Role role, double thick, Shape.Dash dash) {
        double y = plot.y(value);
        return new Shape.Line(new Point(plot.panel().x(), y), new Point(plot.panel().right(), y), role, thick, dash);
    }

    private void band(List<CurvePoint> stretch) {
        shapes.add(plot.band(stretch.size(), place -> stretch.get(place).speedRadPerS(), place -> stretch.get(place).band().low(),
                place -> stretch.get(place).band().high(), Role.BAND));
    }

    /** The largest change in the better direction at its point, the band and the worthwhile gain where there is room. */
    private void labels() {
        Comparator<CurvePoint> bySize = Comparator.comparingDouble(point -> Math.abs(point.estimate().change()));
        CurvePoint largest = curve.points().stream().max(bySize).orElseThrow();
        Point at = plot.at(largest.speedRadPerS(), largest.estimate().change());
        shapes.add(new Shape.Disc(at, 4, Role.B));
        String text = LetterWidths.fit(numbers.signed(largest.estimate().change()) + " at " + CurveNumbers.rpm(largest.speedRadPerS()),
                Shape.Type.STRONG, plot.panel().width());
        boolean up = largest.estimate().change() > 0;
        Shape.Words label = inPanel(new Shape.Words(new Point(at.x(), up ? at.y() - 11 : at.y() + 21), text, Role.B, Shape.Type.STRONG,
                Shape.Anchor.MIDDLE));
        shapes.add(label);
        worthwhile.ifPresent(gain -> worthwhileLabel(gain, label));
    }

    /** Moved sideways so far that it covers no figure of the axis. */
    private Shape.Words inPanel(Shape.Words words) {
        Shape.Words within = words.within(width);
        double missing = Math.max(0, plot.panel().x() - within.bounds().x());
        return new Shape.Words(new Point(within.at().x() + missing, within.at().y()), within.text(), within.role(), within.type(),
                within.anchor());
    }

    /** At that end of the line from which the curve keeps farther away. */
    private void worthwhileLabel(double gain, Shape.Words taken) {
        double line = plot.y(gain);
        double y = gain > 0 ? line - 6 : line + 15;
        String text = CurveWords.worthwhile(gain, curve);
        Shape.Words left = new Shape.Words(new Point(plot.panel().x() + 4, y), text, Role.GATE, Shape.Type.SMALL, Shape.Anchor.START);
        Shape.Words right = new Shape.Words(new Point(plot.panel().right() - 4, y), text, Role.GATE, Shape.Type.SMALL, Shape.Anchor.END);
        boolean toLeft = clearance(left) >= clearance(right);
        Shape.Words first = toLeft ? left : right;
        Shape.Words second = toLeft ? right : left;
        shapes.add(first.bounds().overlaps(taken.bounds()) ? second : first);
    }

    private double clearance(Shape.Words words) {
        Bounds bounds = words.bounds();
        double middle = bounds.y() + bounds.height() / 2;
        return curve.points().stream().filter(point -> plot.x(point.speedRadPerS()) >= bounds.x() - 10
                && plot.x(point.speedRadPerS()) <= bounds.right() + 10)
                .mapToDouble(point -> Math.abs(plot.y(point.estimate().change()) - middle)).min().orElse(Double.POSITIVE_INFINITY);
    }

    private void shownRanges(Bounds strip) {
        List<Shape.Words> labels = new ArrayList<>();
        curve.gains().forEach(range -> {
            shapes.add(new Shape.Area(bar(range, strip), 0, Role.INK));
            labels.add(label(range, "gain shown ", strip));
        });
        curve.losses().forEach(range -> {
            shapes.add(new Shape.Frame(bar(range, strip), 0, Role.INK, 1.4));
            labels.add(label(range, "loss shown ", strip));
        });
        if (labels.isEmpty()) {
            labels.add(new Shape.Words(new Point(strip.middle(), strip.y() + 15), CurveWords.nothingShown(), Role.SOFT,
                    Shape.Type.SMALL, Shape.Anchor.MIDDLE));
        }
        Shape.Words last = null;
        for (Shape.Words words : labels.stream().sorted(Comparator.comparingDouble(words -> words.at().x())).toList()) {
            if (last == null || last.bounds().right() + 8 < words.bounds().x()) {
                shapes.add(words);
                last = words;
            }
        }
    }

    private Bounds bar(SpeedRange range, Bounds strip) {
        double from = plot.x(range.lowRadPerS());
        double length = Math.max(3, plot.x(range.highRadPerS()) - from);
        return new Bounds(Math.min(from, strip.right() - length), strip.bottom() - 7, length, 5);
    }

    private Shape.Words label(SpeedRange range, String what, Bounds strip) {
        return new Shape.Words(new Point(bar(range, strip).middle(), strip.y() + 15), what + CurveNumbers.range(range), Role.INK,
                Shape.Type.SMALL, Shape.Anchor.MIDDLE).within(width);
    }
}
