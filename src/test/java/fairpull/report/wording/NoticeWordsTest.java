package fairpull.report.wording;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.domain.Remedy.Surface;
import fairpull.domain.finding.CheckOutcome;
import fairpull.domain.finding.Notice;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class NoticeWordsTest {
    private static final List<String> NAMES = List.of("B1-2", "A2-4");

    @Test
    void everyCodeHasOneSentenceOfItsOwn() {
        Set<String> sentences = new HashSet<>();
        for (Notice.Code code : Notice.Code.values()) {
            String sentence = sentence(code);
            assertThat(sentence).as(code.name()).hasSizeGreaterThan(50).endsWith(".").doesNotContain("null").doesNotContain("NaN")
                    .doesNotContain(". ");
            assertThat(sentences.add(sentence)).as(code.name()).isTrue();
        }
    }

    @Test
    void figuresAndNamesAreInTheSentence() {
        assertThat(sentence(Notice.Code.UNEQUAL_PULLS)).contains("3 to 5 counted pulls");
        assertThat(sentence(Notice.Code.DID_NOT_COME_BACK)).contains("+3.0 hp (95 % interval 0.9 to 5.1 hp)");
        assertThat(sentence(Notice.Code.SEALED_AGAIN)).contains("3 times");
        assertThat(sentence(Notice.Code.LOG_CHANGED_BY_HAND)).contains("entry 3 ");
        for (Notice.Code code : List.of(Notice.Code.OUTLIERS, Notice.Code.ONE_PULL_DECIDES, Notice.Code.ONE_INSTALL_DECIDES,
                Notice.Code.EXPORT_CHANGED_BY_HAND, Notice.Code.MAPPING_CHANGED_BY_HAND, Notice.Code.PULLS_MISSING, Notice.Code.PULLS_AWAITED,
                Notice.Code.PULLS_EXCLUDED, Notice.Code.GATES_BROKEN)) {
            assertThat(sentence(code)).as(code.name()).contains("B1-2, A2-4");
        }
    }

    @Test
    void aSingleAmendmentIsOne() {
        assertThat(NoticeWords.sentence(Notice.of(Notice.Code.AMENDED_AFTER_DATA, 1.0), "")).contains("amended once");
        assertThat(NoticeWords.sentence(Notice.of(Notice.Code.AMENDED_AFTER_DATA, 2.0), "")).contains("amended 2 times");
    }

    @Test
    void aSingleEntryIsOne() {
        assertThat(NoticeWords.sentence(new Notice(Notice.Code.LOG_STATE, List.of(1.0), NAMES), "")).contains("holds 1 entry and");
        assertThat(NoticeWords.sentence(new Notice(Notice.Code.LOG_STATE, List.of(2.0), NAMES), "")).contains("holds 2 entries and");
    }

    private static String sentence(Notice.Code code) {
        return sentence(code, Surface.COMMAND_LINE);
    }

    private static String sentence(Notice.Code code, Surface surface) {
        List<Double> figures = code == Notice.Code.DID_NOT_COME_BACK ? List.of(3.0, 0.9, 5.1, 0.95) : List.of(3.0, 5.0, 6.0, 0.05);
        return NoticeWords.sentence(new Notice(code, figures, NAMES), "hp", surface).replace('\u202f', ' ').replace('\u00a0', ' ');
    }

    /** Values that nothing gives stand out by powers of ten, whose digits tell nothing. */
    @Test
    void aSpikeBeyondTenfoldIsToldWithoutItsDigits() {
        Notice small = CheckOutcome.naming(Notice.Code.SPIKES, List.of(2.0, 0.0345, 400.0), List.of("A1-1")).notice().orElseThrow();
        assertThat(NoticeWords.sentence(small, "")).contains("the worst by 3.45").doesNotContain("more than");
        for (double share : new double[] {3.2e30, Double.POSITIVE_INFINITY}) {
            Notice huge = CheckOutcome.naming(Notice.Code.SPIKES, List.of(2.0, share, 400.0), List.of("A1-1")).notice().orElseThrow();
            assertThat(NoticeWords.sentence(huge, "")).contains("the worst by more than 1000").hasSizeLessThan(220);
        }
    }

    /** A window has no command line beside it. */
    @Test
    void inTheWindowNoNoticeNamesACommandOrAnOption() {
        for (Notice.Code code : Notice.Code.values()) {
            String sentence = sentence(code, Surface.WINDOW);
            assertThat(sentence).as(code.name()).endsWith(".").doesNotContain("--").doesNotContain("fairpull ");
        }
    }
}
