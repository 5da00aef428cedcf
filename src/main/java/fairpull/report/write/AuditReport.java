package fairpull.report.write;

import fairpull.domain.audit.AuditAnswer;
import fairpull.report.chart.Palette;
import fairpull.report.wording.AuditWords;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** An audit as one HTML page that needs nothing else, or the same cards on paper. */
public final class AuditReport {
    private AuditReport() {
    }

    /** {@return the page} */
    public static String html(AuditAnswer answer) {
        return page(answer, Optional.empty());
    }

    /** {@return the same cards on paper; the same audit gives the same bytes} */
    public static HtmlToPdf.Pdf pdf(AuditAnswer answer, Paper paper) {
        return HtmlToPdf.pdf(page(answer, Optional.of(paper)), Optional.empty(), answer.publication().title());
    }

    private static String page(AuditAnswer answer, Optional<Paper> paper) {
        List<Card> cards = new ArrayList<>();
        cards.add(Card.plain(AuditWords.heading(answer)).as("verdict").answering(AuditWords.claims(answer)));
        cards.add(Card.plain("What the figures can show").answering(AuditWords.figures(answer)));
        List<String> missing = AuditWords.notDisclosed(answer);
        if (!missing.isEmpty()) {
            cards.add(Card.plain("Not disclosed").stepping(missing));
        }
        Map<String, Object> page = new LinkedHashMap<>();
        page.put("title", answer.publication().title());
        page.put("line", answer.publication().source());
        page.put("partA", "");
        page.put("remark", answer.publication().remark());
        page.put("identity", "");
        page.put("cards", cards);
        page.put("footer", "Made from the published figures alone. It says what they can show, and nothing of whoever published them.");
        page.put("code", "");
        page.put("styles", Palette.styleSheet());
        paper.ifPresent(size -> page.putAll(PaperStyle.of(size)));
        return Templates.filled("report.ftlh", page);
    }
}
