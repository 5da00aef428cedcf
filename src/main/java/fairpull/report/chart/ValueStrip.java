package fairpull.report.chart;

import fairpull.domain.plan.Part;
import fairpull.report.wording.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The values of the pulls over the clock of a day, with the mean of each install. */
final class ValueStrip {
    /** The room to the right of a panel into which figures may reach. */
    static final double ROOM_AT_RIGHT = 14;
    private static final int MOST_LINES = 5;

    private ValueStrip() {
    }

    /** How much room the figures of the axis need at the left. */
    static double leftMargin(Day day, ValueAxis axis) {
        Scale scale = scale(day, axis, 1, 0);
        return 12 + labels(scale).stream().mapToDouble(label -> LetterWidths.of(label, Shape.Type.SMALL)).max().orElse(30);
    }

    private static Scale scale(Day day, ValueAxis axis, double bottom, double top) {
        double low = ValueAxis.values(day).min().orElse(0);
        double high = ValueAxis.values(day).max().orElse(1);
        double middle = (low + high) / 2;
        double half = Math.max(axis.span(), Math.ulp(middle) * 1e4) / 2;
        // more room above than below: the figures of the means stand above the points
        return new Scale(middle - half * 1.2, middle + half * 1.5, bottom, top);
    }

    private static List<String> labels(Scale scale) {
        Numbers numbers = axisNumbers(scale);
        return scale.multiples(scale.step(MOST_LINES)).stream().map(numbers::bare).toList();
    }

    /** As many decimals as the step between lines has. */
    private static Numbers axisNumbers(Scale scale) {
        return Numbers.resolving(scale.step(MOST_LINES) * 10.0001, "");
    }

    /** The values with what they are above them. */
    static List<Shape> titled(Day day, ValueAxis axis, Scale clock, Bounds panel) {
        String label = LetterWidths.fit(axis.label(), Shape.Type.SMALL, panel.right() + ROOM_AT_RIGHT - 4);
        Shape.Words title = new Shape.Words(new Point(2, panel.y() - 10), label, Role.SOFT, Shape.Type.SMALL, Shape.Anchor.START);
        return Stream.concat(Stream.of(title.ground(), title), shapes(day, axis, clock, panel).stream()).toList();
    }

    /** The values alone. */
    static List<Shape> shapes(Day day, ValueAxis axis, Scale clock, Bounds panel) {
        List<Shape> shapes = new ArrayList<>();
        Scale scale = scale(day, axis, panel.bottom(), panel.y());
        double apart = 0;
        for (double value : scale.multiples(scale.step(MOST_LINES))) {
            double y = scale.at(value);
            // in a low panel not every line has room for its figure
            if (shapes.isEmpty() || apart - y >= Shape.Type.SMALL.size()) {
                shapes.add(new Shape.Line(new Point(panel.x(), y), new Point(panel.right(), y), Role.LINE, 1, Shape.Dash.SOLID));
                shapes.add(new Shape.Words(new Point(panel.x() - 8, y + 4), axisNumbers(scale).bare(value), Role.SOFT, Shape.Type.SMALL,
                        Shape.Anchor.END));
                apart = y;
            }
        }
        for (int place = 0; place < day.blocks().size(); place++) {
            shapes.addAll(install(day.blocks().get(place), axis, clock, scale, columnOf(day, place, clock, panel)));
        }
        return shapes;
    }

    /** {@return where the value of a pull stands in a panel; empty where it has none} */
    static Optional<Point> place(Day.Mark mark, Day day, ValueAxis axis, Scale clock, Bounds panel) {
        return mark.value().isEmpty() ? Optional.empty() : Optional.of(new Point(clock.at(mark.minutes()),
                scale(day, axis, panel.bottom(), panel.y()).at(mark.value().getAsDouble())));
    }

    /** Where the figure of a mean may stand: half-way to both neighbours. */
    private static Bounds columnOf(Day day, int place, Scale clock, Bounds panel) {
        double middle = middle(day.blocks().get(place), clock);
        double left = place == 0 ? panel.x() - 4 : (middle + middle(day.blocks().get(place - 1), clock)) / 2 + 2;
        double right = place + 1 == day.blocks().size() ? panel.right() + ROOM_AT_RIGHT - 1
                : (middle + middle(day.blocks().get(place + 1), clock)) / 2 - 2;
        return new Bounds(left, panel.y(), right - left, panel.height());
    }

    private static double middle(Day.Block block, Scale clock) {
        return (clock.at(block.start()) + clock.at(block.end())) / 2;
    }

    private static List<Shape> install(Day.Block block, ValueAxis axis, Scale clock, Scale scale, Bounds column) {
        Role role = block.part() == Part.A ? Role.A : Role.B;
        List<Shape> shapes = new ArrayList<>();
        block.mean().ifPresent(mean -> {
            double y = scale.at(mean);
            shapes.add(new Shape.Line(new Point(clock.at(block.start()), y), new Point(clock.at(block.end()), y), role, 2.2,
                    block.part() == Part.A ? Shape.Dash.SOLID : Shape.Dash.BROKEN));
        });
        double highest = Double.POSITIVE_INFINITY;
        for (Day.Mark mark : block.marks()) {
            if (mark.value().isPresent()) {
                Point at = new Point(clock.at(mark.minutes()), scale.at(mark.value().getAsDouble()));
                List<Shape> marks = PullMarks.atValue(mark, at, role);
                shapes.addAll(marks);
                highest = marks.isEmpty() ? highest : Math.min(highest, at.y());
            }
        }
        figureOfMean(block, axis, new Point(middle(block, clock), highest - 9), role, column).ifPresent(shapes::add);
        return shapes;
    }

    private static Optional<Shape> figureOfMean(Day.Block block, ValueAxis axis, Point at, Role role, Bounds column) {
        if (block.mean().isEmpty()) {
            return Optional.empty();
        }
        String text = axis.numbers().bare(block.mean().getAsDouble());
        double width = LetterWidths.of(text, Shape.Type.STRONG);
        double x = Math.max(column.x() + width / 2, Math.min(column.right() - width / 2, at.x()));
        return width > column.width() ? Optional.empty()
                : Optional.of(new Shape.Words(new Point(x, at.y()), text, role, Shape.Type.STRONG, Shape.Anchor.MIDDLE));
    }
}
