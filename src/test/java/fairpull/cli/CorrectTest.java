package fairpull.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code correct} from end to end; factors computed outside from the printed formulas, as in FactorTest. */
class CorrectTest {
    private static final String WARM = "--temperature 30C --pressure 1000hPa --humidity 60%";

    @TempDir
    private Path folder;

    private static Run run(String line) {
        List<Object> words = new ArrayList<>(List.of("correct"));
        words.addAll(Arrays.asList(line.strip().split(" +")));
        return Run.of(words.toArray());
    }

    private static JsonNode json(String line) {
        return run(line + " --json").json();
    }

    @Test
    void theDocumentBeginsWithTheKeysOfTheContract() {
        JsonNode answer = json("--standard sae-j1349 " + WARM + " --power 300hp");
        List<String> keys = new ArrayList<>();
        answer.fieldNames().forEachRemaining(keys::add);

        assertThat(keys.subList(0, 7)).containsExactly("standard", "factor", "vapourPressureHPa", "dryPressureHPa", "airDensityKgM3",
                "densityAltitudeM", "warnings");
        assertThat(answer.get("standard").asText()).isEqualTo("sae-j1349");
        assertThat(answer.get("factor").asDouble()).isCloseTo(1.02876, within(1e-5));
        assertThat(answer.get("vapourPressureHPa").asDouble()).isCloseTo(25.482, within(0.001));
        assertThat(answer.get("dryPressureHPa").asDouble()).isCloseTo(974.519, within(0.001));
        assertThat(answer.get("warnings")).isEmpty();
        assertThat(answer.get("power").get("corrected").asDouble()).isCloseTo(300 * 1.02876, within(0.005));
    }

    /** One air in every unit: 30 °C, 1000 hPa, 60 %; its dew point and wet bulb to the digits typed. */
    @ParameterizedTest
    @CsvSource({"86F, 1000mbar, --humidity 60%", "303.15K, 100kPa, --humidity 60%", "30C, 29.52998inHg, --humidity 60%",
        "30C, 14.503774psi, --humidity 60%", "30C, 1000hPa, --dew-point 21.3886C", "30C, 1bar, --dew-point 70.4994F"})
    void everyUnitIsRead(String temperature, String pressure, String humidity) {
        assertThat(json("--standard sae-j1349 --temperature " + temperature + " --pressure " + pressure + " " + humidity)
                .get("factor").asDouble()).isCloseTo(1.02876, within(1e-5));
    }

    /** psychrolib's test: at 30 °C and 95461 Pa a wet bulb of 25 °C is a humidity ratio of 0.01922813, hence 2863.1 Pa of vapour. */
    @Test
    void aWetBulbIsRead() {
        assertThat(json("--standard sae-j1349 --temperature 30C --pressure 954.61hPa --wet-bulb 25C").get("vapourPressureHPa").asDouble())
                .isCloseTo(954.61 * 0.0192281274 / (0.621945 + 0.0192281274), within(0.01));
    }

    /** MetPy's test: 29.8 inHg at 500 m is 950.965 hPa. */
    @Test
    void aSeaLevelPressureIsBroughtToTheRig() {
        assertThat(json("--standard sae-j1349 --temperature 25C --pressure 29.8inHg --sea-level --elevation 500m --humidity 0%")
                .get("dryPressureHPa").asDouble()).isCloseTo(950.965, within(0.001));
    }

    @ParameterizedTest
    @CsvSource({"iso-1585, 1.02932", "eec-80-1269, 1.02437", "din-70020, 1.03014", "sae-j607, 1.06538", "none, 1"})
    void everyStandardAnswers(String standard, double factor) {
        assertThat(json("--standard " + standard + " " + WARM).get("factor").asDouble()).isCloseTo(factor, within(1e-4));
    }

    /** 120 000·8/(4·2000) = 120 mg per litre and cycle, 60 at a boost ratio of 2, so the exponent is 1.02; f_a is 1.03665. */
    @Test
    void compressionIgnitionAnswers() {
        JsonNode answer = json("--standard iso-1585-ci " + WARM + " --induction turbocharged --fuel-rate 8g/s --displacement 4L "
                + "--engine-speed 2000rpm --strokes 4 --boost-ratio 2");

        assertThat(answer.get("factor").asDouble()).isCloseTo(Math.pow(1.03665, 1.02), within(1e-4));
        assertThat(answer.get("warnings").toString()).contains("boost control");
    }

    @Test
    void oneStandardIsUndoneBeforeTheNextIsApplied() {
        JsonNode answer = json("--standard din-70020 --from sae-j1349 " + WARM + " --power 200PS");
        JsonNode back = json("--standard none --from sae-j1349 " + WARM + " --power 200PS");

        assertThat(answer.get("multiplier").asDouble()).isCloseTo(1.03014 / 1.02876, within(1e-4));
        assertThat(answer.get("power").get("observed").asDouble()).isCloseTo(200 / 1.02876, within(0.01));
        assertThat(answer.get("power").get("corrected").asDouble()).isCloseTo(200 / 1.02876 * 1.03014, within(0.02));
        assertThat(back.get("power").get("corrected").asDouble()).isCloseTo(200 / 1.02876, within(0.01));
    }

