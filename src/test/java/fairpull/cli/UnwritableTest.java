package fairpull.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Where nothing can be written: one line that names the file that was meant, status 3, and everything as it was. */
class UnwritableTest {
    private static final String SOAK =
            "soak demo-data/cool-down/intake-air.csv --pull-rise 6K --tolerance 2K --level 190hp --worthwhile 3hp";
    private static final String PULLS = "A1-1 A1-2 B1-1 B1-2 A2-1 A2-2";
    @TempDir
    private static Path made;

    @TempDir
    private Path home;

    @BeforeAll
    static void testsBeforeAndAfterTheirDay() {
        SmallTest.make(made.resolve("open"), "ABA", "--worthwhile", "2kW");
        Path empty = SmallTest.make(made.resolve("sealed"), "ABA", "--worthwhile", "2kW");
        Run.of("seal", empty).succeeded();
        Path test = SmallTest.make(made.resolve("full"), "ABA", "--worthwhile", "2kW");
        Run.of("seal", test).succeeded();
        List<Path> files = SmallTest.exports(made.resolve("exports"), PULLS, 100.1, 100.4, 102.2, 102.0, 100.3, 100.0);
        Run.of(SmallTest.words("import", test, files, "--corrected", "none")).succeeded();
        SmallTest.write(made.resolve("file"), "a file where a folder is needed\n");
    }

    @BeforeEach
    void aCopy() throws IOException {
        Folders.copy(made, home.resolve("x"));
    }

    /** A command line; @ stands for the folder of the test, ~ for a blank. */
    private Object[] words(String line) {
        return Arrays.stream(line.split(" ")).map(word -> word.startsWith("@") ? home.resolve("x").resolve(word.substring(1))
                : word.replace('~', ' ')).toArray();
    }

    static Stream<Arguments> everythingThatWrites() {
        return Stream.of(
                arguments("new @t --part-a a --part-b b --measure peak~power~in~hp --worthwhile 3hp", "t"),
                arguments("seal @open", "seal.json"),
                arguments("note @sealed A1-1 --condition coolant=90C", "log.jsonl"),
                arguments("note @full A1-1 --condition coolant=90C", "log.jsonl"),
                arguments("import @sealed @exports/A1-1.csv @exports/A1-2.csv --corrected none", ".csv"),
                arguments("exclude @full A1-2 --because slip", "log.jsonl"),
                arguments("amend @full --set title=other --because typed", "plan.json: "),
                arguments("judge @full --json", ""),
                arguments("report @full --out @out/r.html --pdf @out/r.pdf --csv @tables", ""),
                arguments("sheet @full --out @out/s.pdf", "s.pdf"),
                arguments("sheet @full --out @out/s.html", "s.html"),
                arguments(SOAK + " --report @out/s.html",
                        "s.html"),
                arguments("rig add --test @full --level 100kW --records @rigs", "rigs"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("everythingThatWrites")
    void aFullDiskLeavesEverythingAsItWas(String line, String named) throws IOException {
        Map<String, String> before = Folders.contents(home);
        Run[] run = new Run[1];
        LimitedDisk.within(0, () -> run[0] = Run.of(words(line)));
        if (line.startsWith("judge")) {
            run[0].succeeded();
        } else {
            run[0].refused(3, named, "make room");
            assertThat(run[0].err()).doesNotContain(".part");
        }
        assertThat(Folders.contents(home)).isEqualTo(before);
        Run.of(words(line)).succeeded();
    }

    static Stream<Arguments> everythingMadeForOthers() {
        return Stream.of(
                arguments("new @%s/t --part-a a --part-b b --measure peak~power~in~hp --worthwhile 3hp"),
                arguments("report @full --out @%s/r.html"),
                arguments("report @full --pdf @%s/r.pdf"),
                arguments("report @full --csv @%s/tables"),
                arguments("sheet @full --out @%s/s.pdf"),
                arguments(SOAK + " --report @%s/s.html"),
                arguments("rig add --test @full --level 100kW --records @%s/rigs"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("everythingMadeForOthers")
    void aFileWhereAFolderIsNeededIsNamed(String line) throws IOException {
        Map<String, String> before = Folders.contents(home);
        Run run = Run.of(words(line.formatted("file")));
        assertThat(run.status()).as(run.err()).isEqualTo(3);
        assertThat(run.err()).contains(home.resolve("x/file").toString()).doesNotContain(".part", "Exception").hasLineCount(1);
        assertThat(Folders.contents(home)).isEqualTo(before);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("everythingMadeForOthers")
    void aFolderThatIsMissingOnTheWayIsNotMade(String line) throws IOException {
        Run.of(words(line.formatted("missing/.."))).succeeded();
        assertThat(Files.exists(home.resolve("x/missing"))).isFalse();
    }
}
