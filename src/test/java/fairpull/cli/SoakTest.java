package fairpull.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SoakTest {
    private static final Path DEMO = Path.of("demo-data/cool-down/intake-air.csv");

    @TempDir
    private Path folder;

    /** Put in: 2.5 min with 4.2 K, 14 min with 2.8 K, ambient 22 °C, noise 0.08 K rounded to 0.1 K (demo-data/README.md). */
    @Test
    void findsWhatWasPutIntoTheDemoLog() {
        JsonNode answer = Run.of("soak", DEMO, "--ambient", "22C", "--level", "190hp", "--worthwhile", "3hp", "--json").json();
        JsonNode slow = answer.at("/fit/exponentials/1");

        assertThat(answer.at("/fit/timeConstants").asInt()).isEqualTo(2);
        assertThat(answer.at("/fit/exponentials/0/lowMinutes").asDouble()).isLessThan(2.5);
        assertThat(answer.at("/fit/exponentials/0/highMinutes").asDouble()).isGreaterThan(2.5);
        assertThat(slow.get("lowMinutes").asDouble()).isLessThan(14);
        assertThat(slow.get("highMinutes").asDouble()).isGreaterThan(14);
        assertThat(answer.at("/fit/residualDeviationK").asDouble()).isCloseTo(Math.hypot(0.08, 0.1 / Math.sqrt(12)), within(0.006));
        assertThat(answer.at("/day/warmUpsFirst").asInt()).isEqualTo(3);
        assertThat(answer.at("/day/bias/own").asDouble()).isCloseTo(190 * answer.at("/day/bias/relative").asDouble(), within(1e-9));
    }

    @Test
    void ambientIsFittedWhereItIsNotGiven() {
        JsonNode answer = Run.of("soak", DEMO, "--json").json();
        assertThat(answer.at("/fit/ambientGiven").asBoolean()).isFalse();
        assertThat(answer.at("/fit/ambientC").asDouble()).isCloseTo(22, within(3 * answer.at("/fit/ambientStandardErrorK").asDouble()));
    }

    /** τ·ln(1 + ΔT/tolerance) = 9·ln 4 = 12.477 min; settled 6/(e^(5/9) − 1) = 8.0764 K; cools within 9·ln 3 = 9.888 min (computed by hand). */
    @Test
    void typedConstantsGiveTheClosedForms() {
        JsonNode answer = Run.of("soak", "--time-constant", "9min", "--pull-rise", "6K", "--json").json();

        assertThat(answer.get("intervalMinutes").asDouble()).isCloseTo(12.477, within(5e-4));
        assertThat(answer.get("coolsWithinMinutes").asDouble()).isCloseTo(9.888, within(5e-4));
        assertThat(answer.at("/day/settledRiseK").asDouble()).isCloseTo(8.0764, within(5e-5));
        assertThat(answer.at("/day/warmUpsFirst").asInt()).isEqualTo(3);
        assertThat(answer.get("fit").isNull()).isTrue();
        assertThat(answer.get("intervalLowMinutes").isNull()).isTrue();
        assertThat(answer.get("warnings").toString()).contains("starting guess", "25");
    }

    @Test
    void unitsMayBeUsCustomary() {
        JsonNode metric = Run.of("soak", "--time-constant", "9min", "--pull-rise", "6K", "--ambient", "25C", "--json").json();
        JsonNode us = Run.of("soak", "--time-constant", "540s", "--pull-rise", "10.8F", "--tolerance", "3.6F", "--ambient", "77F", "--json").json();

        assertThat(us.get("intervalMinutes").asDouble()).isCloseTo(metric.get("intervalMinutes").asDouble(), within(1e-9));
        assertThat(us.at("/day/bias/relative").asDouble()).isCloseTo(metric.at("/day/bias/relative").asDouble(), within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"-0.18%/K,-0.0036", "-0.1%/F,-0.0036", "-0.36hp/K,-0.0036"})
    void theSensitivityIsTakenAsTyped(String sensitivity, double twoKelvin) {
        JsonNode answer = Run.of("soak", "--time-constant", "9", "--pull-rise", "6K", "--level", "200hp", "--sensitivity", sensitivity,
                "--json").json();
        assertThat(answer.at("/day/gateBias/relative").asDouble()).isCloseTo(twoKelvin, within(1e-9));
    }

    @Test
    void theSensitivityIsLabelledWithItsSource() {
        assertThat(Run.of("soak", "--time-constant", "9", "--pull-rise", "6K").succeeded().out().replaceAll("\\s+", " "))
                .contains("√(T₀/T) of the absolute inlet temperature, the temperature term of EEC 80/1269 (from memory)");
    }

    @Test
    void thePageHoldsCurveResidualsAndDay() throws IOException {
        Path page = folder.resolve("new/soak.html");
        Run.of("soak", DEMO, "--ambient", "22C", "--report", page).succeeded();
        String html = Files.readString(page);

        assertThat(html).contains("Cool-down and fitted curve", "What the curve leaves over", "Start temperature of every pull",
                "Intake Air, °C", "reading − curve, K", "The log shows two time constants").doesNotContain("<script", "http://", "https://");
        assertThat(html.split("<svg", -1)).hasSize(4);
    }

    @Test
    void aLogThatEndsEarlyIsWarnedOf() throws IOException {
        Path log = log("Intake Air (°C)", 30, i -> 22 + 30 * Math.exp(-i / 60.0) + 0.02 * (i % 3 - 1));
        JsonNode answer = Run.of("soak", log, "--ambient", "22C", "--json").json();
        assertThat(answer.get("warnings").toString()).contains("less than the time constant");
    }

    /** Seven readings in a minute: the time constant is not known within orders of magnitude, and nothing is planned with it. */
    @Test
    void aLogTooShortToSayGivesTheRemedyAndNoFigures() throws IOException {
        Path log = write("Time (s),IAT (°C)\n0,50\n10,49.1\n20,47.6\n30,46.9\n40,45.2\n50,44.6\n60,43.4\n");

        String out = Run.of("soak", log).succeeded().out().replaceAll("\\s+", " ");
        JsonNode json = Run.of("soak", log, "--json").json();

        assertThat(out).startsWith("This log cannot say").contains("give --ambient", "not even within a factor of three")
                .doesNotContain("warm-up pull", "Shortest interval", "holds every start", "Left on B");
        assertThat(json.get("told").asBoolean()).isFalse();
        assertThat(json.get("day").isNull() && json.get("intervalMinutes").isNull()).isTrue();
        assertThat(Run.of("soak", DEMO, "--json").json().get("told").asBoolean()).isTrue();
    }

    @Test
    void aLogThatEndsLateIsNotWarnedOf() {
        assertThat(Run.of("soak", DEMO, "--ambient", "22C").succeeded().out()).doesNotContain("less than the time constant");
    }

    @Test
    void readingsThatFollowOneAnotherAreWarnedOf() throws IOException {
        Path log = log("IAT (°C)", 200, i -> 22 + 30 * Math.exp(-i / 40.0) + 0.2 * Math.sin(i / 5.0));
        assertThat(Run.of("soak", log, "--ambient", "22C").succeeded().out()).contains("err alike");
    }

    @Test
    void aDayThatNoWarmUpsHoldIsSaidSo() {
        String out = Run.of("soak", "--time-constant", "100h", "--pull-rise", "6K", "--interval", "1").succeeded().out();
        assertThat(out).contains("cannot be held within 2\u202fK", "wait longer between pulls").doesNotContain("with these warm-ups");
    }

    /** The demo's warm-ups turn the bias round and leave as much of it; at a long swap of the same car they do take some away. */
    @Test
    void warmUpsThatServeOnlyTheGateAreSaidTo() {
        JsonNode gate = Run.of("soak", DEMO, "--pull-rise", "6K", "--json").json();
        double with = Math.abs(gate.at("/day/bias/relative").asDouble());
        double without = Math.abs(gate.at("/day/biasWithoutWarmUps/relative").asDouble());

        assertThat(with).isGreaterThan(0.9 * without);
        assertThat(gate.get("warnings").toString()).contains("that is all they do here", "0.050", "0.051");
        assertThat(Run.of("soak", "--time-constant", "20min", "--pull-rise", "6K", "--interval", "10", "--sequence", "AB").succeeded().out())
                .doesNotContain("that is all they do");
    }

    @Test
    void timeRunningBackwardsIsRefused() throws IOException {
        Path log = write("Time (s),IAT (°C)\n0,50\n10,45\n5,44\n20,40\n30,37\n40,35\n50,34\n");
        Run.of("soak", log).refused(3, "log.csv", "line 4: time runs backwards, from 10 s to 5 s", "sort the rows");
    }

    @Test
    void fewReadingsAreRefused() throws IOException {
        Path log = write("Time (s),IAT (°C)\n0,50\n10,45\n20,41\n30,38\n40,36\n");
        Run.of("soak", log).refused(3, "5 readings", "at least 6");
    }

    @Test
    void aRisingTemperatureIsRefused() throws IOException {
        Run.of("soak", log("IAT (°C)", 30, i -> 22 + i * 0.5)).refused(3, "does not fall", "log a cool-down");
        Run.of("soak", log("IAT (°C)", 60, i -> i < 20 ? 30 + i : 50 - (i - 20) * 0.6)).refused(3, "first rises", "--from ");
    }

    @Test
    void aMissingTemperatureIsRefused() throws IOException {
        Path log = write("Time (s),Boost (kPa)\n0,50\n10,45\n20,41\n30,38\n40,36\n50,35\n");
        Run.of("soak", log).refused(3, "no column is known as temperature", "“Boost (kPa)”", "--column temperature=");
    }

    @Test
    void aMissingTimeIsRefused() throws IOException {
        Path log = write("IAT (°C),Boost (kPa)\n50,1\n45,2\n41,3\n38,4\n36,5\n35,6\n");
        Run.of("soak", log).refused(3, "no column is known as time", "--column time=");
    }

    @Test
    void twoTemperaturesAreAskedAbout() throws IOException {
        Path log = write("Time (s),IAT (°C),Coolant (°C)\n0,50,90\n10,45,88\n20,41,86\n30,38,85\n40,36,84\n50,35,83\n");
        Run.of("soak", log).refused(3, "could each be temperature", "--column temperature=");
        Run.of("soak", log, "--column", "temperature=IAT").succeeded();
    }

    @Test
    void aTemperatureWithoutUnitIsAskedAbout() throws IOException {
        Path log = write("Time (s),IAT\n0,50\n10,45\n20,41\n30,38\n40,36\n50,35\n");
        Run.of("soak", log).refused(3, "the unit of temperature is not named", "--column temperature=");
    }

    @Test
    void fahrenheitTypedAsCelsiusIsRefusedOrDoubted() throws IOException {
        Run.of("soak", DEMO, "--ambient", "72C").refused(3, "--ambient", "72 °C", "--ambient 72F");
        Path hot = log("Oil Temp (°C)", 60, i -> 75 + 150 * Math.exp(-i / 20.0));
        Run.of("soak", hot).refused(3, "225.0 °C, hotter than air, coolant or oil", "°F", "\":F");
        Path warm = log("IAT (°C)", 60, i -> 72 + 60 * Math.exp(-i / 20.0) + 0.1 * (i % 3));
        assertThat(Run.of("soak", warm).succeeded().out()).contains("if the log is in °F");
        assertThat(Run.of("soak", warm, "--column", "temperature=IAT:F").succeeded().out()).doesNotContain("if the log is in °F");
    }

    @Test
    void anAmbientAboveTheEndOfTheLogIsRefused() {
        Run.of("soak", DEMO, "--ambient", "30C").refused(3, "the log ends at 22.", "below the ambient of 30.0 °C");
    }

    @Test
    void aStraightLogIsRefused() throws IOException {
        Run.of("soak", log("IAT (°C)", 30, i -> 60 - i)).refused(3, "tell no time constant", "--ambient");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "--time-constant 9", "--time-constant 9 --time-constant 30 --pull-rise 6", "--time-constant 0 --pull-rise 6",
        "--time-constant 9 --pull-rise -6K", "--time-constant 9 --pull-rise 6 --ambient 22", "--time-constant 9hp --pull-rise 6",
        "--time-constant 9 --pull-rise 6 --tolerance 0", "--time-constant 9 --pull-rise 6 --worthwhile 3hp",
        "--time-constant 9 --pull-rise 6 --level 190hp --worthwhile 3Nm", "--time-constant 9 --pull-rise 6 --sensitivity -0.18%",
        "--time-constant 9 --pull-rise 6 --sequence AXA", "--time-constant 9 --pull-rise 6 --pulls 0",
        "--time-constant 9 --pull-rise 6 --interval 0", "--time-constant 9 --pull-rise 6 --swap -1",
        "--time-constant 9 --pull-rise 6 --sensitivity -1hp/K", "demo-data/cool-down/intake-air.csv --time-constant 9",
        "demo-data/cool-down/intake-air.csv --column IAT"})
    void wrongUsageIsOneLine(String options) {
        List<Object> words = new ArrayList<>(List.of("soak"));
        words.addAll(options.isEmpty() ? List.of() : List.of(options.split(" ")));
        Run.of(words.toArray()).refused(2);
    }

    /** Any amounts and any bent cool-down: an answer or one line, never a fault. */
    @Test
    void anyWordsAndAnyLogGiveAnAnswerOrOneLine() throws IOException {
        SplittableRandom random = new SplittableRandom(20260513);
        List<String> amounts = List.of("0", "1", "-1", "1e9", "1e308", "1e-308", "2K", "9min", "22C", "72F", "-0.2%/K", "3hp", "x", "", "50%",
                "1e300min", "0.001K", "1000K", "86400s", "ABBA", "A", "5000K");
        List<String> options = List.of("--ambient", "--time-constant", "--share", "--pull-rise", "--tolerance", "--sequence", "--pulls",
                "--interval", "--swap", "--sensitivity", "--level", "--worthwhile", "--from");
        for (int round = 0; round < 60; round++) {
            double tau = Math.exp(random.nextDouble(-2, 8));
            double noise = Math.exp(random.nextDouble(-8, 3));
            Path log = log("IAT (°C)", random.nextInt(4, 60), i -> 20 + 40 * Math.exp(-i / tau) + noise * random.nextDouble(-1, 1));
            List<Object> words = new ArrayList<>(List.of("soak"));
            words.addAll(random.nextBoolean() ? List.of(log) : List.of("--time-constant", "9min", "--pull-rise", "6K"));
            for (int more = random.nextInt(3); more > 0; more--) {
                words.add(options.get(random.nextInt(options.size())));
                words.add(amounts.get(random.nextInt(amounts.size())));
            }
            words.addAll(List.of("--report", folder.resolve("any.html")));
            Run run = Run.of(words.toArray());
            assertThat(run.status()).as("%s: %s", words, run.err()).isIn(0, 2, 3);
            assertThat(run.err().lines().count()).as("%s", run.err()).isLessThanOrEqualTo(1);
        }
    }

    private Path log(String column, int readings, IntToDoubleFunction celsius) throws IOException {
        StringBuilder text = new StringBuilder("Time (s)," + column + "\n");
        for (int i = 0; i < readings; i++) {
            text.append(String.format(Locale.ROOT, "%d,%.3f%n", i * 10, celsius.applyAsDouble(i)));
        }
        return write(text.toString());
    }

    private Path write(String text) throws IOException {
        return Files.writeString(folder.resolve("log.csv"), text);
    }
}
