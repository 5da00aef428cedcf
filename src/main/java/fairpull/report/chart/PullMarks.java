package fairpull.report.chart;

import java.util.List;

/** How a pull is marked: by its fate, never by colour alone. */
final class PullMarks {
    private static final double TALL = 9;

    private PullMarks() {
    }

    /** A mark on the strip; {@code room} is the distance to the nearest other mark. */
    static List<Shape> onStrip(Day.Mark mark, Point centre, Role role, double room) {
        double width = Math.min(3, room * 0.5);
        return switch (mark.fate()) {
            case WARM_UP -> List.of(new Shape.Ring(new Point(centre.x(), centre.y() + 2), Math.min(2.6, room * 0.38), role, 1.3));
            case USED -> List.of(upright(centre, TALL, role, width, Shape.Dash.SOLID));
            case MISSING -> List.of(upright(centre, TALL, role, Math.min(width, 1.4), Shape.Dash.DOTTED));
            case AWAITED -> List.of(upright(lower(centre), TALL / 2, role, Math.min(width, 1.4), Shape.Dash.DOTTED));
            case EXCLUDED -> cross(centre, Math.min(4, room * 0.45));
            case ABORTED -> List.of(upright(lower(centre), TALL / 2, Role.INK, width, Shape.Dash.SOLID));
        };
    }

    /** A mark at its value; nothing for a pull that has none. */
    static List<Shape> atValue(Day.Mark mark, Point at, Role role) {
        return switch (mark.fate()) {
            case USED -> List.of(role == Role.A ? new Shape.Ring(at, 3.4, role, 1.5) : new Shape.Disc(at, 3.6, role));
            case EXCLUDED -> cross(at, 4);
            case WARM_UP, ABORTED, AWAITED, MISSING -> List.of();
        };
    }

    private static Point lower(Point centre) {
        return new Point(centre.x(), centre.y() + TALL / 2);
    }

    private static Shape upright(Point centre, double half, Role role, double width, Shape.Dash dash) {
        return new Shape.Line(new Point(centre.x(), centre.y() - half), new Point(centre.x(), centre.y() + half), role, width, dash);
    }

    private static List<Shape> cross(Point centre, double half) {
        double x = centre.x();
        double y = centre.y();
        return List.of(new Shape.Line(new Point(x - half, y - half), new Point(x + half, y + half), Role.INK, 1.6, Shape.Dash.SOLID),
                new Shape.Line(new Point(x - half, y + half), new Point(x + half, y - half), Role.INK, 1.6, Shape.Dash.SOLID));
    }
}
