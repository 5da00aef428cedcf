package fairpull.report.write;

import fairpull.domain.finding.Judgement;
import fairpull.report.chart.Palette;
import fairpull.report.wording.SealWords;
import freemarker.core.HTMLOutputFormat;
import freemarker.template.Configuration;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * The report of a test as one HTML page that needs nothing else: no network, no script, style and charts within. All text is
 * escaped by the template engine; only charts, which the program draws and escapes itself, go in as markup.
 */
public final class HtmlReport {
    private static final Configuration TEMPLATES = templates();

    private HtmlReport() {
    }

    /** {@return the page} */
    public static String html(Judgement judgement, ReportOptions options) {
        Judgement shown = options.withoutIdentity() ? Identity.leftOut(judgement) : judgement;
        List<Card> cards = new ArrayList<>(FindingCards.of(shown));
        cards.addAll(DataCards.of(shown));
        Map<String, Object> page = new LinkedHashMap<>();
        page.put("title", shown.plan().title());
        page.put("line", SealWords.line(shown));
        page.put("rig", options.withoutIdentity() ? "" : shown.plan().rig().name());
        page.put("partA", shown.plan().question().partA());
        page.put("partB", shown.plan().question().partB());
        page.put("remark", shown.plan().remark());
        page.put("identity", options.withoutIdentity() ? Identity.NOTE : "");
        page.put("styles", Palette.styleSheet());
        page.put("cards", cards);
        page.put("footer", SealWords.seal(shown) + ". Made from the files of the test, from which it can be made again. It holds "
                + "for this car, "
                + "this rig and the sessions shown, and for nothing else.");
        return filled(page);
    }

    static String filled(Map<String, Object> page) {
        StringWriter out = new StringWriter();
        try {
            TEMPLATES.getTemplate("report.ftlh").process(page, out);
        } catch (IOException trouble) {
            throw new UncheckedIOException(trouble);
        } catch (TemplateException trouble) {
            throw new IllegalStateException("the report's template does not fit its page", trouble);
        }
        return out.toString();
    }

    private static Configuration templates() {
        Configuration templates = new Configuration(Configuration.VERSION_2_3_34);
        templates.setClassForTemplateLoading(HtmlReport.class, "/fairpull/report");
        templates.setDefaultEncoding("UTF-8");
        templates.setOutputFormat(HTMLOutputFormat.INSTANCE);
        templates.setRecognizeStandardFileExtensions(true);
        templates.setLocale(Locale.ROOT);
        templates.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        templates.setLogTemplateExceptions(false);
        templates.setWrapUncheckedExceptions(true);
        return templates;
    }
}