    @Test
    void bothUncertaintiesAreSaidAndMonteCarloAgrees() {
        Run text = run("--standard sae-j1349 " + WARM);
        JsonNode uncertainty = json("--standard sae-j1349 " + WARM + " --draws 100000 --seed 3 --correlation 0.9").get("uncertainty");
        double single = uncertainty.get("single").asDouble();

        assertThat(text.succeeded().out()).contains("back-to-back").contains("across days").contains("starting guesses");
        assertThat(uncertainty.get("sameSession").asDouble()).isCloseTo(Math.sqrt(0.2) * single, within(1e-9));
        assertThat(uncertainty.get("acrossDays").asDouble()).isCloseTo(Math.sqrt(2) * single, within(1e-9));
        assertThat(uncertainty.get("simulatedSingle").asDouble() / single).isCloseTo(1, within(0.014));
    }

    @Test
    void warningsSayTheirSize() {
        assertThat(run("--standard sae-j1349 --temperature 25C --pressure 1013.25hPa --elevation 1000ft --humidity 0%").out()
                .replace('\u202f', ' ')).contains("4.19 % too low");
        assertThat(run("--standard sae-j1349 --temperature 25C --pressure 990hPa").out().replace('\u202f', ' '))
                .contains("1.88 % too low");
        assertThat(run("--standard sae-j1349 --temperature 35.5C --pressure 850hPa --humidity 20%").out()).contains("0.93").contains("1.07")
                .contains("15 to 35").contains("900 to 1050");
    }

