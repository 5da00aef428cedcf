package fairpull.report.write;

import fairpull.report.chart.Chart;
import fairpull.report.chart.Drawing;
import fairpull.report.chart.SvgWriter;

/**
 * A chart of a page.
 *
 * @param id unique within the page
 * @param chart what it shows
 */
public record Figure(String id, Chart chart) {
    /** A chart of a fixed shape. */
    public Figure(String id, Drawing drawing) {
        this(id, Chart.fixed(drawing));
    }

    /** {@return the chart as wide as a report} */
    public Drawing drawing() {
        return chart.wide(Drawing.WIDTH);
    }

    /** {@return it as markup made by the program itself, for a page that a browser shows} */
    public String svg() {
        return SvgWriter.svg(drawing(), id);
    }
}
