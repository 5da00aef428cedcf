package fairpull.report.wording;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.domain.finding.Finding;
import fairpull.domain.finding.Notice;
import fairpull.domain.finding.Worthwhile;
import fairpull.report.Examples;
import fairpull.report.Findings;
import java.util.List;
import org.junit.jupiter.api.Test;

class FindingWordsTest {
    private static final Subject PUMP = new Subject("mean power", "belt pump", "electric pump");

    @Test
    void aGainWithARecord() {
        Finding finding = Examples.gain().deciding();

        assertThat(FindingWords.verdictHead(finding)).isEqualTo("A gain, and shown to be worthwhile");
        assertThat(plain(finding)).isEqualTo("With B (electric pump), mean power was 5.1 hp higher than with A (belt pump) on this car, "
                + "this rig and this day (5 installs, 24 counted pulls). The 95 % interval for B − A runs from 3.3 to 6.9 hp. "
                + "All of it lies above zero, so this is a gain. It reaches the worthwhile gain of 3 hp with its nearer end. "
                + "The gain stands unless refitting alone moves mean power by more than 2.4 hp (one standard deviation); "
                + "the rig record says 0.9 hp (11 degrees of freedom).");
    }

    @Test
    void aGainSaysWhetherItIsWorthwhile() {
        assertThat(FindingWords.verdictHead(Findings.gain(Worthwhile.NO))).isEqualTo("A gain, but shown to be less than worthwhile");
        assertThat(plain(Findings.gain(Worthwhile.NO))).contains("Even its farther end falls short of the worthwhile gain of 3 hp.");
        assertThat(FindingWords.verdictHead(Findings.gain(Worthwhile.OPEN))).isEqualTo("A gain; whether it is worthwhile is open");
        assertThat(plain(Findings.gain(Worthwhile.OPEN))).contains("whether the gain reaches that is open");
        assertThat(FindingWords.verdictHead(Findings.around(5, 3, 7, java.util.OptionalDouble.empty()))).isEqualTo("A gain");
    }

    @Test
    void aLossWhereLessIsBetter() {
        assertThat(FindingWords.verdictHead(Findings.slower())).isEqualTo("A loss");
        assertThat(plain(Findings.slower())).contains("5.1 hp higher").contains("All of it lies above zero; less is better here, so this is "
                + "a loss.").contains("The loss stands unless refitting alone moves mean power by more than 2.4 hp")
                .contains("there is no record of what this rig does");
    }

    @Test
    void aOneSidedGainWhereLessIsBetter() {
        assertThat(plain(Findings.quickerOneSided())).contains("mean power was 0.123 s lower than with A")
                .contains("The one-sided 95 % interval for B − A ends at −0.034 s and is open below.")
                .contains("All of it lies below zero; less is better here, so this is a gain.");
    }

    @Test
    void undecidedSaysWhatWasNotSeenAndWhatWouldDecide() {
        Finding finding = Findings.undecided("hp");

        assertThat(FindingWords.verdictHead(finding)).isEqualTo("Undecided");
        assertThat(plain(finding)).contains("No change larger than 4.5 hp was seen.")
                .contains("The interval holds zero, so a change is not shown; nor is it shown to stay below the worthwhile gain of 3 hp.")
                .contains("It would be a gain on a rig that refits within 0.22 hp (one standard deviation)")
                .contains("there is no record of what this rig does");
    }

    @Test
    void unequalPullsNeedBothTests() {
        assertThat(plain(Findings.meansDisagree())).contains("the installs have unequal numbers of pulls, and the test on install means, "
                + "which gives 2.2 to 8.0 hp (95 % interval), does not agree").doesNotContain("No change larger");
    }

    @Test
    void noDifferenceThatMatters() {
        Finding finding = Findings.noDifference(Examples.threeSessions().pulls());

        assertThat(FindingWords.verdictHead(finding)).isEqualTo("No difference that matters");
        assertThat(plain(finding)).contains("these 3 sessions").contains("No change larger than 1.6 hp was seen.")
                .contains("One as large as the worthwhile gain of 3 hp is ruled out (two one-sided tests, p = 0.00070).");
    }

    @Test
    void cannotBeJudgedSaysWhyAndWhatIsMissing() {
        Finding finding = Examples.cannotBeJudged().deciding();

        assertThat(FindingWords.verdictHead(finding)).isEqualTo("Cannot be judged: too few installs");
        assertThat(plain(finding)).contains("differ by +4.20 hp (B − A)").contains("With A1, B1 and no rig record")
                .contains("It would be a gain on a rig that refits within 1.4 hp").doesNotContain("interval").doesNotContain("p =");
    }

    @Test
    void withoutAReturnDriftIsNotExcluded() {
        Finding finding = Findings.withNotices(Findings.gain(List.of()), Notice.of(Notice.Code.NO_RETURN_TO_A));

        assertThat(plain(finding)).endsWith("A was never fitted again after B, so drift over the day is not excluded as the cause.");
        assertThat(plain(Findings.gain(List.of()))).doesNotContain("drift");
    }

    @Test
    void nothingIsExaggerated() {
        for (Finding finding : List.of(Findings.gain(List.of()), Findings.slower(), Findings.undecided("hp"),
                Findings.noDifference(List.of()), Findings.cannotBeJudged(List.of()), Findings.meansDisagree())) {
            assertThat(plain(finding)).doesNotContainIgnoringCase("prove").doesNotContainIgnoringCase("guarantee")
                    .doesNotContainIgnoringCase("significant").doesNotContainIgnoringCase("up to").doesNotContain("!");
        }
    }

    @Test
    void excludedPullsAreHeldAgainstTheVerdictWithThem() {
        assertThat(spaced(FindingWords.withExcluded(Findings.gain(List.of()), Findings.undecided("hp")))).isEqualTo(
                "Without the excluded pulls: gain, +5.1 hp (95 % interval 3.3 to 6.9 hp). With them: undecided, +0.8 hp "
                        + "(95 % interval −2.9 to 4.5 hp). The verdict is another, so the reasons for leaving them out carry it.");
    }

    private static String plain(Finding finding) {
        return spaced(FindingWords.paragraph(finding, PUMP));
    }

    private static String spaced(String text) {
        return text.replace('\u202f', ' ').replace('\u00a0', ' ');
    }
}
