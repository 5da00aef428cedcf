package fairpull.app.usecase.running;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairpull.app.task.CancelledException;
import fairpull.app.task.Progress;
import fairpull.app.usecase.judging.JudgeFolder;
import fairpull.app.usecase.keeping.KeepTest;
import fairpull.app.usecase.pulls.ImportPulls;
import fairpull.app.usecase.pulls.PreparedImport;
import fairpull.app.usecase.typing.StatedCorrection;
import fairpull.domain.pull.LogEntry;
import fairpull.domain.pull.LogRecord;
import fairpull.domain.pull.PullId;
import fairpull.io.folder.TestFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the day writes into the log stands beside what older logs hold, and what was kept once is never lost. */
class RunDayTest {
    private static final Path EXPORTS = Path.of("demo-data/electric-pump");
    private static final OffsetDateTime NOW = OffsetDateTime.of(2026, 5, 9, 20, 0, 0, 0, ZoneOffset.UTC);

    @TempDir
    private Path home;

    private Path copyOf(String plan) throws IOException {
        Path test = home.resolve(Path.of(plan).getFileName());
        try (Stream<Path> files = Files.walk(Path.of(plan))) {
            for (Path file : files.toList()) {
                Path to = test.resolve(Path.of(plan).relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(to);
                } else {
                    Files.copy(file, to);
                }
            }
        }
        return test;
    }

    @ParameterizedTest
    @ValueSource(strings = {"plans/electric-pump", "plans/panel-filter"})
    void aLogFromBeforeTheDayHadEntriesOfItsOwnIsReadAndJudgedTheSame(String plan) throws IOException {
        Path test = copyOf(plan);
        TestFolder.Content old = TestFolder.open(test).read();
        assertThat(old.log().records()).noneMatch(record -> record.entry() instanceof LogEntry.PullRun
                || record.entry() instanceof LogEntry.Swap || record.entry() instanceof LogEntry.TakenBack);
        assertThat(old.logBrokenAt()).isEmpty();
        assertThat(old.log().standing()).isEqualTo(old.log().records());
        String judged = JudgeFolder.judge(test).deciding().toString();

        RunDay day = RunDay.of(test);
        for (Map.Entry<PullId, LogEntry.PullTaken> pull : day.log().pulls().entrySet()) {
            Optional<OffsetDateTime> start = day.log().startOf(pull.getKey());
            if (start.isPresent()) {
                RunDay.of(test).run(pull.getKey(), start.get(), NOW);
            }
        }
        assertThat(RunDay.of(test).log().run()).isNotEmpty();
        assertThat(TestFolder.open(test).read().logBrokenAt()).isEmpty();
        assertThat(JudgeFolder.judge(test).deciding().toString()).isEqualTo(judged);
    }

    @Test
    void theFindingsOfTheDemoPlansAreThoseThatTheyCameWith() throws IOException {
        assertThat(JudgeFolder.judge(Path.of("plans/electric-pump")).deciding().verdict().words()).isEqualTo("gain");
        assertThat(JudgeFolder.judge(Path.of("plans/panel-filter")).deciding().verdict().words()).isEqualTo("undecided");
    }

    private Path sealed() throws IOException {
        Path test = home.resolve("day");
        KeepTest.create(test, KeepTest.open(Path.of("plans/electric-pump")).plan());
        KeepTest.seal(test, NOW.minusHours(12));
        return test;
    }

    private static ImportPulls.Request request(Path test, List<Path> files) {
        return new ImportPulls.Request(test, files, Optional.empty(), OptionalInt.empty(), false,
                new ImportPulls.Reading(List.of(), StatedCorrection.nothing(), Optional.empty(), false, Optional.empty()), Optional.empty());
    }

    /** Stops the work as soon as one file is done. */
    private static final class StoppedAfterOne implements Progress {
        private volatile boolean one;

        @Override
        public void reached(int done, int all) {
            one = true;
        }

        @Override
        public boolean isCancelled() {
            return one;
        }
    }

