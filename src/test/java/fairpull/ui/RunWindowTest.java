package fairpull.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import fairpull.app.usecase.judging.FindingView;
import fairpull.app.usecase.keeping.KeepTest;
import fairpull.app.usecase.running.RunDay;
import fairpull.cli.CommandLineProgram;
import fairpull.domain.plan.Install;
import fairpull.domain.plan.Part;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Sequence;
import fairpull.domain.plan.Session;
import fairpull.domain.pull.LogEntry;
import fairpull.domain.pull.PullId;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A whole day in the program's own window at sixty times the speed of the clock: files dropped into the watched folder, one pull aborted,
 * a gate overridden, a wrong pull undone, a kill in the middle, and the finding that the command line gives.
 */
@Tag("window")
class RunWindowTest {
    private static final int SPEED = 60;
    private static final Path EXPORTS = Path.of("demo-data/electric-pump");
    private static final Instant SHOWN = Instant.parse("2026-05-09T07:00:00Z");
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final long LONGEST_ON_DISK_MS = 1000;

    @TempDir
    private Path home;

    private final Instant real = Instant.now();
    private Path folder;
    private Path rig;
    private FarWindow window;
    private int files;

    private static Plan plan() throws IOException {
        Plan plan = KeepTest.open(Path.of("plans/electric-pump")).plan();
        Sequence whole = plan.sequence();
        List<Install> installs = List.of(new Install("A1", Part.A, 2, 1, true), new Install("B1", Part.B, 2, 1, true),
                new Install("A2", Part.A, 2, 1, true));
        return plan.resequenced(new Sequence(List.of(new Session("day 1", installs, Optional.empty())), whole.origin(), whole.seed(), 120,
                240, whole.setUpS()));
    }

    private void start() throws IOException {
        window = new FarWindow(home.resolve("settings"), folder, SPEED + "@" + real + "@" + SHOWN);
        window.act("page", 5);
    }

    private void says(String name, String words) throws IOException {
        window.act("until", name, words);
    }

    /** As a rig writes: a part first, the rest a moment later. */
    private void drop(String export) throws IOException, InterruptedException {
        Path file = rig.resolve("run" + ++files + ".csv");
        byte[] whole = Files.readAllBytes(EXPORTS.resolve(export + ".csv"));
        Files.write(file, Arrays.copyOf(whole, whole.length / 2));
        TimeUnit.MILLISECONDS.sleep(400);
        Files.write(file, Arrays.copyOfRange(whole, whole.length / 2, whole.length), StandardOpenOption.APPEND);
    }

    /** Waits for the count-down and presses the key; what was done is on disk within a second of it. */
    private void run(String head) throws IOException {
        says("run.head", head);
        window.act("gone", "run.sign", "wait");
        int before = RunDay.of(folder).log().records().size();
        window.act("key", "SPACE");
        List<LogEntry> log = RunDay.of(folder).log().records().stream().map(record -> record.entry()).toList();
        assertThat(log).hasSize(before + 1);
        OffsetDateTime pressed = ((LogEntry.PullRun) log.get(before)).startedAt();
        Instant really = real.plusMillis(Duration.between(SHOWN, pressed.toInstant()).toMillis() / SPEED);
        assertThat(Duration.between(really, Files.getLastModifiedTime(folder.resolve("log.jsonl")).toInstant()).toMillis())
                .as("ms from the key to the disk").isBetween(-100L, LONGEST_ON_DISK_MS);
    }

    private void pull(String pull) throws IOException, InterruptedException {
        PullId id = PullId.parse(pull).orElseThrow();
        run("Pull " + id.number() + " on " + id.install());
        drop(pull);
        says("run.watch.news", "is now pull " + pull + ".");
    }

    private void swap(String install) throws IOException {
        says("run.head", "Swap to " + install);
        window.act("key", "S");
        finishSwap(install);
    }

    private void finishSwap(String install) throws IOException {
        says("run.head", "Swapping to " + install);
        says("run.sign", "■");
        window.act("key", "S");
        says("run.head", "Warm-up 1 on " + install);
    }

    @Test
    void aWholeDayIsRunInTheWindowThroughAKillAndEndsInTheFindingOfTheCommandLine() throws IOException, InterruptedException {
        folder = home.resolve("day");
        rig = Files.createDirectories(home.resolve("rig"));
        Files.copy(EXPORTS.resolve("A3-1.csv"), rig.resolve("from yesterday.csv"));
        KeepTest.create(folder, plan());
        KeepTest.seal(folder, SHOWN.minusSeconds(3600).atZone(ZoneId.systemDefault()).toOffsetDateTime());
        try {
            start();
            untilTheKill();
            window.kill();
            drop("B1-2");
            start();
            untilTheEnd();
        } finally {
            window.close();
        }
    }

