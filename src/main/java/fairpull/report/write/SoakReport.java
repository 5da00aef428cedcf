package fairpull.report.write;

import fairpull.domain.heat.CoolDownFit;
import fairpull.domain.heat.CoolDownLog;
import fairpull.domain.heat.ModeChoice;
import fairpull.domain.heat.SoakAnswer;
import fairpull.report.chart.CoolDownChart;
import fairpull.report.chart.Palette;
import fairpull.report.chart.StartTemperatureChart;
import fairpull.report.wording.HeatNoticeWords;
import fairpull.report.wording.SoakWords;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The heat of a day as one HTML page that needs nothing else, in the dress of the report. */
public final class SoakReport {
    private SoakReport() {
    }

    /** {@return the page} */
    public static String html(SoakAnswer answer) {
        List<Card> cards = new ArrayList<>();
        cards.add(day(answer));
        answer.log().ifPresent(log -> cards.add(fit(log, answer.choice().orElseThrow())));
        if (!answer.cannotSay()) {
            cards.add(intervals(answer));
            cards.add(Card.plain("What heat leaves on the deciding measure").answering(SoakWords.bias(answer)));
        }
        if (!answer.notices().isEmpty()) {
            cards.add(Card.plain("To know before relying on it")
                    .stepping(answer.notices().stream().map(HeatNoticeWords::sentence).toList()));
        }
        Map<String, Object> page = new LinkedHashMap<>();
        page.put("title", "Heat between pulls");
        page.put("line", SoakWords.subject(answer));
        page.put("styles", Palette.styleSheet());
        page.put("cards", cards);
        page.put("foot", SoakWords.foot());
        return Templates.filled("soak.ftlh", page);
    }

    private static Card day(SoakAnswer answer) {
        Card card = Card.plain(SoakWords.heading(answer)).as("verdict");
        for (String sentence : SoakWords.plan(answer)) {
            card = card.saying(sentence);
        }
        return answer.cannotSay() ? card
                : card.showing(List.of(new Figure("start", StartTemperatureChart.draw(answer))), SoakWords.dayCaption(answer));
    }

    private static Card fit(CoolDownLog log, ModeChoice choice) {
        CoolDownFit fit = choice.chosen();
        return Card.plain(SoakWords.fitHeading(choice))
                .showing(List.of(new Figure("fit", CoolDownChart.curve(log, fit)),
                        new Figure("rest", CoolDownChart.residuals(log, fit))), SoakWords.fitCaption(CoolDownChart.readingsPerDot(log)))
                .answering(SoakWords.fit(choice)).saying(SoakWords.rule());
    }

    private static Card intervals(SoakAnswer answer) {
        List<List<String>> rows = answer.plan().holding().stream()
                .map(row -> List.of(Integer.toString(row.warmUps()), SoakWords.interval(row)))
                .toList();
        return Card.plain("Warm-up pulls buy a shorter interval")
                .saying(SoakWords.intervals(answer))
                .tabling(new Card.Table("intervals", List.of("warm-up pulls first", "shortest interval that holds"), rows, 1));
    }
}
