package fairpull.report.chart;

import fairpull.domain.heat.SoakAnswer;
import fairpull.domain.heat.SoakPlan.PullStart;
import fairpull.domain.plan.Part;
import fairpull.domain.unit.Units;
import fairpull.report.wording.HeatNumbers;
import java.util.ArrayList;
import java.util.List;

/** The temperature at which each pull of a day starts, against the gate about the reference pull. */
public final class StartTemperatureChart {
    private static final double HEIGHT = 220;
    private static final double TOP = 52;
    private static final double BOTTOM = 28;
    private static final double RIGHT = 12;
    /** With more installs their names would run into one another; the order stands in the text. */
    private static final int MOST_NAMED = 16;

    private StartTemperatureChart() {
    }

    /** {@return the chart of the planned day} */
    public static Drawing draw(SoakAnswer answer) {
        List<PullStart> pulls = answer.plan().pulls();
        double tolerance = answer.question().toleranceK();
        double reference = pulls.stream().filter(pull -> !pull.warmUp()).findFirst().orElseThrow().riseK();
        double highest = Math.max(reference + tolerance, pulls.stream().mapToDouble(PullStart::riseK).max().orElseThrow()) * 1.08;
        double lowest = Math.min(0, reference - tolerance);
        double minutes = Units.MINUTE.fromSi(pulls.get(pulls.size() - 1).timeS() + answer.question().day().intervalS());
        double left = Axes.leftMargin(lowest, highest);
        Bounds panel = new Bounds(left, TOP, Drawing.WIDTH - left - RIGHT, HEIGHT - TOP - BOTTOM);
        TimePlot plot = new TimePlot(panel, minutes, lowest, highest);
        Point upper = plot.at(0, reference + tolerance);
        Point lower = plot.at(minutes, reference - tolerance);
        List<Shape> shapes = new ArrayList<>();
        shapes.add(new Shape.Area(new Bounds(upper.x(), upper.y(), lower.x() - upper.x(), lower.y() - upper.y()), 0, Role.GATE_FILL));
        shapes.addAll(plot.frame("start of each pull above ambient, K"));
        for (double y : new double[] {upper.y(), lower.y()}) {
            shapes.add(new Shape.Line(new Point(upper.x(), y), new Point(lower.x(), y), Role.GATE, 1.2, Shape.Dash.BROKEN));
        }
        shapes.addAll(plot.minutes());
        shapes.addAll(installs(pulls, plot, panel));
        pulls.forEach(pull -> shapes.add(mark(pull, plot)));
        return new Drawing(Drawing.WIDTH, HEIGHT, "Start temperature of every pull",
                "The reference pull starts " + HeatNumbers.kelvin(reference) + " above ambient; the gate is "
                        + HeatNumbers.kelvin(tolerance) + " to each side.", shapes);
    }

    private static List<Shape> installs(List<PullStart> pulls, TimePlot plot, Bounds panel) {
        List<Shape> shapes = new ArrayList<>();
        int last = pulls.get(pulls.size() - 1).install();
        if (last >= MOST_NAMED) {
            return shapes;
        }
        for (int place = 0; place <= last; place++) {
            int install = place;
            List<PullStart> own = pulls.stream().filter(pull -> pull.install() == install).toList();
            double middle = (x(plot, own.get(0)) + x(plot, own.get(own.size() - 1))) / 2;
            shapes.add(new Shape.Words(new Point(middle, panel.y() - 12), own.get(0).part().name() + number(pulls, own.get(0)),
                    role(own.get(0).part()), Shape.Type.STRONG, Shape.Anchor.MIDDLE).within(Drawing.WIDTH));
        }
        return shapes;
    }

    private static long number(List<PullStart> pulls, PullStart first) {
        return pulls.stream().filter(pull -> pull.part() == first.part() && pull.install() <= first.install())
                .map(PullStart::install).distinct().count();
    }

    private static Shape mark(PullStart pull, TimePlot plot) {
        Point at = plot.at(Units.MINUTE.fromSi(pull.timeS()), pull.riseK());
        return pull.warmUp() ? new Shape.Ring(at, 4, role(pull.part()), 1.6) : new Shape.Disc(at, 4, role(pull.part()));
    }

    private static double x(TimePlot plot, PullStart pull) {
        return plot.at(Units.MINUTE.fromSi(pull.timeS()), 0).x();
    }

    private static Role role(Part part) {
        return part == Part.A ? Role.A : Role.B;
    }
}
