package fairpull.report.wording;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.domain.finding.Finding;
import fairpull.domain.finding.Worthwhile;
import fairpull.report.Findings;
import java.util.List;
import org.junit.jupiter.api.Test;

class WhyWordsTest {
    private static String why(Finding finding) {
        return WhyWords.sentence(finding).replace('\u202f', ' ').replace('\u00a0', ' ');
    }

    @Test
    void aGainNamesTheEndThatReachesWhatIsWorthwhile() {
        assertThat(why(Findings.gain(Worthwhile.YES))).startsWith("Even the smallest change that these pulls leave room for (95 % interval)")
                .contains("a gain of").endsWith("that would be worthwhile.");
    }

    @Test
    void anUndecidedOneNamesBothEndsAndWhatLiesBetween() {
        assertThat(why(Findings.undecided("hp"))).startsWith("These pulls leave room for everything from a loss of")
                .contains("to a gain of").contains("(95 % interval): no change at all");
    }

    @Test
    void everyVerdictHasOneSentenceWithoutCommandsOrGaps() {
        for (Finding finding : List.of(Findings.gain(List.of()), Findings.gain(Worthwhile.NO), Findings.gain(Worthwhile.OPEN),
                Findings.slower(), Findings.quickerOneSided(), Findings.undecided("hp"), Findings.meansDisagree(),
                Findings.noDifference(List.of()), Findings.cannotBeJudged(List.of()))) {
            assertThat(why(finding)).endsWith(".").doesNotContain("NaN").doesNotContain("Infinity").doesNotContain("∞")
                    .doesNotContain("--").doesNotContain(". ");
        }
    }

    @Test
    void theChecksSayTheSameHeadsWithoutTheirFigures() {
        for (Finding finding : List.of(Findings.gain(List.of()), Findings.undecided("hp"), Findings.cannotBeJudged(List.of()))) {
            assertThat(PlainChecks.all(finding)).extracting(Said::head)
                    .isEqualTo(CheckWords.all(finding).stream().map(Said::head).toList());
            assertThat(PlainChecks.all(finding)).allSatisfy(said -> assertThat(said.text()).endsWith(".").doesNotContain("p = "));
        }
    }
}
