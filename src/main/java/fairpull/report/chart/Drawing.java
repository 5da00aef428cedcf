package fairpull.report.chart;

import java.util.List;
import java.util.Objects;
import java.util.function.UnaryOperator;

/**
 * A chart as data.
 *
 * @param width of the drawing, in its own units
 * @param height of the drawing
 * @param title what it shows, in a few words
 * @param description the same in sentences, for who cannot see it
 * @param shapes in the order in which they are painted
 */
public record Drawing(double width, double height, String title, String description, List<Shape> shapes) {
    /** The width of every chart of a report. */
    public static final double WIDTH = 800;

    public Drawing {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(description, "description");
        shapes = List.copyOf(shapes);
    }

    /** {@return the same drawing with every text in other words, such as with another decimal mark} */
    public Drawing reworded(UnaryOperator<String> words) {
        List<Shape> reworded = shapes.stream().map(shape -> shape instanceof Shape.Words said
                ? new Shape.Words(said.at(), words.apply(said.text()), said.role(), said.type(), said.anchor()) : shape).toList();
        return new Drawing(width, height, words.apply(title), words.apply(description), reworded);
    }
}
