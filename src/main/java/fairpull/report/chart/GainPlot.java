package fairpull.report.chart;

import fairpull.report.wording.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** The frame of a plot of detectable gain: zero at its foot, the worthwhile gain and the limit as lines with their names. */
final class GainPlot {
    private static final int MOST_LINES = 6;
    private static final int MOST_TICKS = 9;
    private static final double TOP = 18;
    private static final double BOTTOM = 34;
    private static final double RIGHT = 14;

    private final double width;
    private final double height;
    private final String unit;
    private final Scale across;
    private final Scale up;
    private final List<Shape> shapes = new ArrayList<>();

    /** A frame from {@code from} to {@code to} across and from 0 to {@code most} up. */
    GainPlot(double width, double height, double from, double to, double most, String unit) {
        this.width = width;
        this.height = height;
        this.unit = unit;
        Scale room = new Scale(0, most * 1.08, height - BOTTOM, TOP);
        double step = room.step(MOST_LINES);
        double left = 12 + room.multiples(step).stream().mapToDouble(value -> LetterWidths.of(figure(step, value), Shape.Type.SMALL)).max()
                .orElse(30);
        this.up = room;
        this.across = new Scale(from, to, left, width - RIGHT);
        for (double value : up.multiples(step)) {
            double y = up.at(value);
            shapes.add(new Shape.Line(new Point(left, y), new Point(width - RIGHT, y), Role.LINE, 1, Shape.Dash.SOLID));
            shapes.add(words(left - 8, y + 4, figure(step, value), Role.SOFT, Shape.Anchor.END));
        }
    }

    private String figure(double step, double value) {
        return Numbers.resolving(step * 10.0001, unit).with(value);
    }

    Point at(double x, double gain) {
        return new Point(across.at(x), up.at(gain));
    }

    List<Shape> shapes() {
        return shapes;
    }

    /** Figures along the foot, each with what it counts. */
    void ticks(double factor, String counted) {
        Scale scale = new Scale(across.from() * factor, across.to() * factor, across.start(), across.end());
        double step = Math.max(counted.isEmpty() ? 0 : 1, scale.step(MOST_TICKS));
        for (double value : scale.multiples(step)) {
            shapes.add(words(scale.at(value), height - BOTTOM + 18, Numbers.given(value) + Numbers.THIN + counted, Role.SOFT,
                    Shape.Anchor.MIDDLE).within(width));
        }
    }

    /** The gain that matters. */
    void worthwhile(double gain) {
        line(gain, "worthwhile gain " + Numbers.given(gain, unit), Role.GATE, Shape.Dash.BROKEN, -6);
    }

    /** What more pulls cannot pass. */
    void limit(OptionalDouble limit) {
        limit.ifPresent(gain -> line(gain, "more pulls cannot pass " + Numbers.resolving(gain, unit).with(gain), Role.B,
                Shape.Dash.DOTTED, 14));
    }

    private void line(double gain, String text, Role role, Shape.Dash dash, double below) {
        if (gain > up.to()) {
            return;
        }
        double y = up.at(gain);
        shapes.add(new Shape.Line(new Point(across.start(), y), new Point(across.end(), y), role, 1.4, dash));
        Shape.Words name = words(across.end(), y + below, text, role, Shape.Anchor.END);
        shapes.add(name.ground());
        shapes.add(name);
    }

    static Shape.Words words(double x, double y, String text, Role role, Shape.Anchor anchor) {
        return new Shape.Words(new Point(x, y), text, role, Shape.Type.SMALL, anchor);
    }
}
