package fairpull.report.chart;

/**
 * A chart in the width that there is for it: the plot grows narrower, its type keeps its size. A report draws every one as wide as
 * {@link Drawing#WIDTH}.
 */
@FunctionalInterface
public interface Chart {
    /** The narrowest width in which every chart stays legible. */
    double NARROWEST = 460;

    /** {@return the chart in a width of {@link #NARROWEST} at least; one of a fixed shape answers as it is} */
    Drawing wide(double width);

    /** {@return a chart of a fixed shape} */
    static Chart fixed(Drawing drawing) {
        return width -> drawing;
    }
}
