package fairpull.report.chart;

import fairpull.report.wording.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Counted pulls per install against the smallest gain that can be detected, and the limit that more pulls cannot pass. */
public final class PullsChart {
    /**
     * A number of pulls and what it finds.
     *
     * @param pulls counted pulls per install
     * @param gain the smallest gain found
     */
    public record Step(int pulls, double gain) {
    }

    private PullsChart() {
    }

    /**
     * Draws the chart.
     *
     * @param steps by number of pulls, two at least
     * @param now the number of pulls in the plan
     * @param worthwhile the gain that matters
     * @param limit what more pulls cannot pass
     * @param unit of the gains
     * @param width of the drawing
     * @param height of the drawing
     * @return the chart
     */
    public static Drawing draw(List<Step> steps, int now, double worthwhile, OptionalDouble limit, String unit, double width,
            double height) {
        int first = steps.get(0).pulls();
        int last = steps.get(steps.size() - 1).pulls();
        double most = Math.max(1.3 * worthwhile, Math.min(4 * worthwhile, steps.stream().mapToDouble(Step::gain).max().orElse(1)));
        GainPlot plot = new GainPlot(width, height, first - 0.5, last + 0.5, most, unit);
        plot.ticks(1, "pulls");
        plot.worthwhile(worthwhile);
        plot.limit(limit);
        List<Shape> shapes = new ArrayList<>(plot.shapes());
        Optional<Point> before = Optional.empty();
        for (Step step : steps) {
            if (step.gain() > 1.08 * most) {
                continue;
            }
            Point here = plot.at(step.pulls(), step.gain());
            before.ifPresent(from -> shapes.add(new Shape.Line(from, here, Role.INK, 1.2, Shape.Dash.SOLID)));
            before = Optional.of(here);
        }
        for (Step step : steps) {
            if (step.gain() <= 1.08 * most) {
                Point here = plot.at(step.pulls(), step.gain());
                shapes.add(step.pulls() == now ? new Shape.Disc(here, 7, Role.INK) : new Shape.Ring(here, 4.5, Role.INK, 1.6));
            }
        }
        return new Drawing(width, height, "Counted pulls per install against the gain that could be detected", "With " + now + " pulls "
                + steps.stream().filter(step -> step.pulls() == now).findFirst().map(step -> Numbers.resolving(step.gain(), unit)
                .with(step.gain())).orElse("nothing") + ".", shapes);
    }
}
