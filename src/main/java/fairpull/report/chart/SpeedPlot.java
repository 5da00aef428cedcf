package fairpull.report.chart;

import fairpull.domain.unit.Units;
import fairpull.report.wording.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/** The frame of a plot over engine speed. What would leave the panel at the top or bottom stays on its edge. */
final class SpeedPlot {
    /** Engine speed in so many figures leaves each room for its unit. */
    private static final int MOST_TICKS = 7;
    private static final double ROOM_OF_TICK = 75;
    private static final double LETTERS_APART = 15;

    private final Bounds panel;
    private final double width;
    private final Scale across;
    private final Scale up;

    /**
     * Makes the frame.
     *
     * @param panel where it stands
     * @param width the width of the drawing
     * @param lowRadPerS the lowest speed shown
     * @param highRadPerS the highest, above it
     * @param low the lowest value
     * @param high the highest, above {@code low}
     */
    SpeedPlot(Bounds panel, double width, double lowRadPerS, double highRadPerS, double low, double high) {
        this.panel = panel;
        this.width = width;
        this.across = new Scale(Units.RPM.fromSi(lowRadPerS), Units.RPM.fromSi(highRadPerS), panel.x(), panel.right());
        this.up = new Scale(low, high, panel.bottom(), panel.y());
    }

    Bounds panel() {
        return panel;
    }

    double x(double radPerS) {
        return across.at(Units.RPM.fromSi(radPerS));
    }

    double y(double value) {
        return Math.max(panel.y(), Math.min(panel.bottom(), up.at(value)));
    }

    Point at(double radPerS, double value) {
        return new Point(x(radPerS), y(value));
    }

    List<Shape> frame(String label) {
        return Axes.up(panel, up, label, width);
    }

    /** {@return the speed axis along the lower edge of a strip that stands under the panel} */
    List<Shape> speeds(Bounds strip) {
        int most = (int) Math.min(MOST_TICKS, strip.width() / ROOM_OF_TICK);
        return Axes.along(strip, across, most, value -> Numbers.THIN + Units.RPM.symbol(), width);
    }

    /**
     * {@return a line over the speeds, broken where there is no value}
     *
     * @param size how many speeds
     * @param speed the speed at a place
     * @param value the value there; NaN for none
     */
    List<Shape> line(int size, IntToDoubleFunction speed, IntToDoubleFunction value, Pen pen) {
        List<Shape> shapes = new ArrayList<>();
        List<Point> stretch = new ArrayList<>();
        for (int place = 0; place <= size; place++) {
            if (place < size && Double.isFinite(value.applyAsDouble(place))) {
                stretch.add(at(speed.applyAsDouble(place), value.applyAsDouble(place)));
            } else if (!stretch.isEmpty()) {
                shapes.add(pen.through(stretch));
                stretch = new ArrayList<>();
            }
        }
        return shapes;
    }

    /** {@return what lies between two lines over the speeds} */
    Shape band(int size, IntToDoubleFunction speed, IntToDoubleFunction low, IntToDoubleFunction high, Role role) {
        List<Point> lower = IntStream.range(0, size).mapToObj(back -> size - 1 - back)
                .map(place -> at(speed.applyAsDouble(place), low.applyAsDouble(place))).toList();
        List<Point> around = new ArrayList<>(Thinning.of(IntStream.range(0, size)
                .mapToObj(place -> at(speed.applyAsDouble(place), high.applyAsDouble(place))).toList()));
        around.addAll(Thinning.of(lower));
        return new Shape.Polygon(around, role);
    }

    /** {@return a letter at the end of each line, both far enough apart to be read where the ends meet} */
    List<Shape> letters(Point a, Point b) {
        boolean meet = Math.abs(a.x() - b.x()) <= LETTERS_APART && Math.abs(a.y() - b.y()) < LETTERS_APART;
        double middle = Math.max(panel.y() + LETTERS_APART, Math.min(panel.bottom() - LETTERS_APART, (a.y() + b.y()) / 2));
        double half = a.y() < b.y() ? -LETTERS_APART / 2 : LETTERS_APART / 2;
        return List.of(letter("A", a.x(), meet ? middle + half : a.y(), Role.A), letter("B", b.x(), meet ? middle - half : b.y(), Role.B));
    }

    private static Shape letter(String letter, double x, double y, Role role) {
        return new Shape.Words(new Point(x + 6, y + 5), letter, role, Shape.Type.STRONG, Shape.Anchor.START);
    }

    /** How a line is drawn. */
    record Pen(Role role, double width, Shape.Dash dash) {
        Shape through(List<Point> points) {
            return points.size() == 1 ? new Shape.Disc(points.get(0), width, role) : new Shape.Path(Thinning.of(points), role, width, dash);
        }
    }
}
