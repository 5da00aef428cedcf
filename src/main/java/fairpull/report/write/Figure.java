package fairpull.report.write;

import fairpull.report.chart.Drawing;
import fairpull.report.chart.SvgWriter;

/**
 * A chart of a page.
 *
 * @param id unique within the page
 * @param drawing what it shows
 */
public record Figure(String id, Drawing drawing) {
    /** {@return it as markup made by the program itself, for a page that a browser shows} */
    public String svg() {
        return SvgWriter.svg(drawing, id);
    }
}
