package fairpull.report.chart;

import fairpull.domain.rig.RigEvidence;
import fairpull.domain.rig.TestsBeside.LayerBeside;
import fairpull.domain.rig.TestsBeside.OfTest;
import fairpull.report.wording.Numbers;
import fairpull.report.wording.RigWords;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/** One layer of scatter, test by test in the order of time, each with its interval, over the band in which the record has it. */
public final class ScatterOverTimeChart {
    private static final double HEIGHT = 210;
    private static final double TOP = 34;
    private static final double BOTTOM = 160;
    private static final double LEFT = 64;
    private static final double RIGHT = 650;
    private static final int MOST_LINES = 5;
    /** An interval that reaches farther than this many times the larger scatter is cut there: it would flatten all others. */
    private static final double FARTHEST = 2.5;

    private final LayerBeside layer;
    private final Scale values;
    private final Scale places;
    private final Numbers numbers;
    private final List<Shape> shapes = new ArrayList<>();

    private ScatterOverTimeChart(LayerBeside layer) {
        this.layer = layer;
        double most = DoubleStream.concat(DoubleStream.of(layer.record().share(), layer.share()),
                layer.tests().stream().mapToDouble(OfTest::share)).max().orElseThrow();
        double high = DoubleStream.concat(DoubleStream.of(layer.record().high()), layer.tests().stream().mapToDouble(OfTest::high)).max()
                .orElseThrow();
        this.values = new Scale(0, 100 * Math.min(high, FARTHEST * most) * 1.05, BOTTOM, TOP);
        this.places = new Scale(-0.5, layer.tests().size() - 0.5, LEFT, RIGHT);
        this.numbers = Numbers.resolving(values.step(MOST_LINES) * 10.0001, "%");
    }

    /** {@return the chart} */
    public static Drawing draw(LayerBeside layer) {
        return new ScatterOverTimeChart(layer).draw();
    }

    private Drawing draw() {
        record();
        for (double value : values.multiples(values.step(MOST_LINES))) {
            double y = values.at(value);
            shapes.add(new Shape.Line(new Point(LEFT, y), new Point(RIGHT, y), Role.LINE, 1, Shape.Dash.SOLID));
            shapes.add(words(new Point(LEFT - 8, y + 4), numbers.bare(value), Role.SOFT, Shape.Anchor.END));
        }
        double y = values.at(100 * layer.record().share());
        shapes.add(new Shape.Line(new Point(LEFT, y), new Point(RIGHT, y), Role.GATE, 1.4, Shape.Dash.SOLID));
        shapes.add(words(new Point(RIGHT + 8, y + 4), "record " + RigWords.percent(layer.record().share()), Role.GATE, Shape.Anchor.START));
        double free = 0;
        for (int place = 0; place < layer.tests().size(); place++) {
            free = test(place, free);
        }
        Shape.Words title = words(new Point(2, 14), RigWords.layer(layer.layer()) + " scatter of each test, % of the level, with its "
                + Numbers.level(RigEvidence.Pooled.LEVEL) + " interval", Role.SOFT, Shape.Anchor.START);
        shapes.add(title);
        return new Drawing(Drawing.WIDTH, HEIGHT, RigWords.layer(layer.layer()) + " scatter of each test over time",
                layer.tests().size() + " tests, together " + RigWords.percent(layer.share()) + "; the record says "
                        + RigWords.percent(layer.record().share()) + ", " + RigWords.interval(layer.record()) + ".", shapes);
    }

    private void record() {
        double top = values.at(Math.min(values.to(), 100 * layer.record().high()));
        Bounds band = new Bounds(LEFT, top, RIGHT - LEFT, values.at(100 * layer.record().low()) - top);
        shapes.add(new Shape.Area(band, 0, Role.GATE_FILL));
    }

    /** Draws one test, and its day beneath where there is room right of {@code free}; returns where there is room then. */
    private double test(int place, double free) {
        OfTest test = layer.tests().get(place);
        double x = places.at(place);
        Point top = new Point(x, values.at(Math.min(values.to(), 100 * test.high())));
        // a test has few degrees of freedom: its interval stays behind the points, which together carry what can be said
        shapes.add(new Shape.Line(top, new Point(x, values.at(100 * test.low())), Role.A_FAINT, 1.2,
                test.share() > 0 ? Shape.Dash.SOLID : Shape.Dash.DOTTED));
        shapes.add(new Shape.Ring(new Point(x, values.at(100 * test.share())), 4, Role.A, 1.6));
        String name = LetterWidths.fit(test.session(), Shape.Type.SMALL, 220);
        Shape.Words day = words(new Point(x, BOTTOM + 22), name, Role.SOFT, Shape.Anchor.MIDDLE).within(Drawing.WIDTH);
        if (day.bounds().x() < free) {
            return free;
        }
        shapes.add(day);
        return day.bounds().right() + 10;
    }

    private static Shape.Words words(Point at, String text, Role role, Shape.Anchor anchor) {
        return new Shape.Words(at, text, role, Shape.Type.SMALL, anchor);
    }
}