    private void untilTheKill() throws IOException, InterruptedException {
        window.act("click", "run.watch.choose");
        window.act("folder", rig);
        says("run.watch.state", "not taken: 1");
        run("Warm-up 1 on A1");
        pull("A1-1");
        run("Pull 2 on A1");
        drop("A2-2");
        says("run.watch.news", "is now pull A1-2.");
        window.act("key", "U");
        assertThat(RunDay.of(folder).log().pulls().keySet()).as("the wrong pull is gone at one press").hasSize(1);
        assertThat(RunDay.of(folder).log().conditionsAt(PullId.parse("A1-2").orElseThrow())).isEmpty();
        drop("A1-1");
        says("run.watch.news", "same bytes as pull A1-1");
        drop("A1-2");
        window.act("until", "run.watch.news", "run" + files + ".csv is now pull A1-2.");
        swap("B1");
        run("Warm-up 1 on B1");
        says("run.head", "Pull 1 on B1");
        window.act("key", "X");
        window.act("type", "run.reason.field", "wheel slip");
        assertThat(RunDay.of(folder).log().aborted()).hasSize(1);
        window.act("type", "run.gate.intake-air", "35 C");
        says("run.gate.intake-air.standing", "too high");
        window.act("click", "run.go");
        window.act("type", "run.reason.field", "no time to cool down");
        says("run.gate.intake-air.standing", "goes on");
        pull("B1-1");
        run("Pull 2 on B1");
        says("run.head", "Swap to A2");
        window.act("key", "S");
        says("run.head", "Swapping to A2");
    }

    private void untilTheEnd() throws IOException, InterruptedException {
        says("run.watch.news", "is now pull B1-2.");
        finishSwap("A2");
        run("Warm-up 1 on A2");
        pull("A2-1");
        assertThat(window.act("all", "run.sofar")).contains("No verdict before the end");
        assertThat(window.act("text", "run.verdict")).as("no verdict before the end").isEmpty();
        pull("A2-2");
        says("run.head", "The day is done");
        String heading = FindingView.of(folder).sections().stream().filter(section -> section.kind().equals("verdict")).findFirst()
                .orElseThrow().heading();
        says("run.verdict", heading);
        assertThat(window.act("all", "run.sofar")).doesNotContain("No verdict");
        window.act("click", "run.finding");
        Waiting.until(() -> holds(heading));

        JsonNode judged = json("judge", folder, "--json");
        JsonNode imported = json("judge", byCommandLine(), "--json");
        for (String part : List.of("verdict", "worthwhile", "estimate", "interval", "pValue", "degreesOfFreedom", "scatter", "installs",
                "returnCheck", "secondary", "curve", "claims", "tippingScatter")) {
            assertThat(judged.get(part)).as(part).isNotNull().isEqualTo(imported.get(part));
        }
        assertThat(heading.toLowerCase(Locale.ROOT)).contains(judged.get("verdict").asText().replace('_', ' '));
        RunDay day = RunDay.of(folder);
        assertThat(day.log().repeated().keySet()).containsExactly(new PullId("B1", false, 1));
        assertThat(day.log().gatesOverridden().keySet()).containsExactly(new PullId("B1", false, 1));
        assertThat(day.log().takenBack()).isNotEmpty();
    }

    private boolean holds(String heading) {
        try {
            return window.act("all", "finding").contains(heading);
        } catch (IOException gone) {
            throw new AssertionError(gone);
        }
    }

    /** The same day by the command line alone: the same exports at the same times. */
    private Path byCommandLine() throws IOException {
        Path other = home.resolve("imported");
        KeepTest.create(other, plan());
        KeepTest.seal(other, SHOWN.minusSeconds(3600).atZone(ZoneId.systemDefault()).toOffsetDateTime());
        for (Map.Entry<PullId, LogEntry.PullRun> run : RunDay.of(folder).log().run().entrySet()) {
            String at = run.getValue().startedAt().toString();
            if (run.getKey().warmUp()) {
                said("note", other, run.getKey(), "--run", "--at", at);
            } else {
                said("import", other, EXPORTS.resolve(run.getKey() + ".csv"), "--at", at);
            }
        }
        return other;
    }

    private static JsonNode json(Object... words) throws IOException {
        return JSON.readTree(said(words));
    }

    private static String said(Object... words) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        List<String> line = Stream.of(words).map(Object::toString).toList();
        int status = new CommandLineProgram(new PrintWriter(out, true), new PrintWriter(err, true), Clock.systemDefaultZone()).runVerb(line);
        assertThat(status).as(line + ": " + err).isZero();
        return out.toString();
    }
}
