package fairpull.report.chart;

import fairpull.domain.rig.RigEvidence;
import fairpull.report.wording.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;

/**
 * Install means of a rig in the order of time, as percent of the level, with centre and limits. A point beyond a limit is larger and
 * named; the change of level, where one is shown, is an upright line.
 */
public final class RigChart {
    private static final double HEIGHT = 300;
    private static final double TOP = 46;
    private static final double BOTTOM = 250;
    private static final double LEFT = 64;
    private static final double RIGHT = 650;
    private static final int MOST_LINES = 6;
    /** In percent: nothing finer is worth an axis. */
    private static final double SMALLEST_SPAN = 0.01;
    /** Lines nearer than this have one text together. */
    private static final double APART = 14;

    private final RigEvidence.Chart chart;
    private final Optional<RigEvidence.Change> change;
    private final Scale values;
    private final Scale places;
    private final Numbers numbers;
    private final List<Shape> shapes = new ArrayList<>();

    private RigChart(RigEvidence.Chart chart, Optional<RigEvidence.Change> change) {
        this.chart = chart;
        this.change = change;
        this.values = values(chart);
        this.places = new Scale(-0.5, chart.points().size() - 0.5, LEFT, RIGHT);
        this.numbers = Numbers.resolving(values.step(MOST_LINES) * 10.0001, "%");
    }

    /** {@return the chart, where there are two installs or more} */
    public static Optional<Drawing> draw(RigEvidence evidence) {
        return evidence.chart().map(chart -> new RigChart(chart, evidence.change().filter(RigEvidence.Change::looksChanged)).draw());
    }

    private static Scale values(RigEvidence.Chart chart) {
        double[] shown = DoubleStream.concat(DoubleStream.of(chart.low(), chart.high()),
                chart.points().stream().mapToDouble(RigEvidence.Point::value)).sorted().toArray();
        double low = 100 * shown[0];
        double high = 100 * shown[shown.length - 1];
        double margin = Math.max((high - low) * 0.08, SMALLEST_SPAN - (high - low));
        return new Scale(low - margin, high + margin, BOTTOM, TOP);
    }

    private Drawing draw() {
        grid();
        sessions();
        change.ifPresent(this::change);
        limits();
        points();
        Shape.Words title = words(new Point(2, 14), "install mean, % of the level", Role.SOFT, Shape.Anchor.START);
        shapes.addAll(List.of(title.ground(), title));
        String beyond = chart.beyond() == 0 ? "No point lies beyond a limit." : chart.beyond() + " beyond a limit.";
        return new Drawing(Drawing.WIDTH, HEIGHT, "Install means over time", chart.points().size() + " install means, centre "
                + figure(chart.centre()) + ", limits " + figure(chart.low()) + " and " + figure(chart.high()) + ". " + beyond
                + change.map(found -> " The level changes at session " + found.fromSession() + ".").orElse(""), shapes);
    }

    private String figure(double share) {
        return numbers.finer().with(100 * share);
    }

    private void grid() {
        for (double value : values.multiples(values.step(MOST_LINES))) {
            double y = values.at(value);
            shapes.add(line(new Point(LEFT, y), new Point(RIGHT, y), Role.LINE, 1, Shape.Dash.SOLID));
            shapes.add(words(new Point(LEFT - 8, y + 4), numbers.bare(value), Role.SOFT, Shape.Anchor.END));
        }
    }

    /** A tick between sessions, and the name of a session beneath where there is room for it. */
    private void sessions() {
        double free = 0;
        int start = 0;
        for (int place = 1; place <= chart.points().size(); place++) {
            boolean ends = place == chart.points().size() || !session(place).equals(session(start));
            if (ends) {
                if (place < chart.points().size()) {
                    double x = places.at(place - 0.5);
                    shapes.add(line(new Point(x, BOTTOM), new Point(x, BOTTOM + 8), Role.LINE, 1, Shape.Dash.SOLID));
                }
                double middle = places.at((start + place - 1) / 2.0);
                String name = LetterWidths.fit(session(start), Shape.Type.SMALL, 220);
                Shape.Words words = words(new Point(middle, BOTTOM + 24), name, Role.SOFT, Shape.Anchor.MIDDLE).within(Drawing.WIDTH);
                if (words.bounds().x() >= free) {
                    shapes.add(words);
                    free = words.bounds().right() + 10;
                }
                start = place;
            }
        }
    }

    private String session(int place) {
        return chart.points().get(place).session();
    }

    private void limits() {
        double half = chart.high() - chart.centre();
        boolean apart = values.at(100 * chart.centre()) - values.at(100 * chart.high()) > APART;
        String centre = "centre " + figure(chart.centre());
        limit(chart.centre(), apart ? centre : centre + " ± " + numbers.finer().bare(100 * half), Shape.Dash.SOLID);
        limit(chart.high(), apart ? "+3 sigma " + figure(chart.high()) : "", Shape.Dash.BROKEN);
        limit(chart.low(), apart ? "−3 sigma " + figure(chart.low()) : "", Shape.Dash.BROKEN);
    }

    private void limit(double share, String text, Shape.Dash dash) {
        double y = values.at(100 * share);
        shapes.add(line(new Point(LEFT, y), new Point(RIGHT, y), Role.GATE, 1.4, dash));
        if (!text.isEmpty()) {
            String fitting = LetterWidths.fit(text, Shape.Type.SMALL, Drawing.WIDTH - RIGHT - 10);
            shapes.add(words(new Point(RIGHT + 8, y + 4), fitting, Role.GATE, Shape.Anchor.START));
        }
    }

    private void points() {
        Optional<Point> before = Optional.empty();
        for (int place = 0; place < chart.points().size(); place++) {
            Point at = new Point(places.at(place), values.at(100 * chart.points().get(place).value()));
            before.ifPresent(from -> shapes.add(line(from, at, Role.A, 1, Shape.Dash.SOLID)));
            before = Optional.of(at);
        }
        for (int place = 0; place < chart.points().size(); place++) {
            RigEvidence.Point point = chart.points().get(place);
            Point at = new Point(places.at(place), values.at(100 * point.value()));
            shapes.add(point.beyond() ? new Shape.Disc(at, 6.5, Role.INK) : new Shape.Ring(at, 4, Role.A, 1.6));
        }
    }

    private void change(RigEvidence.Change found) {
        int place = 0;
        while (!session(place).equals(found.fromSession())) {
            place++;
        }
        double x = places.at(place - 0.5);
        shapes.add(line(new Point(x, TOP - 12), new Point(x, BOTTOM), Role.INK, 1.6, Shape.Dash.SOLID));
        String text = LetterWidths.fit("looks changed from " + found.fromSession(), Shape.Type.STRONG, Drawing.WIDTH - 4);
        shapes.add(new Shape.Words(new Point(x, TOP - 16), text, Role.INK, Shape.Type.STRONG, Shape.Anchor.MIDDLE).within(Drawing.WIDTH));
    }

    private static Shape line(Point from, Point to, Role role, double width, Shape.Dash dash) {
        return new Shape.Line(from, to, role, width, dash);
    }

    private static Shape.Words words(Point at, String text, Role role, Shape.Anchor anchor) {
        return new Shape.Words(at, text, role, Shape.Type.SMALL, anchor);
    }
}
