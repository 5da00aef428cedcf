package fairpull.report.write;

import fairpull.report.chart.Drawing;
import fairpull.report.chart.Palette;
import fairpull.report.chart.Role;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** What a page needs to be set on paper: its size, the font, colours for print, and how large charts become. */
final class PaperStyle {
    private static final double MARGIN_MM = 16;

    private PaperStyle() {
    }

    static Map<String, Object> of(Paper paper) {
        double width = paper.widthMm() - 2 * MARGIN_MM;
        Map<String, String> colours = new TreeMap<>();
        for (Role role : Role.values()) {
            colours.put(role.name(), Palette.PRINT.colour(role));
        }
        return Map.of("paper", paper.size(), "font", HtmlToPdf.FONT, "colours", colours, "margin", millimetres(MARGIN_MM),
                "figureWidth", millimetres(width), "mmPerUnit", width / Drawing.WIDTH);
    }

    private static String millimetres(double length) {
        return String.format(Locale.ROOT, "%.2fmm", length);
    }
}
