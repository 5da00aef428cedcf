package fairpull.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Ugly folders, all invented: what the exports show against themselves is said at import and in the finding, and no pull vanishes. */
class PullChecksTest {
    private static final String HEADER = "Time (s),Engine Speed (rpm),Power (kW),Torque (Nm),Throttle (%)\n";

    @TempDir
    private Path folder;
    private Path test;

    @BeforeEach
    void make() {
        test = SmallTest.make(folder.resolve("test"), "ABA");
    }

    private Path export(String pull, long seed, String header, IntToDoubleFunction change) {
        Random random = new Random(seed);
        StringBuilder text = new StringBuilder(header);
        for (int row = 0; row <= 200; row++) {
            int rpm = 2000 + 25 * row;
            double torque = (240 - row * 0.1) * (1 + 0.004 * random.nextGaussian()) * change.applyAsDouble(row);
            text.append(String.format(Locale.ROOT, "%.2f,%d,%.3f,%.2f,%.1f%n", row / 20.0, rpm, torque * rpm * Math.PI / 30_000, torque, 99.4));
        }
        return SmallTest.write(folder.resolve(pull + ".csv"), text.toString());
    }

    private JsonNode take(Path... files) {
        return Run.of(SmallTest.words("import", test, List.of(files), "--corrected", "none", "--json")).json().get("taken");
    }

    private JsonNode judged() {
        return Run.of("judge", test, "--json").json();
    }

    private static List<String> raised(JsonNode finding) {
        List<String> raised = new ArrayList<>();
        finding.get("checks").forEach(check -> {
            if (check.get("state").asText().equals("raised")) {
                raised.add(check.get("code").asText() + " " + check.get("pulls"));
            }
        });
        return raised;
    }

    @Test
    void cleanExportsRaiseNothingAndEveryCheckIsShown() {
        JsonNode taken = take(export("A1-1", 1, HEADER, row -> 1), export("B1-1", 2, HEADER, row -> 1.02),
                export("A2-1", 3, HEADER, row -> 1.001));

        assertThat(taken.findValues("doubts")).allSatisfy(doubts -> assertThat(doubts).isEmpty());
        assertThat(raised(judged())).isEmpty();
        assertThat(judged().get("checks")).hasSize(17);
        assertThat(judged().get("checks").findValuesAsText("state")).contains("clear", "not applicable");
    }

    /** Warm-ups and counted pulls: a power of 10³² kW, and a speed that is below zero throughout. */
    @Test
    void whatNoRollerMeasuresIsSaidAtImportAndInTheFinding() {
        Path warmed = folder.resolve("warmed");
        Run.of("new", warmed, "--part-a", "a", "--part-b", "b", "--measure", "mean power 3000-6000 rpm in kW", "--sequence", "ABA",
                "--warm-ups", "1", "--pulls", "2").succeeded();
        List<Path> files = List.of(export("A1-1", 1, HEADER, row -> row == 100 ? 1e30 : 1), export("B1-1", 2, HEADER, row -> 1.02),
                export("A2-1", 3, HEADER, row -> 1.001), backwards("A1-W1", 4), export("B1-W1", 5, HEADER, row -> 1));
        JsonNode taken = Run.of(SmallTest.words("import", warmed, files, "--corrected", "none", "--json")).json().get("taken");

        String sentence = "Values that no engine and no roller gives: ";
        assertThat(taken.get(0).get("doubts").toString()).contains(sentence + "A1-1 (P = ", "e+32 kW)", "column and unit");
        assertThat(taken.get(1).get("doubts").toString()).doesNotContain(sentence);
        assertThat(taken.get(3).get("doubts").toString()).contains(sentence + "A1-W1 (n < 0)");
        assertThat(taken.get(4).get("doubts").toString()).doesNotContain(sentence);
        JsonNode finding = Run.of("judge", warmed, "--json").json();
        assertThat(finding.get("warnings").toString()).contains(sentence, "A1-1 (P = ", "A1-W1 (n < 0)").doesNotContain("B1-W1 (");
        assertThat(raised(finding)).anyMatch(check -> check.startsWith("values implausible") || check.startsWith("values-implausible"));
    }

    private Path backwards(String pull, long seed) {
        String[] lines = SmallTest.read(export(pull, seed, HEADER, row -> 1)).split("\n");
        StringBuilder text = new StringBuilder(HEADER);
        for (int line = 1; line < lines.length; line++) {
            text.append(lines[line].replaceFirst(",(\\d+),", ",-$1,")).append('\n');
        }
        return SmallTest.write(folder.resolve(pull + ".csv"), text.toString());
    }

    @Test
    void aTypedPowerThatNoRollerMeasuresIsRefused() {
        Path typed = folder.resolve("typed");
        Run.of("new", typed, "--part-a", "a", "--part-b", "b", "--measure", "typed power in hp", "--sequence", "ABA", "--worthwhile", "3hp")
                .succeeded();
        Run.of("note", typed, "A1-1", "--value", "1e32hp").refused(3, "A1-1", "no roller measures “1e32hp”", "unit");
        Run.of("note", typed, "A1-1", "--value", "-7000hp").refused(3, "no roller measures");
        Run.of("note", typed, "A1-1", "--value", "6000hp").succeeded();
    }