    @Test
    void theWindowSaysGoOrNoGoWithTheReason() {
        String window = " --window --worthwhile 1.5% --share 25%";
        JsonNode go = json("--standard sae-j1349 --temperature 24C --pressure 1000hPa --humidity 45%" + window).get("window");
        JsonNode no = json("--standard sae-j1349 --temperature 12C --pressure 1003hPa --humidity 35%" + window).get("window");

        assertThat(go.get("go").asBoolean()).isTrue();
        assertThat(go.get("pressureByAir")).hasSize(15);
        JsonNode later = go.get("largestChange").get("temperatureC");
        assertThat(later.get("low").asDouble()).isLessThan(24);
        assertThat(later.get("high").asDouble()).isGreaterThan(24);
        assertThat(no.get("go").asBoolean()).isFalse();
        assertThat(no.get("obstacles").toString()).contains("temperature-outside");
        assertThat(run("--standard sae-j1349 --temperature 24C --pressure 1000hPa --humidity 45%" + window).out()).contains("Go: ")
                .contains("starting guess");
        assertThat(run("--standard sae-j1349 --temperature 12C --pressure 1003hPa --humidity 35%" + window).words())
                .contains("No go: the temperature is outside the standard’s range, 15 to 35 °C.");
        String up = "--standard sae-j1349 --temperature 25C --pressure 943hPa --humidity 50%" + window;
        assertThat(run(up).words()).contains("No go: the factor is outside its range, 0.93 to 1.07", "--factor-range sets another");
        assertThat(run(up + " --factor-range 0.9-1.1").words()).contains("Go: ", "cancels");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "--temperature 20C --pressure 1000hPa --humidity 140%|140 % relative humidity cannot be|14 % is likely meant",
        "--temperature 20C --pressure 1000hPa --humidity -3%|0 and 100 %|read the instrument again",
        "--temperature 20C --pressure 29.9hPa --humidity 40%|29.9 hPa|29.9 inHg",
        "--temperature 20C --pressure 1003kPa --humidity 40%|1003 kPa|1003 hPa",
        "--temperature 77C --pressure 1000hPa --humidity 40%|77 °C|77 °F",
        "--temperature 290C --pressure 1000hPa --humidity 40%|290 °C|290 K",
        "--temperature 20C --pressure 1000hPa --dew-point 25C|dew point|above the temperature",
        "--temperature 20C --pressure 1000hPa --wet-bulb 25C|wet bulb|above the temperature",
        "--temperature 20C --pressure 1000hPa --wet-bulb 2C|so dry|wet bulb",
        "--temperature 2C --pressure 1000hPa --wet-bulb -1C|freezing|humidity",
        "--temperature 20C --pressure 1000hPa --humidity 40% --elevation 30000m|elevation|above sea level"})
    void airThatCannotBeIsRefusedWithWhatToDo(String air, String problem, String remedy) {
        run("--standard sae-j1349 " + air).refused(3, problem, remedy);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "--pressure 1000hPa --humidity 40%|--temperature",
        "--temperature 20C --humidity 40%|--pressure",
        "--temperature 20 --pressure 1000hPa|--temperature",
        "--temperature 20C --pressure 20C|--pressure",
        "--temperature 20C --pressure 1000hPa --humidity 35|--humidity",
        "--temperature 20C --pressure 1000hPa --humidity 35% --dew-point 5C|--dew-point",
        "--temperature 20C --pressure 1000hPa --sea-level|--elevation",
        "--temperature 20C --pressure 1000hPa --power 300|--power",
        "--temperature 20C --pressure 1000hPa --efficiency 2|--efficiency",
        "--temperature 20C --pressure 1000hPa --fuel-rate 8g/s|--fuel-rate",
        "--temperature 20C --pressure 1000hPa --from twice|--from",
        "--temperature 20C --pressure 1000hPa --window --worthwhile 1%|--window",
        "--temperature 20C --pressure 1000hPa --humidity 40% --window|--worthwhile",
        "--temperature 20C --pressure 1000hPa --humidity 40% --share 20%|--share",
        "--temperature 20C --pressure 1000hPa --humidity 40% --window --worthwhile 1% --factor-range 1.1|--factor-range",
        "--temperature 20C --pressure 1000hPa --humidity 40% --window --worthwhile 1% --factor-range 1.1-0.9|--factor-range",
        "--temperature 20C --pressure 1000hPa --humidity 40% --factor-range 0.9-1.1|--factor-range",
        "--temperature 20C --pressure 1000hPa --humidity 40% --first 20C|--first",
        "--temperature 20C --pressure 1000hPa --correlation 2|--correlation",
        "--temperature 20C --pressure 1000hPa --draws 1|--draws",
        "--temperature 20C --pressure 1000hPa --out x.csv|--out",
        "--table x.csv|--out",
        "--table x.csv --out y.csv --power 3hp|--power"})
    void wrongUsageNamesTheOption(String line, String option) {
        run("--standard sae-j1349 " + line).refused(2, option);
    }

    @Test
    void allThatIsMissingIsSaidInOneLine() {
        Run.of("correct", "--standard", "sae-j1349").refused(2, "add --temperature 12C --pressure 1003hPa");
        Run.of("correct", "--standard", "iso-1585-ci", "--induction", "na", "--pressure", "29.9inHg", "--sea-level", "--window").refused(2,
                "8 options are missing", "add --temperature 12C --humidity 35% --elevation 300m --fuel-rate 8g/s --displacement 4L "
                + "--engine-speed 2000rpm --strokes 4 --worthwhile 1.5%");
    }

    @ParameterizedTest
    @CsvSource({"--induction", "--fuel-rate", "--displacement", "--engine-speed", "--strokes", "--boost-ratio"})
    void eachThingThatADieselLacksIsNamed(String missing) {
        String all = "--standard iso-1585-ci " + WARM + " --induction turbocharged --fuel-rate 8g/s --displacement 4L "
                + "--engine-speed 2000rpm --strokes 4 --boost-ratio 2";

        run(all.replaceAll(missing + " \\S+", "")).refused(2, missing);
    }

    @Test
    void aTableGetsItsFactorsAndIsOtherwiseKept() {
        Path table = SmallTest.write(folder.resolve("day.csv"), """
                pull;Temperature (°F);Barometer (mbar);Humidity (%);power (hp);remark
                A1-1;86;1000;60;300,5;"fan; off"
                A1-2;77;990;;300,5;
                """);
        Path out = folder.resolve("out.csv");

        JsonNode answer = json("--standard sae-j1349 --table " + table + " --out " + out);

        assertThat(answer.get("rows").asInt()).isEqualTo(2);
        assertThat(SmallTest.read(out)).isEqualTo("""
                pull;Temperature (°F);Barometer (mbar);Humidity (%);power (hp);remark;factor;corrected power (hp);warnings
                A1-1;86;1000;60;300,5;"fan; off";1,028761;309,143;
                A1-2;77;990;;300,5;;1,000000;300,500;humidity-left-out
                """);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "temperature (C),pressure (hPa),humidity (%)~20,1000,40~20,1000,140|line 3|humidity",
        "temperature (C),pressure (hPa)~20,29.9|line 2|29.9 inHg",
        "temperature (C),pressure (hPa)~77,1000|line 2|77 °F",
        "temperature,pressure (hPa)~20,1000|line 1|unit",
        "temperature (C),pressure (hPa)~,1000|line 2|blank",
        "temperature (C),pressure (hPa)~warm,1000|line 2|warm",
        "temperature (C),pressure (hPa)|no reading|header",
        "colour,taste~1,2|line 1|temperature"})
    void aTableThatCannotBeUsedIsRefusedWithThePlace(String content, String place, String problem) {
        Path table = SmallTest.write(folder.resolve("bad.csv"), content.replace('~', '\n') + "\n");
        Path out = folder.resolve("out.csv");

        run("--standard sae-j1349 --table " + table + " --out " + out).refused(3, place.equals("no reading") ? "header" : place, problem);
        assertThat(Files.exists(out)).isFalse();
    }

    @Test
    void aTableIsNeverWrittenOverItself() {
        Path table = SmallTest.write(folder.resolve("day.csv"), "temperature (C),pressure (hPa)\n20,1000\n");

        run("--standard din-70020 --table " + table + " --out " + table).refused(2, "--out");
        assertThat(SmallTest.read(table)).isEqualTo("temperature (C),pressure (hPa)\n20,1000\n");
    }
}
