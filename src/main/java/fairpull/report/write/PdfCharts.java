package fairpull.report.write;

import com.openhtmltopdf.extend.FSObjectDrawer;
import com.openhtmltopdf.extend.FSObjectDrawerFactory;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.pdfboxout.PdfBoxOutputDevice;
import com.openhtmltopdf.render.RenderingContext;
import java.awt.Rectangle;
import java.awt.Shape;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.w3c.dom.Element;

/** Puts charts into the room that a page leaves for them: {@code <object type="chart" data="ID">}. */
final class PdfCharts implements FSObjectDrawerFactory, FSObjectDrawer {
    private static final String TYPE = "chart";

    private final Map<String, Figure> byId;
    private PdfFonts fonts;

    PdfCharts(List<Figure> figures) {
        byId = figures.stream().collect(Collectors.toMap(Figure::id, Function.identity()));
    }

    @Override
    public boolean isReplacedObject(Element element) {
        return element.getNodeName().equals("object") && element.getAttribute("type").equals(TYPE)
                && byId.containsKey(element.getAttribute("data"));
    }

    @Override
    public FSObjectDrawer createDrawer(Element element) {
        return this;
    }

    @Override
    public Map<Shape, String> drawObject(Element element, double x, double y, double width, double height, OutputDevice device,
            RenderingContext context, int dotsPerPixel) {
        PdfBoxOutputDevice page = (PdfBoxOutputDevice) device;
        Figure figure = byId.get(element.getAttribute("data"));
        PDFormXObject form = PdfChart.form(page.getWriter(), figure.drawing(), fonts(page));
        Rectangle room = new Rectangle((int) x, (int) y, (int) width, (int) height);
        page.drawPdfAsImage(form, room, (float) figure.drawing().width() * page.getDotsPerPoint(),
                (float) figure.drawing().height() * page.getDotsPerPoint());
        return Map.of();
    }

    /** A form does not tell its document which fonts to embed; a page on which they are named once does. */
    private PdfFonts fonts(PdfBoxOutputDevice page) {
        if (fonts == null) {
            fonts = PdfFonts.of(page.getWriter());
            page.getCurrentPage().beginText();
            fonts.all().forEach(font -> page.getCurrentPage().setFont(font, 1));
            page.getCurrentPage().endText();
        }
        return fonts;
    }
}
