package fairpull.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Folders that are no test, or whose files cannot be used: status 3, one line with file and place, nothing written. */
class BadTestFolderTest {
    @TempDir
    private static Path made;

    @TempDir
    private Path folder;
    private Path test;

    @BeforeEach
    void aCopyOfTheTest() throws IOException {
        test = folder.resolve("test");
        Folders.copy(made, folder);
    }

    @BeforeAll
    static void aTestWithAllItsPulls() {
        Path test = SmallTest.make(made.resolve("test"), "ABA");
        Run.of(SmallTest.words("import", test, SmallTest.exports(made.resolve("exports"), "A1-1 A1-2 B1-1 B1-2 A2-1 A2-2",
                100.1, 100.4, 102.2, 102.0, 100.3, 100.0), "--corrected", "none")).succeeded();
    }

    static Stream<Arguments> plans() {
        return Stream.of(
                arguments("zero pulls", "\"countedPulls\" : 2", "\"countedPulls\" : 0", List.of("installs", "1 to 1000", "line")),
                arguments("negative warm-ups", "\"warmUpPulls\" : 0", "\"warmUpPulls\" : -1", List.of("warm-up", "line")),
                arguments("a fraction of a pull", "\"countedPulls\" : 2", "\"countedPulls\" : 2.5", List.of("countedPulls", "line")),
                arguments("an unknown field", "\"title\"", "\"colour\" : \"red\", \"title\"", List.of("colour", "no such field", "line")),
                arguments("an unknown field deep down", "\"label\" : \"B1\"", "\"label\" : \"B1\", \"colour\" : 1",
                        List.of("sequence.sessions.0.installs.1.colour", "no such field", "line")),
                arguments("a missing field", ",\\s*\"swapS\" : 1200", "", List.of("swapS", "missing", "line")),
                arguments("null where a value must be", "\"swapS\" : 1200", "\"swapS\" : null", List.of("swapS", "line")),
                arguments("a null in a list", "\"gates\" : \\[", "\"gates\" : [ null, ", List.of("gates", "line")),
                arguments("no title", "\"title\" : \"[^\"]*\"", "\"title\" : \" \"", List.of("a plan needs a name", "line")),
                arguments("a field twice", "\"title\"", "\"title\" : \"x\", \"title\"", List.of("title", "line")),
                arguments("another schema version", "\"schemaVersion\" : 1", "\"schemaVersion\" : 2", List.of("schema version 2")),
                arguments("no schema version", "\"schemaVersion\" : 1,", "", List.of("schemaVersion")),
                arguments("malformed JSON", "\"title\" :", "\"title\"", List.of("line", "not JSON")),
                arguments("JSON cut short", "(?s)\"title\".*", "", List.of("line")),
                arguments("something behind the plan", "(?s)\\}\\s*$", "} {}", List.of("line")),
                arguments("two installs of one label", "\"label\" : \"A2\"", "\"label\" : \"A1\"", List.of("A1")),
                arguments("an install named like a path", "\"label\" : \"A2\"", "\"label\" : \"../../A2\"", List.of("../../A2")),
                arguments("a part named C", "\"part\" : \"B\"", "\"part\" : \"C\"", List.of("part", "line")),
                arguments("one part only", "(?s)\\{\\s*\"countedPulls\" : 2,\\s*\"label\" : \"B1\".*?\\},", "", List.of("part B")),
                arguments("a negative interval", "\"pullIntervalS\" : 300", "\"pullIntervalS\" : -300", List.of("interval")),
                arguments("text in a number", "\"pullIntervalS\" : 300", "\"pullIntervalS\" : \"soon\"", List.of("pullIntervalS", "line")),
                arguments("NaN", "\"pullIntervalS\" : 300", "\"pullIntervalS\" : NaN", List.of("line")),
                arguments("a number out of range", "\"pullIntervalS\" : 300", "\"pullIntervalS\" : 1e999", List.of("pullIntervalS")),
                arguments("a band upside down", "\"highRadPerS\" : [\\d.]+", "\"highRadPerS\" : 1", List.of("band")),
                arguments("a unit of another quantity", "\"unit\" : \"kW\"", "\"unit\" : \"s\"", List.of("cannot be read in s")),
                arguments("an unknown kind of measure", "\"mean-over-band\"", "\"mean\"", List.of("definition", "line")),
                arguments("an unknown word", "\"drift\" : \"none\"", "\"drift\" : \"cubic\"",
                        List.of("drift", "line", "“cubic” stands where one of none, linear, quadratic belongs")),
                arguments("a list", "(?s).*", "[]", List.of("schemaVersion")),
                arguments("nothing", "(?s).+", "", List.of("plan.json")));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("plans")
    void aPlanThatCannotBeUsedIsRefused(String name, String pattern, String replacement, List<String> words) throws IOException {
        Path plan = test.resolve("plan.json");
        String changed = SmallTest.read(plan).replaceFirst(pattern, replacement);
        assertThat(changed).isNotEqualTo(SmallTest.read(plan));
        Files.writeString(plan, changed);

        everyVerbRefuses("plan.json", words);
    }

    @Test
    void aPlanThatIsNotUtf8IsRefused() throws IOException {
        Path plan = test.resolve("plan.json");
        Files.write(plan, SmallTest.read(plan).replace("belt pump", "belt pümp").getBytes(StandardCharsets.ISO_8859_1));

        everyVerbRefuses("plan.json", List.of("UTF-8"));
        Run.of("amend", folder.resolve("test"), "--plan", plan, "--because", "x").refused(3, "plan.json", "UTF-8");
    }

    static Stream<Arguments> logs() {
        return Stream.of(
                arguments("an unknown kind of entry", "\"kind\":\"pull-taken\"", "\"kind\":\"pull-lost\"", "line 1"),
                arguments("an unknown field", "\"number\":2", "\"colour\":\"red\",\"number\":2", "line 2"),
                arguments("malformed JSON", "\\{\"at\"", "{at", "line 1"),
                arguments("a blank line", "\\n", "\n\n", "line 2"),
                arguments("a pull that is none", "\"pull\":\"A1-1\"", "\"pull\":\"../A1-1\"", "line 1"),
                arguments("a time that is none", "\"at\":\"[^\"]*\"", "\"at\":\"noon\"", "line 1"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("logs")
    void aLogThatCannotBeUsedIsRefused(String name, String pattern, String replacement, String line) throws IOException {
        Path log = test.resolve("log.jsonl");
        Files.writeString(log, SmallTest.read(log).replaceFirst(pattern, replacement));

        everyVerbRefuses("log.jsonl", List.of(line));
    }

    @Test
    void theChainTellsWhetherALineThatCannotBeReadWasChanged() throws IOException {
        Path log = test.resolve("log.jsonl");
        String sound = SmallTest.read(log);
        List<String> lines = new ArrayList<>(sound.lines().toList());
        String second = lines.get(1);

        lines.set(1, second.replaceFirst("\\{", "{at"));
        Files.writeString(log, String.join("\n", lines) + "\n");
        Run.of("judge", test).refused(3, "log.jsonl, line 2, column", "this line of the log cannot be read (not JSON: a character",
                "the chain of hashes holds up to the line before, and the line after it names another one, so this line was changed",
                "put log.jsonl back from a copy");

        String newer = second.replaceFirst("\\{", "{\"colour\":\"red\",");
        lines.set(1, newer);
        lines.set(2, lines.get(2).replace(sha256(second), sha256(newer)));
        Files.writeString(log, String.join("\n", lines) + "\n");
        Run.of("judge", test).refused(3, "line 2", "colour: no such field", "names this very line, so it was written so",
                "use the version of the program that wrote it");

        Files.writeString(log, sound.strip().replaceFirst("\\}$", "") + "\n");
        Run.of("judge", test).refused(3, "line 6", "breaks off before its end", "put log.jsonl back from a copy");
    }

    private static String sha256(String line) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(line.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException impossible) {
            throw new AssertionError(impossible);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"../../x", "../plan.json", "/etc/hostname", "..", ".", "a\\\\..\\\\b",
        "A1-1.csv\\u0000", "C:\\\\x", "sub/A1-1.csv", "A1-1.csv:stream"})
    void anExportNamedToLeadOutOfTheFolderIsRefused(String name) throws IOException {
        Path log = test.resolve("log.jsonl");
        Files.writeString(log, SmallTest.read(log).replace("\"file\":\"A1-1.csv\"", "\"file\":\"" + name + "\""));

        Map<String, String> before = Folders.contents(folder);
        Run.of("judge", test).refused(3, "log.jsonl", "not the name of an export");
        Run.of("check", test).refused(3, "log.jsonl", "not the name of an export");
        Run.of("report", test, "--out", folder.resolve("report.html")).refused(3, "log.jsonl", "not the name of an export");
        assertThat(Folders.contents(folder)).isEqualTo(before);
    }

    @Test
    void aFolderWithoutAPlanIsRefused() throws IOException {
        test = Files.createDirectories(folder.resolve("empty"));
        everyVerbRefuses("empty", List.of("plan.json", "fairpull new"));
        test = folder.resolve("nowhere");
        everyVerbRefuses("nowhere", List.of("plan.json"));
        test = folder.resolve("exports/A1-1.csv");
        everyVerbRefuses("A1-1.csv", List.of("plan.json"));
    }

    @Test
    void aTestIsNeverMadeOverAnother() throws IOException {
        Map<String, String> before = Folders.contents(folder);
        Object[] again = {"new", test, "--part-a", "a", "--part-b", "b", "--measure", "peak power in kW"};
        Run.of(again).refused(3, "there is a test already");
        again[1] = folder.resolve("exports/A1-1.csv");
        Run.of(again).refused(3, "A1-1.csv");
        assertThat(Folders.contents(folder)).isEqualTo(before);
    }

    @Test
    void aFolderThatMayNotBeWrittenIsSaid() throws IOException {
        Assumptions.assumeTrue(test.toFile().setWritable(false));
        Assumptions.assumeFalse(Files.isWritable(test), "this user may write everywhere");
        try {
            Run.of("seal", test).refused(3, "may be read or written");
        } finally {
            assertThat(test.toFile().setWritable(true)).isTrue();
        }
    }

    private void everyVerbRefuses(String file, List<String> words) throws IOException {
        Map<String, String> before = Folders.contents(folder);
        String[] said = Stream.concat(Stream.of(file), words.stream()).toArray(String[]::new);
        Run.of("check", test).refused(3, said);
        Run.of("judge", test, "--json").refused(3, said);
        Run.of("seal", test).refused(3, said);
        Run.of("note", test, "--remark", "rain").refused(3, said);
        Run.of("note", test, "A1-1", "--condition", "coolant=90C").refused(3, said);
        Run.of("exclude", test, "A1-1", "--because", "slip").refused(3, said);
        Run.of("amend", test, "--set", "title=x", "--because", "typing mistake").refused(3, said);
        Run.of("import", test, folder.resolve("exports/A1-1.csv")).refused(3, said);
        Run.of("report", test, "--out", folder.resolve("report.html")).refused(3, said);
        assertThat(Folders.contents(folder)).isEqualTo(before);
    }
}
