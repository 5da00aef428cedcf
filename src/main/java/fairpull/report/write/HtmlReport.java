package fairpull.report.write;

import fairpull.domain.Remedy.Surface;
import fairpull.domain.finding.Judgement;
import fairpull.domain.pull.Seal;
import fairpull.report.chart.Palette;
import fairpull.report.wording.SealWords;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The report of a test as one HTML page that needs nothing else: no network, no script, style and charts within; or the same cards as
 * PDF. All text is escaped by the template engine; only charts, which the program draws and escapes itself, go in as markup.
 */
public final class HtmlReport {
    private final Judgement shown;
    private final ReportOptions options;
    private final List<Card> cards;

    private HtmlReport(Judgement judgement, ReportOptions options) {
        this.shown = options.withoutIdentity() ? Identity.leftOut(judgement) : judgement;
        this.options = options;
        this.cards = ReportCards.of(shown, Surface.COMMAND_LINE);
    }

    /** {@return the page} */
    public static String html(Judgement judgement, ReportOptions options) {
        return new HtmlReport(judgement, options).page(Optional.empty());
    }

    /** {@return the same cards on paper; dated with the seal, so that the same test gives the same bytes} */
    public static HtmlToPdf.Pdf pdf(Judgement judgement, ReportOptions options, Paper paper) {
        HtmlReport report = new HtmlReport(judgement, options);
        return HtmlToPdf.pdf(report.page(Optional.of(paper)), judgement.seal().map(Seal::at),
                judgement.seal().map(Seal::planSha256).orElse(judgement.plan().title()), report.figures());
    }

    private List<Figure> figures() {
        return cards.stream().flatMap(card -> card.figures().stream()).toList();
    }

    private String page(Optional<Paper> paper) {
        Map<String, Object> page = new LinkedHashMap<>();
        page.put("title", shown.plan().title());
        page.put("line", SealWords.line(shown));
        page.put("rig", options.withoutIdentity() ? "" : shown.plan().rig().name());
        page.put("partA", shown.plan().question().partA());
        page.put("partB", shown.plan().question().partB());
        page.put("remark", shown.plan().remark());
        page.put("identity", options.withoutIdentity() ? Identity.NOTE : "");
        page.put("cards", cards);
        page.put("footer", SealWords.seal(shown) + ". Made from the files of the test, from which it can be made again. It holds "
                + "for this car, this rig and the sessions shown, and for nothing else.");
        page.put("code", SealWords.code(shown.seal()));
        page.put("styles", Palette.styleSheet());
        paper.ifPresent(size -> page.putAll(PaperStyle.of(size)));
        return Templates.filled("report.ftlh", page);
    }
}
