package fairpull.report.chart;

import java.util.ArrayList;
import java.util.List;

/** The lines of a hatched rectangle, rising to the right at 45° and cut at its edges. */
public final class HatchLines {
    private HatchLines() {
    }

    /** {@return the lines of a hatch} */
    public static List<Shape.Line> of(Shape.Hatch hatch) {
        Bounds bounds = hatch.bounds();
        List<Shape.Line> lines = new ArrayList<>();
        for (double offset = hatch.distance(); offset < bounds.width() + bounds.height(); offset += hatch.distance()) {
            double down = Math.min(offset, bounds.height());
            double across = Math.min(offset, bounds.width());
            Point from = new Point(bounds.x() + offset - down, bounds.y() + down);
            Point to = new Point(bounds.x() + across, bounds.y() + offset - across);
            lines.add(new Shape.Line(from, to, hatch.role(), 1, Shape.Dash.SOLID));
        }
        return lines;
    }
}
