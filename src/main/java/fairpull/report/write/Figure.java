package fairpull.report.write;

import fairpull.report.chart.Chart;
import fairpull.report.chart.Drawing;
import fairpull.report.chart.SvgWriter;

/**
 * A chart of a page.
 *
 * @param id unique within the page
 * @param chart what it shows, in any width
 * @param drawing the same as wide as a report, drawn once for page, paper and what they need to know of it
 */
public record Figure(String id, Chart chart, Drawing drawing) {
    /** A chart in any width. */
    public Figure(String id, Chart chart) {
        this(id, chart, chart.wide(Drawing.WIDTH));
    }

    /** A chart of a fixed shape. */
    public Figure(String id, Drawing drawing) {
        this(id, Chart.fixed(drawing), drawing);
    }

    /** {@return it as markup made by the program itself, for a page that a browser shows} */
    public String svg() {
        return SvgWriter.svg(drawing, id);
    }
}
