package fairpull.report.chart;

import java.util.ArrayList;
import java.util.List;

/**
 * The settings of a chart in small type under its speed axis, broken where they are joined.
 *
 * @param settings joined by middle dots
 * @param width the width of the drawing
 */
record Foot(String settings, double width) {
    private static final double LINE = 15;
    private static final double AXIS = 26;

    /** {@return how much room the speed axis and the settings take beneath a plot} */
    double height() {
        return AXIS + LINE * lines().size() + 4;
    }

    /** {@return the settings, under a plot that ends there} */
    List<Shape> under(double bottom) {
        List<Shape> shapes = new ArrayList<>();
        double y = bottom + AXIS + LINE - 3;
        for (String line : lines()) {
            shapes.add(new Shape.Words(new Point(2, y), line, Role.SOFT, Shape.Type.SMALL, Shape.Anchor.START));
            y += LINE;
        }
        return shapes;
    }

    private List<String> lines() {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String part : settings.split(" · ")) {
            String longer = line.isEmpty() ? part : line + " · " + part;
            if (!line.isEmpty() && LetterWidths.of(longer, Shape.Type.SMALL) > width - 4) {
                lines.add(line);
                longer = part;
            }
            line = LetterWidths.fit(longer, Shape.Type.SMALL, width - 4);
        }
        lines.add(line);
        return lines;
    }
}
