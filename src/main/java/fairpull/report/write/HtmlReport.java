package fairpull.report.write;

import fairpull.domain.finding.Judgement;
import fairpull.report.chart.Palette;
import fairpull.report.wording.SealWords;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The report of a test as one HTML page that needs nothing else: no network, no script, style and charts within. All text is
 * escaped by the template engine; only charts, which the program draws and escapes itself, go in as markup.
 */
public final class HtmlReport {
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
                + "for this car, this rig and the sessions shown, and for nothing else.");
        return Templates.filled("report.ftlh", page);
    }
}
