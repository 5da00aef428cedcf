package fairpull.report.chart;

import fairpull.domain.audit.CurvePair;
import fairpull.domain.audit.CurveSeen;
import fairpull.domain.unit.Unit;
import fairpull.report.chart.SpeedPlot.Pen;
import fairpull.report.wording.SeenCurvesWords;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/** The published curves before and after as they were read: A thin and drawn through, B thick and broken, the reading error as a band. */
public final class SeenCurvesChart {
    private static final double HEIGHT = 300;
    private static final double TOP = 30;
    private static final double RIGHT = 26;
    private static final double ERRORS = 2;

    private final CurvePair pair;
    private final Unit unit;
    private final double width;
    private final SpeedPlot plot;
    private final List<Shape> shapes = new ArrayList<>();

    private SeenCurvesChart(CurvePair pair, double width) {
        this.pair = pair;
        this.width = width;
        this.unit = pair.published().unit();
        double[] values = DoubleStream.concat(pair.before().values().stream(), pair.after().values().stream()).map(unit::fromSi).sorted()
                .toArray();
        double lowest = values[0];
        double highest = values[values.length - 1];
        double margin = Math.max(0.04 * (highest - lowest), 1e-9 * Math.max(1, Math.abs(highest)));
        double left = Axes.leftMargin(lowest - margin, highest + margin);
        plot = new SpeedPlot(new Bounds(left, TOP, width - left - RIGHT, HEIGHT - TOP), width,
                Math.min(pair.before().range().lowRadPerS(), pair.after().range().lowRadPerS()),
                Math.max(pair.before().range().highRadPerS(), pair.after().range().highRadPerS()), lowest - margin, highest + margin);
    }

    /** {@return the chart of a pair of curves} */
    public static Chart of(CurvePair pair) {
        return width -> new SeenCurvesChart(pair, width).draw();
    }

    private Drawing draw() {
        String reading = SeenCurvesWords.reading(pair);
        shapes.addAll(plot.frame(SeenCurvesWords.axis(pair)));
        shapes.addAll(plot.speeds(plot.panel()));
        band(pair.before(), Role.A_FAINT);
        band(pair.after(), Role.B_FAINT);
        line(pair.before(), new Pen(Role.A, 1.5, Shape.Dash.SOLID));
        line(pair.after(), new Pen(Role.B, 2.4, Shape.Dash.BROKEN));
        shapes.addAll(plot.letters(end(pair.before()), end(pair.after())));
        Foot foot = new Foot(reading, width);
        shapes.addAll(foot.under(HEIGHT));
        return new Drawing(width, HEIGHT + foot.height(), SeenCurvesWords.title(pair),
                SeenCurvesWords.description(pair), shapes);
    }

    private void band(CurveSeen curve, Role role) {
        if (curve.isTraced()) {
            shapes.add(plot.band(curve.size(), curve.speedsRadPerS()::at, place -> edge(curve, place, -ERRORS),
                    place -> edge(curve, place, ERRORS), role));
        }
    }

    private double edge(CurveSeen curve, int place, double errors) {
        return unit.fromSi(curve.values().at(place) + errors * curve.valueErrors().at(place));
    }

    private void line(CurveSeen curve, Pen pen) {
        shapes.addAll(plot.line(curve.size(), curve.speedsRadPerS()::at, place -> unit.fromSi(curve.values().at(place)), pen));
    }

    private Point end(CurveSeen curve) {
        int last = curve.size() - 1;
        return plot.at(curve.speedsRadPerS().at(last), unit.fromSi(curve.values().at(last)));
    }
}
