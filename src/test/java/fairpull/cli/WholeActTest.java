package fairpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.app.usecase.keeping.KeepTest;
import fairpull.app.usecase.pulls.ExcludePull;
import fairpull.app.usecase.running.RunDay;
import fairpull.app.usecase.running.TakeExport;
import fairpull.domain.pull.LogEntry;
import fairpull.domain.pull.PullId;
import fairpull.io.folder.TestFolder;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** An act that writes several entries is in the log as a whole or not at all, wherever its write stopped. */
class WholeActTest {
    private static final Path DEMO = Path.of("demo-data/electric-pump");
    /** Every byte about the ends of lines, every so many elsewhere. */
    private static final int STEP = 37;

    @TempDir
    private Path home;
    private Path test;

    private interface Act {
        void on(Path test, Path home) throws IOException;
    }

    @BeforeEach
    void seal() throws IOException {
        test = home.resolve("test");
        KeepTest.create(test, KeepTest.open(Path.of("plans/electric-pump")).plan());
        KeepTest.seal(test, Run.NOW.minusHours(9));
        for (String pull : List.of("A1-W1", "A1-W2")) {
            Run.of("note", test, pull, "--run", "--at", "2026-05-09T09:00:00+02:00").succeeded();
        }
    }

    private static void take(Path test, Path home) throws IOException {
        TakeExport.take(test, home.resolve("run_7.csv"), Run.NOW);
    }

    private static void exports(Path test, String... names) {
        Run.of(SmallTest.words("import", test, Stream.of(names).map(name -> DEMO.resolve(name + ".csv")).toList(), "--corrected", "none"))
                .succeeded();
    }

    private static Arguments act(String name, int entries, Act before, Act act) {
        return Arguments.of(name, entries, before, act);
    }

    static Stream<Arguments> acts() {
        Act nothing = (test, home) -> { };
        return Stream.of(
                act("several exports", 3, nothing, (test, home) -> exports(test, "A1-1", "A1-2", "B1-1")),
                act("an export and what was read from its first row", 2,
                        (test, home) -> Files.copy(DEMO.resolve("A1-1.csv"), home.resolve("run_7.csv")), WholeActTest::take),
                act("an export that grew", 4, (test, home) -> {
                    List<String> lines = Files.readAllLines(DEMO.resolve("A1-1.csv"));
                    Files.write(home.resolve("run_7.csv"), lines.subList(0, lines.size() - 2));
                    take(test, home);
                    Files.write(home.resolve("run_7.csv"), lines);
                }, WholeActTest::take),
                act("a pull that was run, with what is noted of it", 4, nothing, (test, home) -> Run.of("note", test, "A1-1", "--run",
                        "--at", "2026-05-09T09:10:00+02:00", "--condition", "coolant=90C", "--gate-overridden", "coolant=late",
                        "--remark", "zwölf Grad").succeeded()),
                act("a notebook", 3, (test, home) -> SmallTest.write(home.resolve("book.csv"),
                        "pull,coolant (C),remark\nA1-1,90,\nA1-2,91,wärmer\n"),
                        (test, home) -> Run.of("note", test, "--table", home.resolve("book.csv")).succeeded()),
                act("several pulls left out", 2, (test, home) -> exports(test, "A1-1", "B1-1"), (test, home) -> ExcludePull.exclude(test,
                        List.of(new PullId("A1", false, 1), new PullId("B1", false, 1)), "both cold", Run.NOW)),
                act("an act taken back", 2, (test, home) -> Run.of("note", test, "A1-1", "--gate-overridden", "coolant=late",
                        "--gate-overridden", "intake-air=late").succeeded(), (test, home) -> RunDay.of(test).undo(Run.NOW)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("acts")
    void isThereAsAWholeOrNotAtAll(String name, int entries, Act first, Act act) throws IOException {
        first.on(test, home);
        Path log = test.resolve("log.jsonl");
        byte[] before = Files.readAllBytes(log);
        List<LogEntry> entriesBefore = entries();
        act.on(test, home);
        byte[] whole = Files.readAllBytes(log);
        List<LogEntry> entriesAfter = entries();
        assertThat(entriesAfter).hasSize(entriesBefore.size() + entries);
        assertThat(TestFolder.open(test).read().logBrokenAt()).isEmpty();

        for (int end : ends(before.length, whole)) {
            Files.write(log, Arrays.copyOf(whole, end));
            assertThat(entries()).as("cut at byte %d", end).isEqualTo(entriesBefore);
            assertThat(TestFolder.open(test).read().logCutShort()).as("cut at byte %d", end).isEqualTo(end > before.length);
        }
        act.on(test, home);
        assertThat(entries()).as("once more over the torn one").isEqualTo(entriesAfter);
        assertThat(TestFolder.open(test).read().logBrokenAt()).isEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("acts")
    void onAFullDiskTheTestStaysAsItWas(String name, int entries, Act first, Act act) throws IOException {
        first.on(test, home);
        Map<String, String> before = Folders.contents(test);
        Path saved = home.resolve("saved");
        Folders.copy(test, saved);
        long log = Files.size(test.resolve("log.jsonl"));
        act.on(test, home);
        long whole = Files.size(test.resolve("log.jsonl"));
        Folders.remove(test);
        Folders.copy(saved, test);
        for (long left : new long[] {0, 1, (whole - log) / 2, whole - log - 1}) {
            LimitedDisk.within(log + left, () -> assertThat(fails(act)).as("%d bytes left", left).isTrue());
            assertThat(Folders.contents(test)).as("%d bytes left", left).isEqualTo(before);
        }
        act.on(test, home);
        assertThat(Files.size(test.resolve("log.jsonl"))).isEqualTo(whole);
    }

    private boolean fails(Act act) {
        try {
            act.on(test, home);
            return false;
        } catch (IOException | UncheckedIOException | AssertionError full) {
            assertThat(full.getMessage()).containsAnyOf("log.jsonl: ", ".csv: ").doesNotContain(".part");
            return true;
        }
    }

    private List<LogEntry> entries() throws IOException {
        return TestFolder.open(test).read().log().records().stream().map(record -> record.entry()).toList();
    }

    private static Set<Integer> ends(int from, byte[] whole) {
        Set<Integer> ends = new TreeSet<>();
        for (int end = from; end < whole.length; end++) {
            boolean atEndOfLine = whole[end] == '\n' || end > 0 && whole[end - 1] == '\n' || end + 1 < whole.length && whole[end + 1] == '\n';
            if (atEndOfLine || (end - from) % STEP == 0) {
                ends.add(end);
            }
        }
        return ends;
    }
}
