package fairpull.app.usecase.pulls;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.app.task.Progress;
import fairpull.app.usecase.judging.JudgeFolder;
import fairpull.app.usecase.keeping.KeepTest;
import fairpull.app.usecase.running.RunDay;
import fairpull.app.usecase.running.TakeExport;
import fairpull.domain.plan.Install;
import fairpull.report.wording.HeadingWords;
import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is said of pulls that are not in, while the day is under way and after it. */
class PullsNotInTest {
    private static final Path EXPORTS = Path.of("demo-data/electric-pump");

    @TempDir
    private Path home;
    private Path folder;
    private OffsetDateTime now = OffsetDateTime.of(2026, 5, 9, 9, 0, 0, 0, ZoneOffset.UTC);

    /** A1 is run with all its exports, B1 has two of its five counted pulls, the export of the second is not in. */
    private void run() throws IOException {
        folder = home.resolve("pump");
        var plan = KeepTest.open(Path.of("plans/electric-pump")).plan();
        KeepTest.create(folder, plan);
        KeepTest.seal(folder, now.minusHours(12));
        List<Install> installs = plan.sequence().installs().toList();
        pulls(installs.get(0), 5, 5);
        RunDay.of(folder).swap(now);
        RunDay.of(folder).swap(now.plusMinutes(8));
        pulls(installs.get(1), 2, 1);
    }

    private void pulls(Install install, int counted, int exported) throws IOException {
        for (int pull = 1; pull <= install.warmUpPulls() + counted; pull++) {
            now = now.plusMinutes(10);
            RunDay.of(folder).pullDone(now);
            int number = pull - install.warmUpPulls();
            if (number > 0 && number <= exported) {
                TakeExport.take(folder, EXPORTS.resolve(install.label() + "-" + number + ".csv"), now);
            }
        }
    }

    private Map<String, String> told() throws IOException {
        return PullsView.of(folder, Progress.none()).rows().stream()
                .collect(Collectors.toMap(row -> row.pull().toString(), row -> (row.fateWords() + ": " + row.reason()).strip()));
    }

    @Test
    void nothingIsMissedBeforeTheDayIsOver() throws IOException {
        run();
        assertThat(told()).containsEntry("A1-5", "used:").containsEntry("B1-2", "not in yet: run, its export has not come in")
                .containsEntry("B1-3", "not in yet: not yet due").containsEntry("A2-W1", "not in yet: not yet due");
        assertThat(told().values()).noneMatch(words -> words.contains("never"));
    }

    @Test
    void timesOfASessionStandOnTheClockOfItsFirstPull() throws IOException {
        run();
        List<String> before = times();
        assertThat(before).hasSize(11).startsWith("09:10:00").endsWith("10:50:00");
        RunDay.of(folder).pullDone(now.plusMinutes(10).withOffsetSameInstant(ZoneOffset.ofHours(13)));
        assertThat(times()).hasSize(12).startsWith(before.toArray(String[]::new)).endsWith("11:00:00");
    }

    /** {@return the times that are known, in the order of the plan} */
    private List<String> times() throws IOException {
        return PullsView.of(folder, Progress.none()).rows().stream().filter(row -> row.time().text().contains(":"))
                .map(row -> row.time().text()).toList();
    }

    @Test
    void afterItThePullsThatNeverCameInAreSaidToBeSo() throws IOException {
        run();
        RunDay.of(folder).end("the rig broke", now);
        assertThat(told()).containsEntry("B1-2", "never came in: run, its export has not come in").containsEntry("B1-3", "never came in:")
                .containsEntry("A2-W1", "never came in:");
        assertThat(HeadingWords.marks(JudgeFolder.judge(folder))).contains("never came in").doesNotContain("not in yet");
    }
}
