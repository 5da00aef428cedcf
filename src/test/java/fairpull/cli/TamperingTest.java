package fairpull.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What was changed by hand is said by judge and check; what does not matter is not; what was cut short is mended. */
class TamperingTest {
    @TempDir
    private static Path made;

    @TempDir
    private Path folder;
    private Path test;

    private interface Change {
        void in(Path test) throws IOException;
    }

    @BeforeEach
    void aCopyOfTheTest() throws IOException {
        test = folder.resolve("test");
        Folders.copy(made, folder);
    }

    @BeforeAll
    static void aSealedTestWithAllItsPulls() {
        Path test = SmallTest.make(made.resolve("test"), "ABA", "--worthwhile", "2kW", "--refit-scatter", "0.5kW", "--refit-df", "8");
        Run.of("seal", test).succeeded();
        Run.of("amend", test, "--set", "question.worthwhileGainSi=1.5kW", "--because", "the customer asks for less").succeeded();
        Run.of("note", test, "A1-1", "--condition", "coolant=90C").succeeded();
        Run.of(SmallTest.words("import", test, SmallTest.exports(made.resolve("exports"), "A1-1 A1-2 B1-1 B1-2 A2-1",
                100.1, 100.4, 102.2, 102.0, 100.3), "--corrected", "none")).succeeded();
        Run.of(SmallTest.words("import", test, SmallTest.exports(made.resolve("exports"), "A2-2", 100.0), "--corrected", "none"))
                .succeeded();
        Run.of("exclude", test, "A1-2", "--because", "slip").succeeded();

    }

