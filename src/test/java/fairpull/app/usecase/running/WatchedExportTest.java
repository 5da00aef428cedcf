package fairpull.app.usecase.running;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairpull.app.task.Progress;
import fairpull.app.usecase.keeping.AmendPlan;
import fairpull.app.usecase.keeping.KeepTest;
import fairpull.app.usecase.pulls.ExcludePull;
import fairpull.app.usecase.pulls.ImportPulls;
import fairpull.app.usecase.pulls.NotePull;
import fairpull.app.usecase.pulls.PreparedImport;
import fairpull.app.usecase.typing.StatedCorrection;
import fairpull.domain.InputException;
import fairpull.domain.pull.LogEntry;
import fairpull.domain.pull.PullId;
import fairpull.domain.running.DayProgress;
import fairpull.domain.running.NextAction;
import fairpull.io.folder.Sha256;
import fairpull.io.folder.TestFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.CountDownLatch;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What goes wrong on a day with exports and entries: nothing becomes another pull, and nothing is lost. */
class WatchedExportTest {
    private static final Path EXPORTS = Path.of("demo-data/electric-pump");
    private static final OffsetDateTime NOW = OffsetDateTime.of(2026, 5, 9, 9, 0, 0, 0, ZoneOffset.UTC);
    private static final PullId FIRST = new PullId("A1", false, 1);
    private static final PullId SECOND = new PullId("A1", false, 2);

    @TempDir
    private Path home;
    private Path test;

    @BeforeEach
    void seal() throws IOException {
        test = home.resolve("test");
        KeepTest.create(test, KeepTest.open(Path.of("plans/electric-pump")).plan());
        KeepTest.seal(test, NOW.minusHours(1));
    }

    private RunDay day() throws IOException {
        return RunDay.of(test);
    }

    private void warmUp() throws IOException {
        day().pullDone(NOW);
        day().pullDone(NOW.plusMinutes(4));
    }

    private Path export(String as, String from) throws IOException {
        return Files.copy(EXPORTS.resolve(from + ".csv"), home.resolve(as));
    }

    private Map<PullId, LogEntry.PullTaken> taken() throws IOException {
        return day().log().pulls();
    }

    @Test
    void aFileThatGrewAfterItWasTakenTakesThePlaceOfWhatItWas() throws IOException {
        warmUp();
        day().pullDone(NOW.plusMinutes(8));
        List<String> lines = Files.readAllLines(EXPORTS.resolve("A1-1.csv"));
        Path file = Files.write(home.resolve("run_7.csv"), lines.subList(0, lines.size() - 2));
        assertThat(TakeExport.take(test, file, NOW.plusMinutes(9)).pull()).isEqualTo(FIRST);

        Files.write(file, lines);
        TakeExport.Taken grown = TakeExport.take(test, file, NOW.plusMinutes(9).plusSeconds(2));
        assertThat(grown.pull()).isEqualTo(FIRST);
        assertThat(grown.doubts()).first().asString().contains("grown");
        assertThat(taken()).containsOnlyKeys(FIRST);
        assertThat(taken().get(FIRST).fileSha256()).isEqualTo(Sha256.of(file));
        assertThat(TestFolder.open(test).exportNames()).as("what came first stays").hasSize(2);
    }

    @Test
    void afterAnAbortNoExportIsTakenForTheRepeatUntilThatWasRun() throws IOException {
        warmUp();
        day().aborted("lifted", NOW.plusMinutes(8));
        Path file = export("run_9.csv", "A1-1");
        assertThatThrownBy(() -> TakeExport.take(test, file, NOW.plusMinutes(9))).isInstanceOf(InputException.class)
                .hasMessageContaining("A1-1 was aborted");
        assertThat(taken()).isEmpty();

        day().pullDone(NOW.plusMinutes(12));
        assertThat(TakeExport.take(test, export("run_10.csv", "A1-2"), NOW.plusMinutes(13)).pull()).isEqualTo(FIRST);
    }

    @Test
    void readingsAndReasonsOfAStoppedPullAreNoneOfItsRepeat() throws IOException {
        warmUp();
        var condition = day().plan().gates().get(0).condition();
        NotePull.note(test, List.of(new NotePull.Note(FIRST, Optional.empty(), Map.of(condition, "24C"), Map.of(), Optional.empty(),
                Optional.empty(), Map.of(condition, "no time"), Optional.empty())), NOW.plusMinutes(7));
        assertThat(day().log().conditionsAt(FIRST)).isNotEmpty();
        day().aborted("lifted", NOW.plusMinutes(8));

        assertThat(day().log().conditionsAt(FIRST)).isEmpty();
        assertThat(day().log().gatesOverridden()).isEmpty();
    }

    @Test
    void anExclusionEndsWithTheExportThatItWasAbout() throws IOException {
        warmUp();
        day().pullDone(NOW.plusMinutes(8));
        TakeExport.take(test, export("run_1.csv", "A1-2"), NOW.plusMinutes(9));
        ExcludePull.exclude(test, List.of(FIRST), "wrong file", NOW.plusMinutes(10));
        day().undo(NOW.plusMinutes(11));
        TakeExport.take(test, export("run_2.csv", "A1-1"), NOW.plusMinutes(12));

        assertThat(taken()).containsOnlyKeys(FIRST);
        assertThat(day().log().excluded()).isEmpty();
    }

    @Test
    void whatIsNextByNowIsNotWhatWasMeant() throws IOException {
        warmUp();
        NextAction seen = day().next(NOW.plusMinutes(8));
        TakeExport.take(test, export("A1-1.csv", "A1-1"), NOW.plusMinutes(8).plusSeconds(5));

        assertThatThrownBy(() -> day().meaning(seen, NOW.plusMinutes(8)).aborted("lifted", NOW.plusMinutes(8)))
                .hasMessageContaining("Pull 1 on A1 is not next any more");
        assertThat(day().log().aborted()).isEmpty();
        assertThat(day().meaning(day().next(NOW.plusMinutes(9)), NOW.plusMinutes(9)).pullDone(NOW.plusMinutes(9)).log().run())
                .containsKey(SECOND);
    }

