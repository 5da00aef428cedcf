package fairpull.report.chart;

import fairpull.domain.finding.Estimate;
import fairpull.domain.finding.Finding;
import fairpull.domain.finding.Interval;
import fairpull.report.wording.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;

/** The change with its interval, against zero and the zone in which no change would matter. */
public final class IntervalChart {
    private static final double HEIGHT = 140;
    private static final double TOP = 44;
    private static final double BAR = 68;
    private static final double BOTTOM = 92;
    private static final double MARGIN = 24;

    private final Finding finding;
    private final Estimate estimate;
    private final Interval interval;
    private final Numbers numbers;
    private final double width;
    private final Scale scale;
    private final List<Shape> shapes = new ArrayList<>();

    private IntervalChart(Finding finding, Estimate estimate, Interval interval, double width) {
        this.finding = finding;
        this.estimate = estimate;
        this.interval = interval;
        this.numbers = Numbers.of(finding);
        this.width = width;
        this.scale = scale(finding, estimate, interval, width);
    }

    /** {@return the chart, where there is an interval} */
    public static Optional<Chart> of(Finding finding) {
        return finding.interval().flatMap(interval -> finding.estimate()
                .map(estimate -> width -> new IntervalChart(finding, estimate, interval, width).draw()));
    }

    private static Scale scale(Finding finding, Estimate estimate, Interval interval, double width) {
        double gain = finding.settings().worthwhileGain().orElse(0);
        double reach = DoubleStream.of(estimate.change() - interval.low(), interval.high() - estimate.change())
                .filter(Double::isFinite).max().orElse(1);
        double low = DoubleStream.of(0, -gain, Double.isInfinite(interval.low()) ? estimate.change() - reach : interval.low()).min()
                .orElseThrow();
        double high = DoubleStream.of(0, gain, Double.isInfinite(interval.high()) ? estimate.change() + reach : interval.high()).max()
                .orElseThrow();
        double margin = high > low ? (high - low) * 0.06 : 1;
        return new Scale(low - margin, high + margin, MARGIN, width - MARGIN);
    }

    private Drawing draw() {
        finding.settings().worthwhileGain().ifPresent(this::zone);
        double zero = scale.at(0);
        shapes.add(new Shape.Line(new Point(zero, TOP - 4), new Point(zero, BOTTOM + 4), Role.INK, 1.4, Shape.Dash.SOLID));
        bar();
        shapes.addAll(figures());
        shapes.addAll(edges());
        shapes.add(words(new Point(2, HEIGHT - 6), "← less with B", Role.SOFT, Shape.Anchor.START));
        shapes.add(words(new Point(width - 2, HEIGHT - 6), "more with B →", Role.SOFT, Shape.Anchor.END));
        String level = Numbers.level(interval.level());
        return new Drawing(width, HEIGHT, "Change B − A with its " + level + " interval",
                "Change " + numbers.signed(estimate.change()) + ", interval " + numbers.signedBare(interval.low()) + " … "
                        + numbers.signed(interval.high()) + "."
                        + (finding.settings().worthwhileGain().isPresent() ? " Worthwhile gain " + gainText() + "." : ""), shapes);
    }

    private String gainText() {
        return Numbers.given(finding.settings().worthwhileGain().orElse(0), finding.unit());
    }

    private void zone(double gain) {
        Bounds zone = new Bounds(scale.at(-gain), TOP, scale.at(gain) - scale.at(-gain), BOTTOM - TOP);
        shapes.add(new Shape.Area(zone, 0, Role.GATE_FILL));
        for (double edge : new double[] {zone.x(), zone.right()}) {
            shapes.add(new Shape.Line(new Point(edge, TOP), new Point(edge, BOTTOM), Role.GATE, 1.2, Shape.Dash.BROKEN));
        }
        shapes.add(within(words(new Point(zone.middle(), 14), "smaller than worthwhile", Role.GATE, Shape.Anchor.MIDDLE)));
    }

    private void bar() {
        boolean openLeft = Double.isInfinite(interval.low());
        boolean openRight = Double.isInfinite(interval.high());
        double from = openLeft ? MARGIN : scale.at(interval.low());
        double to = openRight ? width - MARGIN : scale.at(interval.high());
        shapes.add(new Shape.Line(new Point(from, BAR), new Point(to, BAR), Role.B, 5, Shape.Dash.SOLID));
        if (openLeft) {
            shapes.add(arrow(from, -14));
        }
        if (openRight) {
            shapes.add(arrow(to, 14));
        }
        shapes.add(new Shape.Disc(new Point(scale.at(estimate.change()), BAR), 8, Role.B));
    }

    private static Shape arrow(double x, double length) {
        return new Shape.Polygon(List.of(new Point(x, BAR - 8), new Point(x + length, BAR), new Point(x, BAR + 8)), Role.B);
    }

    /** The estimate and both ends above the bar; all in one text where they would run into each other, the estimate alone without room. */
    private List<Shape.Words> figures() {
        double y = TOP - 10;
        Shape.Words middle = within(new Shape.Words(new Point(scale.at(estimate.change()), y), numbers.signed(estimate.change()), Role.B,
                Shape.Type.STRONG, Shape.Anchor.MIDDLE));
        List<Shape.Words> apart = new ArrayList<>(List.of(middle));
        DoubleStream.of(interval.low(), interval.high()).filter(Double::isFinite).forEach(end -> apart.add(within(
                words(new Point(scale.at(end), y), numbers.signedBare(end), Role.B, Shape.Anchor.MIDDLE))));
        if (clear(apart)) {
            return apart;
        }
        String all = numbers.signed(estimate.change()) + " (" + numbers.signedBare(interval.low()) + " … "
                + numbers.signedBare(interval.high()) + ")";
        boolean fits = LetterWidths.of(all, Shape.Type.STRONG) <= width;
        return List.of(fits ? within(new Shape.Words(middle.at(), all, Role.B, Shape.Type.STRONG, Shape.Anchor.MIDDLE)) : middle);
    }

    /** Zero and the ends of the zone beneath; beside each other, or in one text where there is no room. */
    private List<Shape.Words> edges() {
        double y = BOTTOM + 18;
        Shape.Words zero = words(new Point(scale.at(0), y), "0", Role.SOFT, Shape.Anchor.MIDDLE);
        if (finding.settings().worthwhileGain().isEmpty()) {
            return List.of(zero);
        }
        double gain = finding.settings().worthwhileGain().getAsDouble();
        List<Shape.Words> centred = List.of(zero,
                within(words(new Point(scale.at(-gain), y), "−" + gainText(), Role.GATE, Shape.Anchor.MIDDLE)),
                within(words(new Point(scale.at(gain), y), "+" + gainText(), Role.GATE, Shape.Anchor.MIDDLE)));
        return clear(centred) ? centred
                : List.of(within(words(zero.at(), "0 ± " + gainText(), Role.GATE, Shape.Anchor.MIDDLE)));
    }

    private static Shape.Words words(Point at, String text, Role role, Shape.Anchor anchor) {
        return new Shape.Words(at, text, role, Shape.Type.SMALL, anchor);
    }

    private static boolean clear(List<Shape.Words> words) {
        for (int one = 0; one < words.size(); one++) {
            for (int other = one + 1; other < words.size(); other++) {
                Bounds bounds = words.get(other).bounds();
                if (words.get(one).bounds().overlaps(new Bounds(bounds.x() - 4, bounds.y(), bounds.width() + 8, bounds.height()))) {
                    return false;
                }
            }
        }
        return true;
    }

    /** The same words, moved so far that they are not cut. */
    private Shape.Words within(Shape.Words words) {
        return words.within(width);
    }
}
