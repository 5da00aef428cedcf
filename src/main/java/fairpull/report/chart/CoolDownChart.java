package fairpull.report.chart;

import fairpull.domain.heat.CoolDownFit;
import fairpull.domain.heat.CoolDownLog;
import fairpull.domain.heat.FittedMode;
import fairpull.domain.unit.Units;
import fairpull.report.wording.HeatNumbers;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;

/** A logged cool-down with the curve fitted to it, and what the curve leaves over. */
public final class CoolDownChart {
    /** More dots than these would only be ink. */
    static final int MOST_DOTS = 300;
    private static final int SEGMENTS = 120;
    private static final double FIT_HEIGHT = 300;
    private static final double RESIDUAL_HEIGHT = 160;
    private static final double TOP = 34;
    private static final double BOTTOM = 28;
    /** The same for both, so that a residual stands beneath its reading; room for −0.002. */
    private static final double LEFT = 56;
    private static final double RIGHT = 12;

    private final CoolDownLog log;
    private final CoolDownFit fit;
    private final double minutes;
    private final int every;

    private CoolDownChart(CoolDownLog log, CoolDownFit fit) {
        this.log = log;
        this.fit = fit;
        this.minutes = Units.MINUTE.fromSi(log.spanS());
        this.every = (log.size() + MOST_DOTS - 1) / MOST_DOTS;
    }

    /** {@return the readings with the curve through them} */
    public static Drawing curve(CoolDownLog log, CoolDownFit fit) {
        return new CoolDownChart(log, fit).curve();
    }

    /** {@return the readings less the curve} */
    public static Drawing residuals(CoolDownLog log, CoolDownFit fit) {
        return new CoolDownChart(log, fit).residuals();
    }

    /** {@return how many readings stand behind one dot} */
    public static int readingsPerDot(CoolDownLog log) {
        return (log.size() + MOST_DOTS - 1) / MOST_DOTS;
    }

    private Drawing curve() {
        double highest = celsius(Math.max(log.temperaturesK().stream().max().orElseThrow(), fit.atK(0)));
        double lowest = celsius(log.temperaturesK().stream().min().orElseThrow());
        double ambient = celsius(fit.ambientK());
        boolean shown = ambient > lowest - (highest - lowest);
        double low = shown ? Math.min(lowest, ambient) : lowest;
        double margin = 0.06 * (highest - low);
        TimePlot plot = plot(low - margin, highest + margin, FIT_HEIGHT);
        List<Shape> shapes = new ArrayList<>(plot.frame(log.column() + ", °C"));
        shapes.addAll(plot.minutes());
        if (shown) {
            shapes.add(new Shape.Line(plot.at(0, ambient), plot.at(minutes, ambient), Role.INK, 1.2, Shape.Dash.BROKEN));
        }
        dots(plot, shapes, i -> celsius(log.temperaturesK().at((int) i)));
        for (int i = 0; i < SEGMENTS; i++) {
            double from = log.spanS() * i / SEGMENTS;
            double to = log.spanS() * (i + 1) / SEGMENTS;
            shapes.add(new Shape.Line(plot.at(from / 60, celsius(fit.atK(from))), plot.at(to / 60, celsius(fit.atK(to))), Role.INK, 2,
                    Shape.Dash.SOLID));
        }
        label(plot, highest, shapes);
        if (shown) {
            Shape.Words words = new Shape.Words(new Point(plot.at(0, ambient).x() + 8, plot.at(0, ambient).y() - 6),
                    "ambient " + HeatNumbers.celsius(fit.ambientK()) + (fit.ambientGiven() ? ", given" : ", fitted"), Role.INK,
                    Shape.Type.SMALL, Shape.Anchor.START);
            shapes.addAll(List.of(words.ground(), words));
        }
        return new Drawing(Drawing.WIDTH, FIT_HEIGHT, "Cool-down and fitted curve",
                log.size() + " readings; time constant " + constants() + ".", shapes);
    }

    private void label(TimePlot plot, double highest, List<Shape> shapes) {
        Point end = plot.at(minutes, highest);
        String text = (fit.modes().size() == 1 ? "time constant " : "time constants ") + constants();
        Shape.Words words = new Shape.Words(new Point(end.x(), end.y() + 12), text, Role.INK, Shape.Type.STRONG, Shape.Anchor.END);
        shapes.addAll(List.of(words.ground(), words));
    }

    private String constants() {
        return fit.modes().stream().map(FittedMode::timeConstantS).map(HeatNumbers::time).collect(Collectors.joining(" and "));
    }

    private Drawing residuals() {
        double reach = DoubleStream.concat(fit.residualsK().stream().map(Math::abs), DoubleStream.of(2 * fit.residualDeviationK(), 1e-9))
                .max().orElseThrow() * 1.1;
        TimePlot plot = plot(-reach, reach, RESIDUAL_HEIGHT);
        Point upper = plot.at(0, 2 * fit.residualDeviationK());
        Point lower = plot.at(minutes, -2 * fit.residualDeviationK());
        List<Shape> shapes = new ArrayList<>();
        shapes.add(new Shape.Area(new Bounds(upper.x(), upper.y(), lower.x() - upper.x(), lower.y() - upper.y()), 0, Role.GATE_FILL));
        shapes.addAll(plot.frame("reading − curve, K"));
        shapes.addAll(plot.minutes());
        shapes.add(new Shape.Line(plot.at(0, 0), plot.at(minutes, 0), Role.INK, 1.4, Shape.Dash.SOLID));
        dots(plot, shapes, i -> fit.residualsK().at((int) i));
        return new Drawing(Drawing.WIDTH, RESIDUAL_HEIGHT, "What the curve leaves over",
                "Standard deviation " + HeatNumbers.kelvin(fit.residualDeviationK()) + ".", shapes);
    }

    private void dots(TimePlot plot, List<Shape> shapes, DoubleUnaryOperator value) {
        for (int i = 0; i < log.size(); i += every) {
            shapes.add(new Shape.Disc(plot.at(Units.MINUTE.fromSi(log.timesS().at(i)), value.applyAsDouble(i)), 2.2, Role.A));
        }
    }

    private TimePlot plot(double low, double high, double height) {
        return new TimePlot(new Bounds(LEFT, TOP, Drawing.WIDTH - LEFT - RIGHT, height - TOP - BOTTOM), minutes, low, high);
    }

    private static double celsius(double kelvin) {
        return Units.CELSIUS.fromSi(kelvin);
    }
}
