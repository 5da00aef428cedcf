package fairpull.report.write;

import fairpull.domain.rig.RigEvidence;
import fairpull.report.chart.Palette;
import fairpull.report.chart.RigChart;
import fairpull.report.wording.RigWords;
import fairpull.report.wording.Times;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The rig record as one HTML page: a card for each key with its chart. */
public final class RigReport {
    private static final String CAPTION = "Each ring is the mean of one install; a black disc lies beyond a limit. Broken lines: "
            + "limits at 3 "
            + "sigma. An upright line: from there on the rig looks changed.";

    private RigReport() {
    }

    /** {@return the page} */
    public static String html(List<RigEvidence> all, OffsetDateTime at) {
        List<Card> cards = new ArrayList<>();
        for (RigEvidence evidence : all) {
            Card card = Card.plain(RigWords.key(evidence.key()));
            for (String sentence : RigWords.evidence(evidence)) {
                card = card.saying(sentence);
            }
            String id = "rig" + cards.size();
            List<Figure> charts = RigChart.draw(evidence).map(drawing -> new Figure(id, drawing)).stream().toList();
            cards.add(charts.isEmpty() ? card : card.showing(charts, CAPTION));
        }
        Card method = Card.plain("How it is reckoned");
        for (String sentence : RigWords.method()) {
            method = method.saying(sentence);
        }
        cards.add(method);
        Map<String, Object> page = new LinkedHashMap<>();
        page.put("title", "Rig record");
        page.put("line", "Written " + Times.full(at));
        page.put("partA", "");
        page.put("remark", "");
        page.put("identity", "");
        page.put("styles", Palette.styleSheet());
        page.put("cards", cards);
        page.put("footer", "Made from the files of the rig record, from which it can be made again. Scatter is relative to the "
                + "level of the "
                + "measure.");
        return Templates.filled("report.ftlh", page);
    }
}
