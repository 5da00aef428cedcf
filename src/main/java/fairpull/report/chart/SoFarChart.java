package fairpull.report.chart;

import fairpull.domain.plan.Install;
import fairpull.domain.plan.Part;
import fairpull.domain.pull.PullId;
import fairpull.report.wording.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The values of a day so far: a line an install, a dot a pull, on one scale.
 *
 * @param drawing the chart
 * @param pulls in the order of their places
 * @param places where each pull stands
 */
public record SoFarChart(Drawing drawing, List<PullId> pulls, List<Point> places) {
    private static final double LINE = 28;
    private static final double LEAST_LINE = 15;
    /** So many installs have the full height; more share it. */
    private static final int ROOMY = 5;
    private static final double FOOT = 26;
    private static final double LEFT = 40;
    private static final double RIGHT = 12;
    private static final int MOST_TICKS = 4;
    private static final double MARKED = 9;

    public SoFarChart {
        pulls = List.copyOf(pulls);
        places = List.copyOf(places);
    }

    /** {@return the height of a chart of so many installs} */
    public static double height(int installs) {
        return installs * line(installs) + FOOT;
    }

    private static double line(int installs) {
        return Math.max(LEAST_LINE, Math.min(LINE, LINE * ROOMY / Math.max(1, installs)));
    }

    /**
     * Draws the chart.
     *
     * @param values by install, at least one
     * @param unit of the values
     * @param marked the pull or install that is marked; empty for none
     * @param width of the drawing
     * @return the chart
     */
    public static SoFarChart draw(Map<Install, Map<PullId, Double>> values, String unit, Optional<Marked> marked, double width) {
        double least = values.values().stream().flatMap(one -> one.values().stream()).mapToDouble(value -> value).min().orElse(0);
        double most = values.values().stream().flatMap(one -> one.values().stream()).mapToDouble(value -> value).max().orElse(1);
        double margin = most > least ? (most - least) * 0.08 : Math.max(1e-6, Math.abs(most) * 0.01);
        Scale across = new Scale(least - margin, most + margin, LEFT, width - RIGHT);
        double line = line(values.size());
        double foot = values.size() * line + 4;
        List<Shape> shapes = new ArrayList<>();
        double step = across.step(MOST_TICKS);
        for (double tick : across.multiples(step)) {
            shapes.add(new Shape.Line(new Point(across.at(tick), 2), new Point(across.at(tick), foot), Role.LINE, 1, Shape.Dash.SOLID));
            shapes.add(new Shape.Words(new Point(across.at(tick), foot + 15), Numbers.resolving(step * 10.0001, "").bare(tick), Role.SOFT,
                    Shape.Type.SMALL, Shape.Anchor.MIDDLE).within(width));
        }
        shapes.add(new Shape.Words(new Point(2, foot + 15), unit, Role.SOFT, Shape.Type.SMALL, Shape.Anchor.START));
        List<PullId> pulls = new ArrayList<>();
        List<Point> places = new ArrayList<>();
        double y = line / 2;
        for (Map.Entry<Install, Map<PullId, Double>> one : values.entrySet()) {
            Role role = one.getKey().part() == Part.A ? Role.A : Role.B;
            boolean whole = marked.filter(mark -> mark.isWhole(one.getKey().label())).isPresent();
            shapes.add(new Shape.Words(new Point(2, y + 5), one.getKey().label(), whole ? Role.INK : role, Shape.Type.STRONG,
                    Shape.Anchor.START));
            shapes.add(new Shape.Line(new Point(LEFT, y), new Point(width - RIGHT, y), whole ? Role.INK : Role.LINE, whole ? 2 : 1,
                    Shape.Dash.SOLID));
            for (Map.Entry<PullId, Double> pull : one.getValue().entrySet()) {
                Point at = new Point(across.at(pull.getValue()), y);
                if (marked.flatMap(Marked::pull).filter(pull.getKey()::equals).isPresent()) {
                    shapes.add(new Shape.Ring(at, MARKED, Role.INK, 2));
                }
                shapes.add(role == Role.A ? new Shape.Ring(at, 5, role, 1.8) : new Shape.Disc(at, 5.4, role));
                pulls.add(pull.getKey());
                places.add(at);
            }
            y += line;
        }
        return new SoFarChart(new Drawing(width, height(values.size()), "Values so far, by install", values.entrySet().stream()
                .map(one -> one.getKey().label() + ": " + one.getValue().size() + " pulls").collect(Collectors.joining("; ")), shapes),
                pulls, places);
    }
}