    @Test
    void exportsFoundLateStartWhenTheirFilesWereWritten() throws IOException {
        List<PullId> pulls = List.of(FIRST, SECOND);
        for (PullId pull : pulls) {
            Path file = export(pull + ".csv", pull.toString());
            Files.setLastModifiedTime(file, FileTime.from(NOW.plusMinutes(8L * pull.number()).toInstant()));
            TakeExport.take(test, file, NOW.plusHours(2));
        }
        // the second file was written before the entry of the first one, so that nobody knows
        assertThat(taken().get(FIRST).startedAt()).contains(NOW.plusMinutes(8));
    }

    @Test
    void onlyAllPullsOfTheLastInstallEndADay() throws IOException {
        for (String name : List.of("A1-1", "A1-2", "B1-1", "B1-2", "A3-5")) {
            ImportPulls.run(new ImportPulls.Request(test, List.of(EXPORTS.resolve(name + ".csv")), Optional.empty(), OptionalInt.empty(),
                    false, new ImportPulls.Reading(List.of(), StatedCorrection.nothing(), Optional.empty(), false, Optional.empty()),
                    Optional.empty()), NOW);
        }
        RunDay day = day();
        assertThat(DayProgress.of(day.plan(), day.log()).mayBeJudged()).isFalse();
        RunDay ended = day.end("rain", NOW.plusHours(1));
        assertThat(DayProgress.of(ended.plan(), ended.log()).mayBeJudged()).isTrue();
        assertThatThrownBy(() -> ended.end("again", NOW.plusHours(2))).hasMessageContaining("done already");
    }

    @Test
    void threadsThatWriteAtOnceLoseNothing() throws Exception {
        List<Throwable> failed = Collections.synchronizedList(new ArrayList<>());
        atOnce(2, place -> {
            for (int k = 0; k < 40; k++) {
                NotePull.remark(test, Optional.empty(), "x", NOW);
            }
        }, failed);
        assertThat(failed).isEmpty();
        TestFolder.Content kept = TestFolder.open(test).read();
        assertThat(kept.logBrokenAt()).isEmpty();
        assertThat(kept.log().records()).hasSize(81);
    }

    @Test
    void ofTwoImportsAtOnceOneIsRefused() throws Exception {
        for (int round = 0; round < 8; round++) {
            Path fresh = home.resolve("round" + round);
            KeepTest.create(fresh, KeepTest.open(Path.of("plans/electric-pump")).plan());
            KeepTest.seal(fresh, NOW.minusHours(1));
            List<PreparedImport> both = Stream.of("A1-1", "A1-2").map(name -> prepared(fresh, name)).toList();
            List<Throwable> failed = Collections.synchronizedList(new ArrayList<>());
            atOnce(2, place -> both.get(place).take(NOW, Progress.none()), failed);

            assertThat(failed).singleElement().isInstanceOf(InputException.class);
            LogEntry.PullTaken one = RunDay.of(fresh).log().pulls().get(FIRST);
            assertThat(Sha256.of(TestFolder.open(fresh).export(one.file()))).isEqualTo(one.fileSha256());
            assertThat(TestFolder.open(fresh).exportNames()).containsExactly(one.file());
        }
    }

    private static PreparedImport prepared(Path test, String name) {
        try {
            return ImportPulls.prepare(new ImportPulls.Request(test, List.of(EXPORTS.resolve(name + ".csv")), Optional.of("A1"),
                    OptionalInt.of(1), false, new ImportPulls.Reading(List.of(), StatedCorrection.nothing(), Optional.empty(), false,
                    Optional.empty()), Optional.empty()), Progress.none());
        } catch (IOException failed) {
            throw new java.io.UncheckedIOException(failed);
        }
    }

    private interface Work {
        void run(int place) throws Exception;
    }

    private static void atOnce(int threads, Work work, List<Throwable> failed) throws InterruptedException {
        CountDownLatch start = new CountDownLatch(1);
        List<Thread> all = new ArrayList<>();
        for (int k = 0; k < threads; k++) {
            int place = k;
            Thread thread = new Thread(() -> {
                try {
                    start.await();
                    work.run(place);
                } catch (Throwable fault) {
                    failed.add(fault);
                }
            });
            thread.start();
            all.add(thread);
        }
        start.countDown();
        for (Thread thread : all) {
            thread.join();
        }
    }

    @Test
    void anAmendmentCutShortBetweenTheLogAndThePlanIsCarriedToItsEnd() throws IOException {
        byte[] before = Files.readAllBytes(test.resolve("plan.json"));
        AmendPlan.amend(test, Map.of("title", "other"), Optional.empty(), List.of(), "why", NOW);
        Path plan = test.resolve("plan.json");
        Files.move(plan, test.resolve("plan.next.json"));
        Files.write(plan, before);

        assertThat(TestFolder.open(test).read().plan().title()).isEqualTo("other");
        AmendPlan.amend(test, Map.of("title", "third"), Optional.empty(), List.of(), "why", NOW.plusMinutes(1));
        assertThat(TestFolder.open(test).read().plan().title()).isEqualTo("third");
    }

    @Test
    void aClockThatWasSetBackCountsNothingDown() throws IOException {
        day().pullDone(NOW);
        RunFace face = RunFace.of(day(), NOW.minusHours(1), false);
        assertThat(face.clock()).isEmpty();
        assertThat(face.window()).contains("set back");
    }
}
