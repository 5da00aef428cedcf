package fairpull.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code correct --window} from end to end: decision, ranges and words fit together. */
class CorrectWindowTest {
    private static final String DEW = "--temperature 24C --pressure 1003hPa --dew-point 11.4C";

    private static Run run(String line, String... more) {
        List<Object> words = new ArrayList<>(List.of("correct", "--standard", "sae-j1349"));
        words.addAll(Arrays.asList(line.strip().split(" +")));
        words.addAll(Arrays.asList(more));
        return Run.of(words.toArray());
    }

    @Test
    void aDewPointKeepsItsOwnUncertaintyInEveryRange() {
        String question = DEW + " --window --worthwhile 0.7%";
        JsonNode window = run(question + " --json").json().get("window");

        assertThat(window.get("go").asBoolean()).isTrue();
        assertThat(window.get("pressureHPa").get("low").asDouble()).isLessThan(1003);
        assertThat(window.get("pressureHPa").get("high").asDouble()).isGreaterThan(1003);
        assertThat(window.get("dewPointC").get("low").asDouble()).isLessThan(11.4);
        assertThat(window.get("dewPointC").get("high").asDouble()).isGreaterThan(11.4);
        assertThat(run(question).words()).contains("Go: ", "a dew point of ").doesNotContain("at no ");
    }

    /** The same barometer, reduced to sea level, at both installs: only the 1 hPa between them counts. */
    @Test
    void theFirstBarometerIsReadAsThePresentOneIs() {
        JsonNode window = run("--temperature 24C --pressure 1013hPa --humidity 45% --sea-level --elevation 500m --window --worthwhile 1.5% "
                + "--factor-range 0.9-1.1 --json", "--first", "24C 1014hPa 45%").json().get("window");

        assertThat(window.get("go").asBoolean()).isTrue();
        assertThat(window.get("changeSoFar").asDouble()).as("1.18·(1.1/1.06) a 1014th, more than 0.1 % and less than 0.13 %")
                .isBetween(0.0010, 0.0013);
        assertThat(run("--help").out().replaceAll("\\s+", " ")).contains("its pressure read as --pressure is");
    }

    @Test
    void theFirstReadingIsReviewedToo() {
        assertThat(run("--temperature 24C --pressure 977hPa --humidity 45% --elevation 1000ft", "--first", "24C 1013hPa 0.5%").words())
                .contains("Warning: First install: At 305 m", "First install: Air of 0.5 %", "50 % is likely meant");
    }

    @Test
    void aSecondTemperatureIsTheDewPointOfTheFirstInstall() {
        JsonNode window = run(DEW + " --window --worthwhile 1% --json", "--first", "24C 1003hPa 11.4C").json().get("window");

        assertThat(window.get("changeSoFar").asDouble()).isZero();
        run("--temperature 24C --pressure 1003hPa --humidity 40%", "--first", "24C 1003hPa 11.4C").refused(2, "--first", "second");
    }

    @Test
    void theBudgetSaysOfWhatItIsAShare() {
        assertThat(run("--temperature 24C --pressure 1000hPa --humidity 45% --window --worthwhile 1.5%").words())
                .contains("may get 0.38 % wrong, 25 % of the worthwhile gain of 1.5 %", "counted is 10 % of its change",
                        "If this is the air of the first install, the factor may move until the last by ");
    }

    @Test
    void eachObstacleHasItsRemedy() {
        assertThat(run("--temperature 24C --pressure 1000hPa --humidity 45% --window --worthwhile 0.2%").words())
                .contains("No go: the sensors alone use up", "--share", "at no relative humidity", "the sensors leave nothing")
                .doesNotContain("humidity relative humidity");
        assertThat(run("--temperature 25C --pressure 1015hPa --humidity 45% --window --worthwhile 1%", "--first", "25C 965hPa 45%").words())
                .contains("No go: the air has moved too far", "fit A again", "wait");
    }

    /** 3 hp of 190 hp, and 2.2371 kW (745.700 W a hp) of 190 hp, are 1.5789 %. */
    @ParameterizedTest
    @CsvSource({"3hp, 190hp", "2.2371kW, 190hp", "4.5Nm, 285Nm"})
    void aGainInTheUnitOfThePowerIsAShareOfIt(String gain, String power) {
        assertThat(run("--temperature 24C --pressure 1000hPa --humidity 45% --window --worthwhile " + gain + " --power " + power
                + " --json").json().get("window").get("worthwhileGain").asDouble()).isCloseTo(3 / 190.0, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource({"3hp, ''", "3hp, --power 250Nm", "200hp, --power 190hp", "0hp, --power 190hp", "3, --power 190hp"})
    void aGainThatIsNoShareIsRefused(String gain, String power) {
        run("--temperature 24C --pressure 1000hPa --humidity 45% --window --worthwhile " + gain + " " + power).refused(2, "--worthwhile");
    }
}
