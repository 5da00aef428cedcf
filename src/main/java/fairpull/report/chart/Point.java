package fairpull.report.chart;

/**
 * A place on a drawing.
 *
 * @param x to the right
 * @param y downwards
 */
public record Point(double x, double y) {
}
