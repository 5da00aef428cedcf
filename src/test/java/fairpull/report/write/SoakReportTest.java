package fairpull.report.write;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.report.Examples;
import fairpull.report.HeatExamples;
import org.junit.jupiter.api.Test;

class SoakReportTest {
    @Test
    void textOfStrangersIsEscapedAndNothingLoadsFromElsewhere() {
        String html = SoakReport.html(HeatExamples.of("ABA", 2, Examples.HOSTILE, 1));

        assertThat(html).contains("&lt;script&gt;").doesNotContain("<script", "http://", "https://", "url(", " src=", " href=", "@import")
                .contains("default-src 'none'; style-src 'unsafe-inline'");
    }

    @Test
    void theSameAnswerGivesTheSameBytes() {
        assertThat(SoakReport.html(HeatExamples.of("ABA", 2, "IAT", 1))).isEqualTo(SoakReport.html(HeatExamples.of("ABA", 2, "IAT", 1)));
    }

    @Test
    void whatIsWarnedOfStandsOnThePage() {
        assertThat(SoakReport.html(HeatExamples.of("ABA", 2, "IAT", 1))).contains("To know before relying on it", "give --pull-rise");
    }
}
