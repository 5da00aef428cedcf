package fairpull.report.chart;

import fairpull.report.wording.Numbers;
import java.util.ArrayList;
import java.util.List;

/** The frame of a plot over minutes: light horizontal lines, figures on both axes, their units. */
final class TimePlot {
    private static final int MOST_LINES = 6;
    private static final int MOST_TICKS = 10;

    private final Bounds panel;
    private final Scale across;
    private final Scale up;

    /**
     * Makes the frame.
     *
     * @param panel where it stands
     * @param minutes the last minute shown
     * @param low the lowest value
     * @param high the highest, above {@code low}
     */
    TimePlot(Bounds panel, double minutes, double low, double high) {
        this.panel = panel;
        this.across = new Scale(0, minutes, panel.x(), panel.right());
        this.up = new Scale(low, high, panel.bottom(), panel.y());
    }

    /** {@return how much room the figures of a scale need at the left} */
    static double leftMargin(double low, double high) {
        Scale scale = new Scale(low, high, 1, 0);
        double step = scale.step(MOST_LINES);
        return 14 + scale.multiples(step).stream().mapToDouble(value -> LetterWidths.of(figures(step).bare(value), Shape.Type.SMALL)).max()
                .orElse(20);
    }

    Point at(double minutes, double value) {
        return new Point(across.at(minutes), up.at(value));
    }

    List<Shape> frame(String label) {
        List<Shape> shapes = new ArrayList<>();
        shapes.add(new Shape.Words(new Point(2, 14), LetterWidths.fit(label, Shape.Type.SMALL, Drawing.WIDTH - 4), Role.SOFT,
                Shape.Type.SMALL, Shape.Anchor.START));
        double step = up.step(MOST_LINES);
        for (double value : up.multiples(step)) {
            double y = up.at(value);
            shapes.add(new Shape.Line(new Point(panel.x(), y), new Point(panel.right(), y), Role.LINE, 1, Shape.Dash.SOLID));
            shapes.add(new Shape.Words(new Point(panel.x() - 8, y + 4), figures(step).bare(value), Role.SOFT, Shape.Type.SMALL,
                    Shape.Anchor.END));
        }
        return shapes;
    }

    List<Shape> minutes() {
        List<Shape> shapes = new ArrayList<>();
        double step = across.step(MOST_TICKS);
        for (double value : across.multiples(step)) {
            double x = across.at(value);
            shapes.add(new Shape.Line(new Point(x, panel.bottom()), new Point(x, panel.bottom() + 4), Role.SOFT, 1, Shape.Dash.SOLID));
            String figure = figures(step).bare(value) + (value == 0 ? Numbers.THIN + "min" : "");
            shapes.add(new Shape.Words(new Point(x, panel.bottom() + 18), figure, Role.SOFT, Shape.Type.SMALL,
                    Shape.Anchor.MIDDLE).within(Drawing.WIDTH));
        }
        return shapes;
    }

    /** As many decimals as the step between figures has. */
    private static Numbers figures(double step) {
        return Numbers.resolving(step * 10.0001, "");
    }
}
