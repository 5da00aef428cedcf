package fairpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a day does, written by the command line: pulls done, swaps, entries taken back. Nothing that was written vanishes. */
class DayInTheLogTest {
    @TempDir
    private Path home;
    private Path test;

    @BeforeEach
    void copy() throws IOException {
        test = home.resolve("pump");
        Folders.copy(Path.of("plans/electric-pump"), test);
    }

    private List<String> log() throws IOException {
        return Files.readAllLines(test.resolve("log.jsonl"));
    }

    @Test
    void pullsAndSwapsOfTheDayAreEntriesOfTheirOwn() throws IOException {
        int before = log().size();
        Run.of("note", test.toString(), "A1-1", "--run", "--at", "2026-05-04T09:10:00+02:00").succeeded();
        Run.of("note", test.toString(), "B1", "--swap", "started").succeeded();
        Run.of("note", test.toString(), "B1", "--swap", "finished").succeeded();
        assertThat(log()).hasSize(before + 3);
        assertThat(log().get(before)).contains("pull-run", "A1-1");
        assertThat(log().get(before + 1)).contains("swap", "B1");
        assertThat(Run.of("check", test.toString()).succeeded().out()).doesNotContain("changed by hand");
    }

    @Test
    void whatIsTakenBackStaysInTheLogAndIsToldInTheFinding() throws IOException {
        String untouched = Run.of("judge", test.toString()).succeeded().out();
        assertThat(untouched).doesNotContain("taken back");
        Run.of("note", test.toString(), "B1", "--swap", "started").succeeded();
        int entry = log().size();
        Run.of("note", test.toString(), "--take-back", String.valueOf(entry)).succeeded();
        assertThat(log()).hasSize(entry + 1);
        assertThat(Run.of("judge", test.toString()).succeeded().out()).contains("taken back", entry + " (swap to B1 started)");
    }

    @Test
    void anEntryThatIsNotOfTheDayIsNotTakenBack() throws IOException {
        List<String> before = log();
        Run.of("note", test.toString(), "--take-back", "1").refused(3, "1");
        assertThat(log()).isEqualTo(before);
    }
}
