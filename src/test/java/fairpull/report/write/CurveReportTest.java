package fairpull.report.write;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.domain.finding.CurveFinding;
import fairpull.domain.unit.Units;
import fairpull.report.CurveExamples;
import fairpull.report.Examples;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CurveReportTest {
    private static final int MEGABYTE = 1 << 20;

    @Test
    void theHeadingSaysWhatWasFoundOverEngineSpeed() {
        assertThat(html(CurveExamples.gain())).contains("Over engine speed, a gain is shown from 4025 to 6800\u202frpm",
                "of the speeds compared");
        assertThat(html(CurveExamples.nothing())).contains("Over engine speed, no change is shown at any speed");
        assertThat(html(CurveExamples.lossAndGain())).contains("a gain is shown from", "and a loss from");
    }

    @Test
    void manyRangesAreCountedInTheHeadingAndNamedBelow() {
        CurveFinding curve = CurveExamples.finding("ABAB", 3, CurveExamples.gain().curves().grid(), Units.HORSEPOWER,
                rpm -> 9 * Math.sin(rpm / 120), Optional.empty());

        assertThat(curve.gains()).hasSizeGreaterThan(3);
        assertThat(html(curve)).contains("<h2>Over engine speed, a gain is shown over " + curve.gains().size() + " ranges between ",
                "<p>A gain is shown from ");
    }

    @Test
    void aGainNearTheStartOfTheSweepIsPointedOut() {
        assertThat(html(CurveExamples.atTheStart())).contains("near the start of the sweep only (from 2500 to 2775\u202frpm)");
        assertThat(html(CurveExamples.gain())).doesNotContain("near the start of the sweep");
    }

    @Test
    void everythingNeededToReckonItAgainIsThere() {
        assertThat(html(CurveExamples.gain())).contains("2500 to 6800\u202frpm, every 25\u202frpm, 173 speeds", "±\u202f100\u202frpm", "3.1",
                "6.4, median over the speeds", "20000, seed 1", "the relative figure of the rig record for the band", "20 of 25 pulls cover every speed",
                "<td class=\"w\">A1-2</td><td class=\"w\">A</td><td class=\"w\">2550 to 6800", "The change every 200\u202frpm",
                "largest value", "mean of the curve", "speeds, rpm", "5400 … 5650", "2500 … 6800", "area under the curve", "hp·rpm", "report TEST --csv FOLDER",
                "largest value of a pull by −0.40\u202fhp with A and by −0.40\u202fhp with B", "peak as recorded, hp");
    }

    @Test
    void everyChartCarriesItsSettings() {
        String html = html(CurveExamples.gain());

        assertThat(html.split("SAE J1349 · bandwidth ±\u202f100\u202frpm · 95\u202f% for all speeds together · 25 pulls, 5 installs · seal "
                + "7KD2-9QXM-41", -1)).hasSize(4);
    }

    @Test
    void aWorthwhileGainIsNotDrawnWhereTheCurveHasAnotherUnit() {
        assertThat(html(CurveExamples.gain())).contains("worthwhile +3\u202fhp");
        assertThat(html(CurveExamples.nothing())).doesNotContain("worthwhile +3");
    }

    @Test
    void fortyPullsAtTwoHundredSpeedsStaySmall() {
        String html = html(CurveExamples.large());

        assertThat(CurveExamples.large().curves().rows()).hasSize(40);
        assertThat(html.getBytes(StandardCharsets.UTF_8).length).isLessThan(MEGABYTE / 4);
        assertThat(HtmlReport.pdf(CurveExamples.in(Examples.gain(), CurveExamples.large()), ReportOptions.full(), Paper.A4).bytes().length)
                .isLessThan(MEGABYTE / 2);
    }

    @Test
    void aReportWithoutCurvesHasNoCardOfThem() {
        assertThat(HtmlReport.html(Examples.gain(), ReportOptions.full())).doesNotContain("Over engine speed").doesNotContain("bandwidth");
    }

    private static String html(CurveFinding curve) {
        return HtmlReport.html(CurveExamples.in(Examples.gain(), curve), ReportOptions.full());
    }
}
