package fairpull.report.chart;

import fairpull.domain.plan.Install;
import fairpull.domain.plan.Part;
import fairpull.report.wording.Numbers;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The values of a day so far: a line an install, a dot a pull, on one scale. */
public final class SoFarChart {
    /** The height that a line takes. */
    public static final double LINE = 30;
    private static final double FOOT = 40;
    private static final double LEFT = 44;
    private static final double RIGHT = 16;
    private static final int MOST_TICKS = 4;

    private SoFarChart() {
    }

    /** {@return the height of a chart of so many installs} */
    public static double height(int installs) {
        return installs * LINE + FOOT;
    }

    /**
     * Draws the chart.
     *
     * @param values by install, at least one
     * @param unit of the values
     * @param width of the drawing
     * @return the chart
     */
    public static Drawing draw(Map<Install, ? extends Collection<Double>> values, String unit, double width) {
        double least = values.values().stream().flatMap(Collection::stream).mapToDouble(value -> value).min().orElse(0);
        double most = values.values().stream().flatMap(Collection::stream).mapToDouble(value -> value).max().orElse(1);
        double margin = most > least ? (most - least) * 0.08 : Math.max(1e-6, Math.abs(most) * 0.01);
        Scale across = new Scale(least - margin, most + margin, LEFT, width - RIGHT);
        double foot = values.size() * LINE + 4;
        List<Shape> shapes = new ArrayList<>();
        double step = across.step(MOST_TICKS);
        for (double tick : across.multiples(step)) {
            shapes.add(new Shape.Line(new Point(across.at(tick), 2), new Point(across.at(tick), foot), Role.LINE, 1, Shape.Dash.SOLID));
            shapes.add(new Shape.Words(new Point(across.at(tick), foot + 15), Numbers.resolving(step * 10.0001, "").bare(tick), Role.SOFT,
                    Shape.Type.SMALL, Shape.Anchor.MIDDLE).within(width));
        }
        shapes.add(new Shape.Words(new Point(width - RIGHT, foot + 31), unit, Role.SOFT, Shape.Type.SMALL, Shape.Anchor.END));
        double y = LINE / 2;
        for (Map.Entry<Install, ? extends Collection<Double>> one : values.entrySet()) {
            Role role = one.getKey().part() == Part.A ? Role.A : Role.B;
            shapes.add(new Shape.Words(new Point(2, y + 5), one.getKey().label(), role, Shape.Type.STRONG, Shape.Anchor.START));
            shapes.add(new Shape.Line(new Point(LEFT, y), new Point(width - RIGHT, y), Role.LINE, 1, Shape.Dash.SOLID));
            for (double value : one.getValue()) {
                Point at = new Point(across.at(value), y);
                shapes.add(role == Role.A ? new Shape.Ring(at, 5, role, 1.8) : new Shape.Disc(at, 5.4, role));
            }
            y += LINE;
        }
        return new Drawing(width, height(values.size()), "Values so far, by install", values.entrySet().stream()
                .map(one -> one.getKey().label() + ": " + one.getValue().size() + " pulls").collect(Collectors.joining("; ")), shapes);
    }
}
