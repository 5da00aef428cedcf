package fairpull.report.chart;

import fairpull.domain.search.SearchRow;
import fairpull.report.wording.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Hours against the smallest gain that can be detected: the days that no other one beats, joined by steps, and the plan as it stands.
 *
 * @param drawing the chart
 * @param spots where each day stands on it, in the order of the front
 */
public record FrontChart(Drawing drawing, List<Point> spots) {
    private static final double MINUTES_AN_HOUR = 60;
    /** The radius of the mark of the plan as it stands. */
    private static final double MARK = 7;

    /**
     * The plan as it stands.
     *
     * @param order its letters
     * @param minutes how long it takes
     * @param gain the smallest gain that it finds
     */
    public record Now(String order, double minutes, double gain) {
    }

    public FrontChart {
        spots = List.copyOf(spots);
    }

    /**
     * Draws the front.
     *
     * @param front its days, from the shortest; one at least
     * @param worthwhile the gain that matters
     * @param unit of both
     * @param now the plan as it stands, where it can be judged
     * @param width of the drawing
     * @param height of the drawing
     * @return the chart
     */
    public static FrontChart draw(List<SearchRow> front, double worthwhile, String unit, Optional<Now> now, double width, double height) {
        double least = Math.min(front.get(0).seen().minutes(), now.map(Now::minutes).orElse(Double.POSITIVE_INFINITY));
        double most = Math.max(front.get(front.size() - 1).seen().minutes(), now.map(Now::minutes).orElse(0.0));
        double margin = Math.max(15, (most - least) * 0.06);
        double shown = Math.min(gainAtMost(front, now), 4 * worthwhile);
        GainPlot plot = new GainPlot(width, height, (least - margin) / MINUTES_AN_HOUR, (most + margin) / MINUTES_AN_HOUR,
                Math.max(shown, 1.3 * worthwhile), unit);
        plot.ticks(1, "h");
        plot.worthwhile(worthwhile);
        List<Point> spots = front.stream().map(row -> plot.at(row.seen().minutes() / MINUTES_AN_HOUR,
                Math.min(row.detectableGain(), 1.06 * Math.max(shown, 1.3 * worthwhile)))).toList();
        List<Shape> shapes = new ArrayList<>(plot.shapes());
        steps(shapes, spots);
        Optional<Shape.Disc> mark = now.map(plan -> new Shape.Disc(plot.at(plan.minutes() / MINUTES_AN_HOUR, plan.gain()), MARK, Role.INK));
        names(shapes, front, spots, mark, width);
        mark.ifPresent(shapes::add);
        String description = front.size() + " days worth choosing, from " + Numbers.duration(front.get(0).seen().minutes()) + " to "
                + Numbers.duration(front.get(front.size() - 1).seen().minutes()) + ".";
        return new FrontChart(new Drawing(width, height, "Hours on the rig against the gain that could be detected", description, shapes),
                spots);
    }

    private static double gainAtMost(List<SearchRow> front, Optional<Now> now) {
        return Math.max(front.stream().mapToDouble(SearchRow::detectableGain).max().orElse(1), now.map(Now::gain).orElse(0.0));
    }

    private static void steps(List<Shape> shapes, List<Point> spots) {
        for (int place = 1; place < spots.size(); place++) {
            Point before = spots.get(place - 1);
            Point after = spots.get(place);
            Point corner = new Point(after.x(), before.y());
            shapes.add(new Shape.Line(before, corner, Role.INK, 1.4, Shape.Dash.SOLID));
            shapes.add(new Shape.Line(corner, after, Role.INK, 1.4, Shape.Dash.SOLID));
        }
        spots.forEach(spot -> shapes.add(new Shape.Ring(spot, 4.5, Role.INK, 1.6)));
    }

    /** An order stands at the first of its days, clear of the plan's mark and of all other words; where that cannot be it is left out. */
    private static void names(List<Shape> shapes, List<SearchRow> front, List<Point> spots, Optional<Shape.Disc> mark, double width) {
        List<Bounds> taken = new ArrayList<>(mark.map(FrontChart::around).stream().toList());
        shapes.stream().filter(Shape.Words.class::isInstance).map(words -> ((Shape.Words) words).bounds()).forEach(taken::add);
        String last = "";
        for (int place = 0; place < front.size(); place++) {
            String order = front.get(place).order();
            if (!order.equals(last)) {
                beside(spots.get(place), order, width).filter(name -> taken.stream().noneMatch(name.bounds()::overlaps)).findFirst()
                        .ifPresent(name -> {
                            shapes.add(name.ground());
                            shapes.add(name);
                            taken.add(name.bounds());
                        });
            }
            last = order;
        }
    }

    /** Where the name of a day may stand, best first: above it to the right, further up over the mark, below it to the left. */
    private static Stream<Shape.Words> beside(Point spot, String order, double width) {
        return Stream.of(GainPlot.words(spot.x() + 8, spot.y() - 9, order, Role.INK, Shape.Anchor.START),
                GainPlot.words(spot.x() + 8, spot.y() - 2 * MARK - 4, order, Role.INK, Shape.Anchor.START),
                GainPlot.words(spot.x() - 9, spot.y() + 16, order, Role.INK, Shape.Anchor.END)).map(name -> name.within(width));
    }

    private static Bounds around(Shape.Disc disc) {
        return new Bounds(disc.centre().x() - disc.radius(), disc.centre().y() - disc.radius(), 2 * disc.radius(), 2 * disc.radius());
    }
}
