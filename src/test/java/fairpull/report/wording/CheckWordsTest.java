package fairpull.report.wording;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.domain.finding.Finding;
import fairpull.domain.finding.ScatterRecord;
import fairpull.report.Examples;
import fairpull.report.Findings;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CheckWordsTest {
    @Test
    void aRecordDecidesWhetherTheCarCameBack() {
        Said said = CheckWords.returnCheck(Findings.gain(List.of()));

        assertThat(said.head()).isEqualTo("Came back");
        assertThat(plain(said)).isEqualTo("Last A − first A: −0.4 hp; with the refit scatter on record the 95 % interval is −3.1 to "
                + "2.3 hp, "
                + "which holds 0.");
    }

    @Test
    void withoutARecordTheReturnIsInformationOnly() {
        Said said = CheckWords.returnCheck(Findings.undecided("hp"));

        assertThat(said.head()).isEqualTo("Return: for information");
        assertThat(plain(said)).contains("pull scatter alone gives a 95 % interval of −0.7 to 1.7 hp")
                .contains("no record says by how much");
    }

    @Test
    void whatDoesNotApplySaysSo() {
        assertThat(CheckWords.returnCheck(Examples.cannotBeJudged().deciding()).text()).contains("fitted once only");
        assertThat(CheckWords.returnCheck(Examples.threeSessions().deciding()).text()).contains("each session carries its own A");
        assertThat(CheckWords.record(Findings.undecided("hp")).text()).isEqualTo("Judged without a record of refit scatter.");
    }

    @Test
    void everyFindingHasTheSameChecks() {
        for (Finding finding : List.of(Findings.gain(List.of()), Findings.undecided("hp"), Findings.noDifference(List.of()),
                Findings.cannotBeJudged(List.of()))) {
            assertThat(CheckWords.all(finding)).hasSize(8).allSatisfy(said -> {
                assertThat(said.head()).isNotBlank();
                assertThat(said.text()).endsWith(".").doesNotContain("NaN");
            });
        }
    }

    @Test
    void whatDecidesIsNamed() {
        assertThat(CheckWords.all(Findings.undecided("hp"))).extracting(CheckWordsTest::plain)
                .anySatisfy(text -> assertThat(text).contains("the verdict is another without B1-2"))
                .anySatisfy(text -> assertThat(text).contains("2 of B1 by −2.2 hp"))
                .anySatisfy(text -> assertThat(text).contains("p = 0.33, all 3 orders counted"));
    }

    private static String plain(Said said) {
        return said.text().replace('\u202f', ' ').replace('\u00a0', ' ');
    }

    /** A guess must not be called a record in any sentence. */
    @Test
    void aStartingGuessIsNotCalledARecord() {
        Finding recorded = Findings.gain(List.of());
        Finding guessed = Findings.gain(List.of(), Optional.of(new ScatterRecord(0.9, 4, true)));

        assertThat(CheckWords.record(recorded).head()).isEqualTo("Scatters as the record says");
        assertThat(CheckWords.record(guessed).head()).isEqualTo("Scatters as the starting guess says");
        assertThat(CheckWords.returnCheck(guessed).text()).contains("with the starting guess of refit scatter").doesNotContain("record");
        assertThat(TippingWords.recordFigure(guessed.settings().refitRecord().orElseThrow(), "hp")).contains("a starting guess, 4");
    }
}
