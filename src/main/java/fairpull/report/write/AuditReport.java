package fairpull.report.write;

import fairpull.domain.audit.AuditAnswer;
import fairpull.domain.audit.Repeat;
import fairpull.report.chart.ChanceChart;
import fairpull.report.chart.Palette;
import fairpull.report.chart.PublishedChart;
import fairpull.report.chart.SeenCurvesChart;
import fairpull.report.wording.AuditMethodWords;
import fairpull.report.wording.AuditWords;
import fairpull.report.wording.RepeatWords;
import fairpull.report.wording.Said;
import fairpull.report.wording.SeenCurvesWords;
import fairpull.report.wording.UndisclosedWords;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** An audit as one HTML page that needs nothing else, or the same cards on paper. */
public final class AuditReport {
    private final AuditAnswer answer;
    private final List<Card> cards = new ArrayList<>();

    private AuditReport(AuditAnswer answer, Repeat repeat) {
        this.answer = answer;
        cards.add(Card.plain(AuditWords.heading(answer)).as("verdict").answering(AuditWords.claims(answer)));
        List<Figure> published = published();
        if (!published.isEmpty()) {
            cards.add(Card.plain("What the published differences leave open").showing(published, AuditMethodWords.intervals()));
        }
        UndisclosedWords.heading(answer).ifPresent(heading -> cards.add(Card.plain(heading).saying(UndisclosedWords.measure(answer))
                .answering(UndisclosedWords.all(answer))));
        cards.add(Card.plain(RepeatWords.heading(repeat)).saying(RepeatWords.paragraph(repeat)).answering(RepeatWords.all(repeat)));
        cards.add(Card.plain("What the figures can show").showing(chances(), AuditMethodWords.chance())
                .answering(AuditWords.figures(answer)));
        if (!answer.curves().isEmpty()) {
            cards.add(Card.plain("The published curves as they were read").showing(curves(), SeenCurvesWords.key()));
        }
        List<Said> checks = AuditWords.checks(answer);
        if (!checks.isEmpty()) {
            cards.add(Card.plain("What figures, curves and procedure show").answering(checks));
        }
        cards.add(Card.plain("How this was reckoned").answering(AuditMethodWords.all()));
    }

    /** {@return the cards of an audit, in the order in which they are read} */
    public static List<Card> cards(AuditAnswer answer, Repeat repeat) {
        return List.copyOf(new AuditReport(answer, repeat).cards);
    }

    /** {@return the page} */
    public static String html(AuditAnswer answer, Repeat repeat) {
        return new AuditReport(answer, repeat).page(Optional.empty());
    }

    /** {@return the same cards on paper; the same audit gives the same bytes} */
    public static HtmlToPdf.Pdf pdf(AuditAnswer answer, Repeat repeat, Paper paper) {
        AuditReport report = new AuditReport(answer, repeat);
        return HtmlToPdf.pdf(report.page(Optional.of(paper)), Optional.empty(), answer.publication().title(),
                report.cards.stream().flatMap(card -> card.figures().stream()).toList());
    }

    private List<Figure> published() {
        List<Figure> charts = new ArrayList<>();
        answer.figures().forEach(figure -> PublishedChart.draw(answer, figure.figure())
                .ifPresent(chart -> charts.add(new Figure("published" + (charts.size() + 1), chart))));
        return charts;
    }

    private List<Figure> chances() {
        List<Figure> charts = new ArrayList<>();
        answer.figures().forEach(figure -> ChanceChart.draw(figure)
                .ifPresent(chart -> charts.add(new Figure("chance" + (charts.size() + 1), chart))));
        return charts;
    }

    private List<Figure> curves() {
        return IntStream.range(0, answer.curves().size()).mapToObj(place -> new Figure("curves" + (place + 1),
                SeenCurvesChart.of(answer.curves().get(place)))).toList();
    }

    private String page(Optional<Paper> paper) {
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
