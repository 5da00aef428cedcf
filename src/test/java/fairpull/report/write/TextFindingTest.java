package fairpull.report.write;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.report.Examples;
import fairpull.report.Findings;
import fairpull.report.wording.Subject;
import org.junit.jupiter.api.Test;

class TextFindingTest {
    @Test
    void everythingFitsHundredColumns() {
        Examples.all().forEach((name, judgement) -> assertThat(TextFinding.text(judgement).lines()
                .filter(line -> line.strip().contains(" "))).as(name)
                .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(100)));
    }

    @Test
    void aTestIsTold() {
        assertThat(plain(TextFinding.text(Examples.gain()))).contains("A gain, and shown to be worthwhile\n─────",
                "code 7KD2-9QXM-41", "All data of this test are invented.", "Change, B − A                         +5.1 hp\n",
                "95 % interval                         3.3 to 6.9 hp\n", "Came back ", "Further measures\npeak torque", "Claims\n",
                "Amendments\n", "Note     Left out");
    }

    @Test
    void aPlainTableIsToldToo() {
        String text = plain(TextFinding.text(Findings.undecided("hp"), Subject.of("value")));

        assertThat(text).startsWith("Undecided\n").contains("With B, value was 0.8 hp higher than with A")
                .contains("Note     Refit scatter came out as zero").contains("Warning  The verdict would be another");
    }

    @Test
    void alarmsComeFirstAmongTheNotices() {
        String text = TextFinding.text(Examples.longTexts());

        assertThat(text.indexOf("ALARM ")).isPositive();
        assertThat(text).contains("ALARM    The log was changed by hand");
    }

    private static String plain(String text) {
        return text.replace('\u202f', ' ').replace('\u00a0', ' ');
    }
}