    @Test
    void whatWasTakenBackStaysOnDiskEvenIfItsBytesComeInAgainAndThatFails() throws IOException {
        Path test = sealed();
        TakeExport.take(test, EXPORTS.resolve("A1-1.csv"), NOW);
        RunDay.of(test).undo(NOW.plusSeconds(1));
        Path kept = test.resolve("pulls").resolve("A1-1.csv");
        byte[] bytes = Files.readAllBytes(kept);
        List<Path> again = Stream.of("A1-1", "A1-2", "A1-3", "A1-4", "A1-5", "A2-1", "A2-2", "A2-3")
                .map(name -> EXPORTS.resolve(name + ".csv")).toList();
        PreparedImport prepared = ImportPulls.prepare(request(test, again), Progress.none());
        assertThatThrownBy(() -> prepared.take(NOW.plusSeconds(2), new StoppedAfterOne())).isInstanceOf(CancelledException.class);
        assertThat(kept).as("the log names it, so it stays").hasBinaryContent(bytes);
        assertThat(TestFolder.open(test).exportNames()).containsExactly("A1-1.csv");
        assertThat(RunDay.of(test).log().pulls()).isEmpty();

        ImportPulls.run(request(test, again.subList(0, 1)), NOW.plusSeconds(3));
        assertThat(RunDay.of(test).log().pulls().values()).singleElement().extracting(LogEntry.PullTaken::file).isEqualTo("A1-1.csv");
        assertThat(TestFolder.open(test).exportNames()).containsExactly("A1-1.csv");
    }

    @Test
    void whoeverAsksWhatTheLogNamesIsNeverLetGoOf() throws IOException {
        Path test = sealed();
        TakeExport.take(test, EXPORTS.resolve("A1-1.csv"), NOW);
        Files.copy(EXPORTS.resolve("A1-2.csv"), test.resolve("pulls").resolve("A1-2.csv"));
        TestFolder.open(test).dropExports(List.of("A1-1.csv", "A1-2.csv"));
        assertThat(TestFolder.open(test).exportNames()).containsExactly("A1-1.csv");
    }

    @Test
    void otherBytesOfAPullThatWasTakenBackGetANameWithANumber() throws IOException {
        Path test = sealed();
        TakeExport.take(test, EXPORTS.resolve("A1-1.csv"), NOW);
        RunDay.of(test).undo(NOW.plusSeconds(1));
        Path other = Files.copy(EXPORTS.resolve("A1-2.csv"), home.resolve("A1-1.csv"));
        TakeExport.take(test, other, NOW.plusSeconds(2));
        assertThat(TestFolder.open(test).exportNames()).containsExactly("A1-1.csv", "A1-1_2.csv");
        assertThat(test.resolve("pulls").resolve("A1-1.csv")).hasSameBinaryContentAs(EXPORTS.resolve("A1-1.csv"));
    }

    @Test
    void anExportIsThePullThatWaitsForItAndNoWarmUpOfLongAgo() throws IOException {
        Path test = sealed();
        RunDay.of(test).pullDone(NOW);
        RunDay.of(test).pullDone(NOW.plusSeconds(240));
        Path file = Files.copy(EXPORTS.resolve("A1-W2.csv"), home.resolve("first.csv"));
        assertThat(TakeExport.take(test, file, NOW.plusSeconds(250)).pull()).as("run last").isEqualTo(new PullId("A1", true, 2));
        RunDay.of(test).pullDone(NOW.plusSeconds(480));
        file = Files.copy(EXPORTS.resolve("A1-1.csv"), home.resolve("second.csv"));
        assertThat(TakeExport.take(test, file, NOW.plusSeconds(490)).pull()).isEqualTo(new PullId("A1", false, 1));
        file = Files.copy(EXPORTS.resolve("A1-2.csv"), home.resolve("third.csv"));
        assertThat(TakeExport.take(test, file, NOW.plusSeconds(730)).pull()).as("driven, but nobody said so").isEqualTo(
                new PullId("A1", false, 2));
    }

    @Test
    void oneUndoTakesBackAPullWithTheGatesReadFromItsFirstRow() throws IOException {
        Path test = sealed();
        PullId pull = new PullId("A1", false, 1);
        RunDay.of(test).run(pull, NOW, NOW);
        TakeExport.take(test, EXPORTS.resolve("A1-1.csv"), NOW.plusSeconds(30));
        RunDay taken = RunDay.of(test);
        assertThat(taken.log().conditionsAt(pull)).as("read from the file").isNotEmpty();
        assertThat(taken.log().lastAct()).extracting(LogRecord::entry).hasExactlyElementsOfTypes(LogEntry.PullTaken.class,
                LogEntry.ConditionsNoted.class);
        RunDay undone = taken.undo(NOW.plusSeconds(60));
        assertThat(undone.log().pulls()).isEmpty();
        assertThat(undone.log().conditionsAt(pull)).isEmpty();
        assertThat(undone.log().run()).containsKey(pull);
        RunDay before = undone.undo(NOW.plusSeconds(61));
        assertThat(before.log().run()).isEmpty();
        assertThat(before.canUndo()).isFalse();
    }
}
