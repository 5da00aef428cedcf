package fairpull.report.wording;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.domain.heat.HeatNotice;
import fairpull.domain.heat.ModeChoice;
import fairpull.domain.heat.SoakAnswer;
import fairpull.report.HeatExamples;
import java.util.Arrays;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class SoakWordsTest {
    private static final SoakAnswer ANSWER = HeatExamples.of("ABA", 3, "IAT", 1);

    @Test
    void everyNoticeHasItsOwnSentence() {
        assertThat(Arrays.stream(HeatNotice.Code.values()).map(code -> HeatNoticeWords.sentence(HeatNotice.of(code, 300.0, 400.0))))
                .doesNotHaveDuplicates().allSatisfy(sentence -> assertThat(sentence).endsWith(".").doesNotContain("null", "NaN"));
    }

    @Test
    void everyReasonHasItsOwnWords() {
        ModeChoice choice = ANSWER.choice().orElseThrow();
        assertThat(Arrays.stream(ModeChoice.Reason.values())
                .map(reason -> SoakWords.reason(new ModeChoice(reason, OptionalDouble.empty(), OptionalDouble.empty(), choice.chosen()))))
                .doesNotHaveDuplicates().allSatisfy(words -> assertThat(words).matches("(one|two): .*"));
    }

    @Test
    void theHeadingSaysWhatIsNeeded() {
        assertThat(SoakWords.heading(ANSWER)).isEqualTo("Pulls every 5\u202fmin need 3 warm-up pulls first");
        assertThat(SoakWords.heading(HeatExamples.of("ABA", 0, "IAT", 1))).contains("need no warm-up pull");
    }

    /** 12.42 min rounded to the nearest tenth would not hold. */
    @Test
    void anIntervalIsRoundedUp() {
        assertThat(HeatNumbers.intervalUp(12.42 * 60)).isEqualTo("12.5\u202fmin");
        assertThat(HeatNumbers.intervalUp(12.5 * 60)).isEqualTo("12.5\u202fmin");
    }

    @Test
    void theBiasStandsInTheMeasuresOwnUnitBesideItsShare() {
        assertThat(SoakWords.bias(ANSWER).get(0).text()).isEqualTo("+0.057\u202fhp (+0.030\u202f%), 1.9\u202f% of the worthwhile gain");
    }
}