    static Stream<Arguments> changes() {
        String plan = "The plan is not the one that was sealed";
        String seal = "The seal file does not belong to the log";
        String log = "The log was changed by hand";
        String mapping = "Read with other columns or units than at import";
        return Stream.of(
                change("one digit of the plan", plan, replace("plan.json", "\"errorRate\" : 0.05", "\"errorRate\" : 0.06")),
                change("one letter of the plan", plan, replace("plan.json", "belt pump", "belt bump")),
                change("the order of installs", plan, test -> {
                    String text = SmallTest.read(test.resolve("plan.json"));
                    Files.writeString(test.resolve("plan.json"), text.replace("\"unstrapped\" : true", "\"unstrapped\" : false"));
                }),
                change("the code of the seal", seal, replace("seal.json", "\"code\" : \"", "\"code\" : \"0")),
                change("the date of the seal", seal, replace("seal.json", "\"at\" : \"2026-05-09", "\"at\" : \"2026-05-01")),
                change("the plan that the seal names", seal, replace("seal.json", "\"planSha256\" : \"", "\"planSha256\" : \"0")),
                change("the record in the seal", seal, replace("seal.json", "\"degreesOfFreedom\" : 8", "\"degreesOfFreedom\" : 80")),
                change("no seal any more", seal, test -> Files.delete(test.resolve("seal.json"))),
                change("the seal of another test", seal, test -> {
                    Path other = SmallTest.make(test.resolveSibling("other"), "ABBA");
                    Run.of("seal", other).succeeded();
                    Files.delete(test.resolve("seal.json"));
                    Files.copy(other.resolve("seal.json"), test.resolve("seal.json"));
                }),
                change("a reason in the log", log, replace("log.jsonl", "asks for less", "asked for it")),
                change("a date in the log", log, replace("log.jsonl", "\"at\":\"2026-05-09T18:30", "\"at\":\"2026-05-08T18:30")),
                change("a reading in the log", log, replace("log.jsonl", "\"coolant\":363.15", "\"coolant\":361.15")),
                change("a blank in the log", log, replace("log.jsonl", "{\"at\"", "{ \"at\"")),
                change("the first line taken out", log, lines(lines -> lines.remove(0))),
                change("a line in the middle taken out", log, lines(lines -> lines.remove(3))),
                change("two lines changed round", log, lines(lines -> lines.add(4, lines.remove(5)))),
                change("a line put in twice", log, lines(lines -> lines.add(lines.get(4)))),
                change("a line appended", log, lines(lines -> lines.add(lines.get(lines.size() - 1).replace("slip", "spin")
                        .replace("A1-2", "B1-2")))),
                change("the date of the last line", log, lines(lines -> lines.add(lines.remove(lines.size() - 1)
                        .replace("T18:30", "T03:30")))),
                change("a file beside the exports", "Among the exports, but not in the log: B1-9.csv", test ->
                        Files.copy(test.resolve("pulls/A1-1.csv"), test.resolve("pulls/B1-9.csv"))),
                change("the end of the log taken out", "Among the exports, but not in the log", lines(lines ->
                        lines.removeIf(line -> line.contains("pull-taken") && line.contains("B1-1")))),
                change("an export", "Not the files that were imported: A1-1.csv", replace("pulls/A1-1.csv", "4000,100.100", "4000,101.100")),
                change("an export changed round with another", "Not the files that were imported: A1-1.csv, B1-1.csv", test -> {
                    Path aside = test.resolveSibling("aside");
                    Files.move(test.resolve("pulls/A1-1.csv"), aside);
                    Files.move(test.resolve("pulls/B1-1.csv"), test.resolve("pulls/A1-1.csv"));
                    Files.move(aside, test.resolve("pulls/B1-1.csv"));
                }),
                change("the unit in the mapping", mapping, replace("mapping.json", "\"unit\" : \"kW\"", "\"unit\" : \"hp\"")),
                change("the correction in the mapping", mapping, replace("mapping.json", "\"corrected\" : \"none\"", "\"corrected\" : null")));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("changes")
    void isSaidByJudgeAndCheck(String name, String sentence, Change change) throws IOException {
        String judgedBefore = Run.of("judge", test).out();
        change.in(test);

        assertThat(warnings("judge")).as("judge --json").anyMatch(warning -> warning.startsWith(sentence));
        assertThat(warnings("check")).as("check --json").anyMatch(warning -> warning.startsWith(sentence));
        Run judged = Run.of("judge", test).succeeded();
        assertThat(unwrapped(judged)).contains(sentence);
        assertThat(judged.out()).isNotEqualTo(judgedBefore);
        assertThat(unwrapped(Run.of("check", test).succeeded())).contains(sentence);
        Run.of("report", test, "--out", folder.resolve("report.html")).succeeded();
        assertThat(SmallTest.read(folder.resolve("report.html"))).contains(sentence);
    }

    @Test
    void nothingIsSaidOfATestThatNobodyTouched() {
        assertThat(warnings("judge")).noneMatch(warning -> warning.contains("by hand") || warning.contains("not the"));
        assertThat(warnings("check")).noneMatch(warning -> warning.contains("by hand") || warning.contains("not the"));
    }

    @Test
    void anAmendmentOfAChangedPlanIsRefused() {
        edit("plan.json", "\"errorRate\" : 0.05", "\"errorRate\" : 0.06");
        Run.of("amend", test, "--set", "title=x", "--because", "x").refused(3, "plan.json", "changed by hand");
    }

    /** Nothing in a chain can show that its end was cut off; what is missing then is said as missing. */
    @Test
    void pullsWhoseEntriesWereCutOffAreSaidToBeMissing() throws IOException {
        lines(lines -> {
            lines.remove(lines.size() - 1);
            lines.remove(lines.size() - 1);
        }).in(test);
        assertThat(warnings("judge")).anyMatch(warning -> warning.startsWith("Not in yet: A2-2"));
    }

    @Test
    void blanksAndTheOrderOfFieldsInThePlanDoNotMatter() throws IOException {
        Path plan = test.resolve("plan.json");
        String text = SmallTest.read(plan);
        Files.writeString(plan, "\n\n" + new ObjectMapper().readTree(text).toString() + "\r\n");
        assertThat(warnings("judge")).noneMatch(warning -> warning.contains("by hand") || warning.contains("not the one"));
        Files.writeString(plan, text.replace("\n", "\r\n").replace("  ", "\t").replace("0.05", "5e-2"));
        assertThat(warnings("judge")).noneMatch(warning -> warning.contains("by hand") || warning.contains("not the one"));
    }

    /** Whatever byte the write of the last line stopped at, within a character too. */
    @Test
    void aLineThatWasCutShortIsPassedOverAndMendedByTheNextEntry() throws IOException {
        Path log = test.resolve("log.jsonl");
        byte[] before = Files.readAllBytes(log);
        Run.of("note", test, "--remark", "zwölf Grad – später mehr").succeeded();
        byte[] whole = Files.readAllBytes(log);
        ObjectNode finding = Run.of("judge", test, "--json").json().deepCopy();
        finding.remove("warnings");
        int umlaut = before.length + new String(whole, before.length, whole.length - before.length, StandardCharsets.ISO_8859_1).indexOf('Ã');
        for (int end : List.of(before.length + 1, before.length + 40, umlaut, umlaut + 1, umlaut + 2, whole.length - 2, whole.length - 1)) {
            Files.write(log, Arrays.copyOf(whole, end));
            ObjectNode cut = Run.of("judge", test, "--json").json().deepCopy();
            assertThat(strings(cut.remove("warnings"))).as("cut at byte %d", end).anyMatch(said -> said.contains("unfinished line"));
            assertThat(cut).as("cut at byte %d", end).isEqualTo(finding);
        }
        Files.write(log, Arrays.copyOf(whole, umlaut + 1));
        Run.of("note", test, "--remark", "zwölf Grad – später mehr").succeeded();
        assertThat(Files.readAllBytes(log)).isEqualTo(whole);
    }

    private static Arguments change(String name, String sentence, Change change) {
        return arguments(name, sentence, change);
    }

    private static Change replace(String file, String from, String to) {
        return test -> {
            Path path = test.resolve(file);
            String text = SmallTest.read(path);
            assertThat(text).as(file).contains(from);
            Files.writeString(path, text.substring(0, text.indexOf(from)) + to + text.substring(text.indexOf(from) + from.length()));
        };
    }

    private static Change lines(Consumer<List<String>> edit) {
        return test -> {
            Path log = test.resolve("log.jsonl");
            List<String> lines = new ArrayList<>(Files.readAllLines(log));
            edit.accept(lines);
            Files.writeString(log, String.join("\n", lines) + "\n");
        };
    }

    private void edit(String file, String from, String to) {
        try {
            replace(file, from, to).in(test);
        } catch (IOException trouble) {
            throw new UncheckedIOException(trouble);
        }
    }

    private List<String> warnings(String verb) {
        return StreamSupport.stream(Run.of(verb, test, "--json").json().get("warnings").spliterator(), false)
                .map(JsonNode::asText).toList();
    }

    private static String unwrapped(Run run) {
        return run.out().replaceAll("\\s+", " ");
    }

    private static List<String> strings(JsonNode array) {
        List<String> strings = new ArrayList<>();
        array.forEach(element -> strings.add(element.asText()));
        return strings;
    }
}
