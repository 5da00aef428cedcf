package fairpull.report.write;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import fairpull.report.chart.Shape;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.time.OffsetDateTime;
import java.util.GregorianCalendar;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/**
 * Turns a page of ours, which must be well-formed XML, into a PDF with searchable text. Nothing is loaded from anywhere, whatever the page
 * names: style is within, and the fonts come with the program. The same page gives the same bytes.
 */
public final class HtmlToPdf {
    /** The family that a page asks for; letters it lacks are taken from {@link #FALLBACK}. */
    public static final String FONT = "Roboto";
    private static final String FALLBACK = "Liberation Sans";
    static final String ROBOTO = "/com/formdev/flatlaf/fonts/roboto/Roboto-";
    static final String LIBERATION = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
    private static final int REGULAR = 400;
    private static final int BOLD = 700;

    /** Both libraries log what they work around, such as a letter without a shape. Held here: a logger nobody holds loses its level. */
    private static final List<Logger> SILENT = Stream.of("org.apache.pdfbox", "org.apache.fontbox").map(Logger::getLogger).toList();

    static {
        SILENT.forEach(logger -> logger.setLevel(Level.OFF));
        XRLog.setLoggingEnabled(false);
    }

    private HtmlToPdf() {
    }

    /**
     * A PDF.
     *
     * @param bytes the file
     * @param pages how many pages it has
     */
    public record Pdf(byte[] bytes, int pages) {
    }

    /**
     * {@return a page as PDF}
     *
     * @param html well-formed XML; its title becomes the document's
     * @param madeAt the date it carries; none where it is empty
     * @param identity what the document's identifier is made of: the same for the same content
     */
    public static Pdf pdf(String html, Optional<OffsetDateTime> madeAt, String identity) {
        return pdf(html, madeAt, identity, List.of());
    }

    /**
     * {@return a page with charts as PDF}
     *
     * @param html well-formed XML; its title becomes the document's; an {@code <object type="chart" data="ID">} leaves room for a chart
     * @param madeAt the date it carries; none where it is empty
     * @param identity what the document's identifier is made of: the same for the same content
     * @param figures the charts
     */
    static Pdf pdf(String html, Optional<OffsetDateTime> madeAt, String identity, List<Figure> figures) {
        PdfRendererBuilder builder = new PdfRendererBuilder().withProducer("Fairpull")
                .withW3cDocument(inKnownLetters(parsed(html), figures), null)
                .useUriResolver((base, address) -> null).useReplacementText("?");
        for (ExternalResourceControlPriority when : ExternalResourceControlPriority.values()) {
            builder.useExternalResourceAccessControl((address, kind) -> false, when);
        }
        builder.useUnicodeLineBreaker(new LineBreaks());
        builder.useUnicodeBidiSplitter(ReadingOrder::new);
        builder.useUnicodeBidiReorderer(new ReadingOrder());
        builder.useObjectDrawerFactory(new PdfCharts(figures));
        builder.useFont(() -> font(ROBOTO + "Regular.ttf"), FONT, REGULAR, FontStyle.NORMAL, true);
        builder.useFont(() -> font(ROBOTO + "Bold.ttf"), FONT, BOLD, FontStyle.NORMAL, true);
        builder.useFont(() -> font(LIBERATION), FALLBACK, REGULAR, FontStyle.NORMAL, true);
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer(); PDDocument document = renderer.createPDFKeepOpen()) {
            PDDocumentInformation information = document.getDocumentInformation();
            information.setCreationDate(madeAt.map(OffsetDateTime::toZonedDateTime).map(GregorianCalendar::from).orElse(null));
            document.setDocumentId(numberOf(identity));
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            return new Pdf(out.toByteArray(), document.getNumberOfPages());
        } catch (IOException trouble) {
            throw new UncheckedIOException(trouble);
        }
    }

    /** The page with a mark for each letter that has no shape, and at its foot what the marks of page and charts stand for. */
    private static Document inKnownLetters(Document page, List<Figure> figures) {
        Set<Integer> missing = new LinkedHashSet<>();
        Node body = page.getElementsByTagName("body").item(0);
        mark(body, missing);
        figures.forEach(figure -> figure.drawing().shapes().stream().filter(Shape.Words.class::isInstance).map(Shape.Words.class::cast)
                .forEach(words -> Letters.shown(words.text(), missing)));
        if (!missing.isEmpty()) {
            Element note = page.createElement("p");
            note.setTextContent(Letters.note(missing));
            body.appendChild(note);
        }
        return page;
    }

    private static void mark(Node node, Set<Integer> missing) {
        if (node.getNodeType() == Node.TEXT_NODE) {
            node.setNodeValue(Letters.shown(node.getNodeValue(), missing));
        }
        for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
            mark(child, missing);
        }
    }

    private static long numberOf(String identity) {
        long number = 0;
        for (char letter : identity.toCharArray()) {
            number = 31 * number + letter;
        }
        return number;
    }

    private static InputStream font(String resource) {
        return HtmlToPdf.class.getResourceAsStream(resource);
    }

    private static Document parsed(String html) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setAttribute(XMLConstants.ACCESS_EXTERNAL_DTD, "");
            factory.setAttribute(XMLConstants.ACCESS_EXTERNAL_SCHEMA, "");
            factory.setExpandEntityReferences(false);
            return factory.newDocumentBuilder().parse(new InputSource(new StringReader(printable(html))));
        } catch (ParserConfigurationException | SAXException | IOException trouble) {
            throw new IllegalStateException("the page is not well-formed", trouble);
        }
    }

    /** The narrow space has no shape in either font; control characters are not allowed in XML. */
    static String printable(String html) {
        StringBuilder kept = new StringBuilder(html.length());
        html.replace('\u202f', '\u00a0').codePoints()
                .map(point -> isAllowed(point) ? point : '?').forEach(kept::appendCodePoint);
        return kept.toString();
    }

    /** XML 1.0 (fifth edition), production 2, “Char”. */
    private static boolean isAllowed(int point) {
        return point == '\t' || point == '\n' || point == '\r' || point >= 0x20 && point <= 0xd7ff
                || point >= 0xe000 && point <= 0xfffd || point >= 0x10000;
    }
}
