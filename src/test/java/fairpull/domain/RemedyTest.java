package fairpull.domain;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the window says of a remedy that was worded for commands. */
class RemedyTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "give the folder of another test | give the folder of another test",
        "give --expected, such as --expected 190hp | ''",
        "a percentage needs the expected level of the measure; give --expected, such as --expected 190hp "
                + "| a percentage needs the expected level of the measure",
        "change it with `fairpull amend`, or seal it anew with --again, which every finding will say | ''",
        "name it like B1-3.csv (A1-W2.csv for a warm-up), or give --install B1 --pull 3 | name it like B1-3.csv (A1-W2.csv for a warm-up)",
        "export it as measured and import it with --corrected none | ''"})
    void partsThatNameACommandAreLeftOut(String words, String shown) {
        assertThat(Remedy.everywhere(words).on(Remedy.Surface.WINDOW)).isEqualTo(shown);
        assertThat(Remedy.everywhere(words).on(Remedy.Surface.COMMAND_LINE)).isEqualTo(words);
    }
}
