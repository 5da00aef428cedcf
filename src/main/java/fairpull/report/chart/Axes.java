package fairpull.report.chart;

import fairpull.report.wording.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;

/** What every plot has around it: light horizontal lines with their figures at the left, ticks with theirs beneath. */
final class Axes {
    private static final int MOST_LINES = 6;

    private Axes() {
    }

    /** {@return the label above the panel, the lines and their figures} */
    static List<Shape> up(Bounds panel, Scale up, String label) {
        return up(panel, up, label, Drawing.WIDTH);
    }

    /** {@return the same in a drawing of another width} */
    static List<Shape> up(Bounds panel, Scale up, String label, double width) {
        List<Shape> shapes = new ArrayList<>();
        shapes.add(new Shape.Words(new Point(2, 14), LetterWidths.fit(label, Shape.Type.SMALL, width - 4), Role.SOFT,
                Shape.Type.SMALL, Shape.Anchor.START));
        shapes.addAll(lines(panel, up, MOST_LINES));
        return shapes;
    }

    /** {@return at most so many lines, each with its figure} */
    static List<Shape> lines(Bounds panel, Scale up, int most) {
        List<Shape> shapes = new ArrayList<>();
        double step = up.step(most);
        for (double value : up.multiples(step)) {
            double y = up.at(value);
            shapes.add(new Shape.Line(new Point(panel.x(), y), new Point(panel.right(), y), Role.LINE, 1, Shape.Dash.SOLID));
            shapes.add(new Shape.Words(new Point(panel.x() - 8, y + 4), figures(step).bare(value), Role.SOFT, Shape.Type.SMALL,
                    Shape.Anchor.END));
        }
        return shapes;
    }

    /** {@return at most so many ticks with their figures, each followed by what {@code unit} says} */
    static List<Shape> along(Bounds panel, Scale across, int most, DoubleFunction<String> unit) {
        return along(panel, across, most, unit, Drawing.WIDTH);
    }

    /** {@return the same in a drawing of another width} */
    static List<Shape> along(Bounds panel, Scale across, int most, DoubleFunction<String> unit, double width) {
        List<Shape> shapes = new ArrayList<>();
        double step = across.step(most);
        for (double value : across.multiples(step)) {
            double x = across.at(value);
            shapes.add(new Shape.Line(new Point(x, panel.bottom()), new Point(x, panel.bottom() + 4), Role.SOFT, 1, Shape.Dash.SOLID));
            shapes.add(new Shape.Words(new Point(x, panel.bottom() + 18), figures(step).bare(value) + unit.apply(value), Role.SOFT,
                    Shape.Type.SMALL, Shape.Anchor.MIDDLE).within(width));
        }
        return shapes;
    }

    /** {@return how much room the figures of a scale need at the left} */
    static double leftMargin(double low, double high) {
        Scale scale = new Scale(low, high, 1, 0);
        double step = scale.step(MOST_LINES);
        return 14 + scale.multiples(step).stream().mapToDouble(value -> LetterWidths.of(figures(step).bare(value), Shape.Type.SMALL)).max()
                .orElse(20);
    }

    /** As many decimals as the step between figures has. */
    private static Numbers figures(double step) {
        return Numbers.resolving(step * 10.0001, "");
    }
}
