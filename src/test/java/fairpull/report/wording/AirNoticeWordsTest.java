package fairpull.report.wording;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.domain.air.AirNotice;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class AirNoticeWordsTest {
    @Test
    void everyCodeHasOneSentenceOfItsOwn() {
        Set<String> sentences = new HashSet<>();
        for (AirNotice.Code code : AirNotice.Code.values()) {
            String sentence = AirNoticeWords.sentence(new AirNotice(code, List.of(288.15, -0.041, 310.0), false));
            assertThat(sentence).as(code.name()).hasSizeGreaterThan(40).endsWith(".").doesNotContain("null").doesNotContain("NaN")
                    .doesNotContain(". ");
            assertThat(sentences.add(sentence)).as(code.name()).isTrue();
        }
    }

    @Test
    void theSizeIsInTheSentence() {
        assertThat(AirNoticeWords.sentence(AirNotice.of(AirNotice.Code.SEA_LEVEL_FOR_STATION, 304.8, -0.0419)).replace('\u202f', ' '))
                .contains("305 m (1000 ft)").contains("4.19 % too low").contains("--sea-level");
        assertThat(AirNoticeWords.sentence(AirNotice.of(AirNotice.Code.HUMIDITY_LEFT_OUT, 0.5, -0.0188)).replace('\u202f', ' '))
                .contains("at 50 %").contains("1.88 % too low");
        assertThat(AirNoticeWords.sentence(AirNotice.of(AirNotice.Code.HUMIDITY_TOO_LOW, 0.0045).atFirst()).replace('\u202f', ' '))
                .startsWith("First install: Air of 0.45 %").contains("45 % is likely meant", "common practice, no source");
        assertThat(AirNoticeWords.sentence(AirNotice.of(AirNotice.Code.HUMIDITY_TOO_LOW, 0.015))).doesNotContain("meant")
                .contains("read the instrument again");
    }
}
