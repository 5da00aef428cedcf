package fairpull.report.write;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.domain.finding.Judgement;
import fairpull.report.Examples;
import java.util.Map;
import org.junit.jupiter.api.Test;

class HtmlReportTest {
    @Test
    void textOfStrangersIsEscaped() {
        String html = html(Examples.longTexts());

        assertThat(html).doesNotContain(Examples.HOSTILE).doesNotContain("<script").contains("&lt;script&gt;alert(1)&lt;/script&gt;");
    }

    @Test
    void nothingLoadsFromElsewhere() {
        Examples.all().forEach((name, judgement) -> assertThat(html(judgement)).as(name).doesNotContain("http://")
                .doesNotContain("https://").doesNotContain("url(").doesNotContain("<script").doesNotContain(" src=")
                .doesNotContain(" href=").doesNotContain("@import").contains("default-src 'none'; style-src 'unsafe-inline'"));
    }

    @Test
    void theSameJudgementGivesTheSameBytes() {
        for (String name : Examples.all().keySet()) {
            assertThat(html(Examples.all().get(name))).isEqualTo(html(Examples.all().get(name)));
        }
    }

    @Test
    void everythingThatAReportMustHoldIsThere() {
        String html = html(Examples.gain());

        assertThat(html).contains("Electric water pump against belt pump", "7KD2-9QXM-41", "All data of this test are invented.",
                "A gain, and shown to be worthwhile", "tips at", "Came back", "Scatters as the record says", "Drift taken out",
                "Order", "peak torque", "after Holm’s adjustment", "gains at least 3 hp", "shown: at least 3", "swap takes longer than thought",
                "before the first data", "Installs", "Every pull and its fate", "coolant gate broken", "Without the excluded pulls",
                "LINEST", "Cautions", "intake air at pull start, °C");
        Judgement judgement = Examples.gain();
        judgement.pulls().forEach(pull -> assertThat(html).contains("<td class=\"w\">" + pull.pull() + "</td>"));
    }

    @Test
    void aTestWithoutASealSaysSo() {
        assertThat(html(Examples.undecided())).contains("Not sealed").contains("seal the next one");
    }

    @Test
    void alarmsComeBeforeTheVerdict() {
        String html = html(Examples.longTexts());

        assertThat(html.indexOf("Read this first")).isPositive().isLessThan(html.indexOf("A gain, and shown"));
    }

    @Test
    void identityIsLeftOutWhereAskedFor() {
        String html = HtmlReport.html(Examples.gain(), new ReportOptions(true));

        assertThat(html).contains("Identity was left out").contains("invented").contains("7KD2-9QXM-41")
                .doesNotContain("rollers in bay 2").doesNotContain("Electric water pump").doesNotContain("electric pump")
                .doesNotContain("belt-driven pump").doesNotContain("gains at least 3 hp");
    }

    @Test
    void sessionNamesAreLeftOutWithTheIdentity() {
        String html = HtmlReport.html(Examples.threeSessions(), new ReportOptions(true));

        assertThat(html).doesNotContain("Wednesday").contains("session 2");
        assertThat(html(Examples.threeSessions())).contains("Wednesday");
    }

    @Test
    void everyExampleHasOneStripASession() {
        Map<String, Integer> strips = Map.of("gain", 1, "sessions", 3);
        strips.forEach((name, count) -> assertThat(html(Examples.all().get(name)).split("values over the clock", -1)).hasSize(count + 1));
    }

    private static String html(Judgement judgement) {
        return HtmlReport.html(judgement, ReportOptions.full());
    }
}