    @Test
    void theRowAfterLiftOffIsLeftOutWhereTheThrottleTellsItAndDoubtedWhereNot() {
        Path told = folder.resolve("told");
        Path untold = folder.resolve("untold");
        for (Path plan : List.of(told, untold)) {
            Run.of("new", plan, "--part-a", "old", "--part-b", "new", "--measure", "peak power in kW", "--further",
                    "power at 7000 rpm in kW", "--sequence", "ABA", "--pulls", "1", "--warm-ups", "0", "--bandwidth", "100").succeeded();
        }
        Path log = export("A1-1", 1, HEADER, row -> 1);
        String lifted = SmallTest.read(log) + "10.05,7010,-15.000,-20.43,0.0\n";
        String bare = lifted.replaceAll("(?m),[^,\n]*$", "");

        JsonNode cut = Run.of("import", told, SmallTest.write(folder.resolve("told/A1-1.csv"), lifted), "--corrected", "none", "--json")
                .json().get("taken").get(0);
        JsonNode whole = Run.of("import", untold, SmallTest.write(folder.resolve("untold/A1-1.csv"), bare), "--corrected", "none", "--json")
                .json().get("taken").get(0);

        assertThat(cut.get("doubts")).isEmpty();
        // 220 N·m at 7000 rpm are 161.3 kW, and noise of 0.4 % a row; one row of −15 kW pulls the smoothed end down by a third
        assertThat(powerAtTheEnd(cut)).isCloseTo(220 * 7000 * Math.PI / 30_000, within(1.3));
        assertThat(powerAtTheEnd(whole)).isLessThan(150);
        assertThat(SmallTest.read(told.resolve("mapping.json"))).contains("Throttle (%)");
        assertThat(whole.get("doubts").toString()).contains("end of the sweep").contains("7010");
    }

    private static double powerAtTheEnd(JsonNode taken) {
        JsonNode last = taken.get("values").get(1);
        assertThat(last.get("measure").asText()).isEqualTo("power at 7000 rpm");
        return last.get("value").asDouble();
    }

    @Test
    void aMixedUpUnitAndASpikeAreSaidAtImportAndInTheFinding() {
        JsonNode taken = take(export("A1-1", 1, HEADER, row -> 1), export("B1-1", 2, HEADER.replace("kW", "PS"), row -> 1.02),
                export("A2-1", 3, HEADER, row -> row == 120 ? 1.2 : 1));

        assertThat(taken.get(0).get("doubts")).isEmpty();
        assertThat(taken.get(1).get("doubts").toString()).contains("B1-1 (PS → kW)");
        assertThat(taken.get(2).get("doubts").toString()).contains("far from their neighbours").contains("5000");
        assertThat(raised(judged())).containsExactly("units mixed up [\"B1-1 (PS → kW)\"]", "spikes [\"A2-1\"]");
        assertThat(judged().get("warnings").toString()).contains("--column power=P:kW");
    }

    @Test
    void theRemedyNamesTheColumnOfTheWrongUnit() {
        JsonNode taken = take(export("A1-1", 1, HEADER.replace("Nm", "lb-ft"), row -> 1));

        assertThat(taken.get(0).get("doubts").toString()).contains("A1-1 (lbf·ft → N·m)", "--column torque=T:N·m").doesNotContain("power=P");
    }

    @Test
    void oneExportUnderTwoNamesIsFoundThoughItsBytesDiffer() {
        Path first = export("A1-1", 1, HEADER, row -> 1);
        Path copy = SmallTest.write(folder.resolve("A2-1.csv"), SmallTest.read(first).replace("\n", "\r\n"));
        JsonNode taken = take(first, export("B1-1", 2, HEADER, row -> 1.02), copy);

        assertThat(taken.get(2).get("doubts").toString()).contains("A2-1 = A1-1");
        assertThat(raised(judged())).containsExactly("numbers repeated [\"A2-1 = A1-1\"]");
    }

    @Test
    void aPullThatWasAbortedAndRunAgainKeepsItsStory() {
        Run.of("note", test, "B1-1", "--aborted", "felt slow").succeeded();
        take(export("A1-1", 1, HEADER, row -> 1), export("B1-1", 2, HEADER, row -> 1.02), export("A2-1", 3, HEADER, row -> 1));
        JsonNode finding = judged();

        assertThat(finding.get("warnings").toString()).contains("B1-1 (then run again: felt slow)");
        assertThat(finding.get("pulls").toString()).contains("run again after it was aborted: felt slow");
    }

    @Test
    void everyPullHasAFateAndTheFindingStandsWithAndWithoutTheExcluded() {
        take(export("A1-1", 1, HEADER, row -> 1), export("A1-2", 5, HEADER, row -> 0.99), export("B1-1", 2, HEADER, row -> 1.02),
                export("A2-1", 3, HEADER, row -> 1));
        Run.of("exclude", test, "A1-2", "--because", "coolant gate broken").succeeded();
        Run.of("note", test, "B1-2", "--aborted", "misfire").succeeded();
        JsonNode finding = judged();

        assertThat(finding.get("pulls").findValuesAsText("fate")).containsExactly("used", "excluded", "used", "aborted", "used", "awaited");
        assertThat(finding.get("withExcludedPulls").get("installs").get(0).get("pulls").asInt()).isEqualTo(2);
        assertThat(finding.get("installs").get(0).get("pulls").asInt()).isEqualTo(1);
    }

    @Test
    void aWarmUpWithATextAmongItsNumbersIsStillTaken() {
        Path warmed = folder.resolve("warmed");
        Run.of("new", warmed, "--part-a", "belt pump", "--part-b", "electric pump", "--measure", "mean power 3000-6000 rpm in kW",
                "--sequence", "ABA", "--warm-ups", "1", "--pulls", "1").succeeded();
        Path file = export("A1-W1", 1, HEADER, row -> 1);
        SmallTest.write(file, SmallTest.read(file).replaceFirst("0.50,2250,[\\d.]+", "0.50,2250,lost"));

        Run.of("import", warmed, file, "--corrected", "none").succeeded();
    }
}
