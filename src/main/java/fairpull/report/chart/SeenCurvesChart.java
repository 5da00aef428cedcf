package fairpull.report.chart;

import fairpull.domain.audit.CurvePair;
import fairpull.domain.audit.CurveSeen;
import fairpull.domain.unit.Unit;
import fairpull.report.chart.SpeedPlot.Pen;
import fairpull.report.wording.SeenCurvesWords;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/** The published curves before and after as they were read: A thin and drawn through, B thick and broken, the reading error as a band. */
public final class SeenCurvesChart {
    private static final double HEIGHT = 300;
    private static final double TOP = 30;
    private static final double RIGHT = 26;
    private static final double LETTERS_APART = 15;
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
        letters();
        Foot foot = new Foot(reading, width);
        shapes.addAll(foot.under(HEIGHT));
        return new Drawing(width, HEIGHT + foot.height(), SeenCurvesWords.title(pair),
                SeenCurvesWords.description(pair), shapes);
    }

    private void band(CurveSeen curve, Role role) {
        if (curve.isTraced()) {
            List<Point> around = new ArrayList<>(edge(curve, ERRORS));
            List<Point> back = new ArrayList<>(edge(curve, -ERRORS));
            Collections.reverse(back);
            around.addAll(back);
            shapes.add(new Shape.Polygon(around, role));
        }
    }

    private List<Point> edge(CurveSeen curve, double errors) {
        return Thinning.of(IntStream.range(0, curve.size()).mapToObj(place -> plot.at(curve.speedsRadPerS().at(place),
                unit.fromSi(curve.values().at(place) + errors * curve.valueErrors().at(place)))).toList());
    }

    private void line(CurveSeen curve, Pen pen) {
        shapes.addAll(plot.line(curve.size(), curve.speedsRadPerS()::at, place -> unit.fromSi(curve.values().at(place)), pen));
    }

    /** Each letter stands where its line ends; where both would meet they give way to each other. */
    private void letters() {
        Point a = end(pair.before());
        Point b = end(pair.after());
        double between = b.y() - a.y();
        double apart = Math.abs(a.x() - b.x()) > LETTERS_APART ? 0 : Math.max(0, LETTERS_APART - Math.abs(between)) / 2;
        double aside = between < 0 ? apart : -apart;
        letter("A", a, aside, Role.A);
        letter("B", b, -aside, Role.B);
    }

    private Point end(CurveSeen curve) {
        int last = curve.size() - 1;
        return plot.at(curve.speedsRadPerS().at(last), unit.fromSi(curve.values().at(last)));
    }

    private void letter(String letter, Point end, double aside, Role role) {
        shapes.add(new Shape.Words(new Point(end.x() + 6, end.y() + aside + 5), letter, role, Shape.Type.STRONG, Shape.Anchor.START));
    }
}
