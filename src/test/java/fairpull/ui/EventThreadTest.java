package fairpull.ui;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.app.usecase.keeping.KeepTest;
import fairpull.ui.frame.TestPane;
import fairpull.ui.page.limits.CoolDowns;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The window answers at once whatever goes on: typing, a search, a proof, a cool-down read, all pages. It measures time, so it runs only when asked. */
@Tag("window")
@Tag("slow")
class EventThreadTest {
    private static final double LONGEST_MS = 50;
    /** The first round loads classes and typefaces and runs interpreted; it is held to what is still felt as one movement. */
    private static final double LONGEST_FIRST_MS = 1000;
    private static final int ROUNDS = 3;
    private static final int PULLS = 5;

    @TempDir
    private Path home;

    @Test
    void noEventHoldsTheWindowLongerThanFiftyMilliseconds() throws IOException {
        try (OnScreen screen = OnScreen.started(home)) {
            EventWatch watch = EventWatch.begun();
            use(screen, "first");
            List<EventWatch.Held> first = watch.taken();
            for (int round = 1; round < ROUNDS; round++) {
                use(screen, "again " + round);
                say("round " + round, watch.taken());
            }
            use(screen, "in the end");
            List<EventWatch.Held> last = watch.taken();
            watch.end();
            say("first", first);
            say("last", last);
            assertThat(last).hasSizeGreaterThan(300);
            assertThat(first.get(0).heldMs()).as(first.get(0).toString()).isLessThan(LONGEST_FIRST_MS);
            assertThat(last.get(0).heldMs()).as(last.get(0).toString()).isLessThan(LONGEST_MS);
        }
    }

    @Test
    void noEventHoldsTheWindowWhileADayIsRunAndExportsComeIn() throws IOException {
        Path test = home.resolve("day");
        Path rig = Files.createDirectories(home.resolve("rig"));
        KeepTest.create(test, KeepTest.open(Path.of("plans/electric-pump")).plan());
        KeepTest.seal(test, OffsetDateTime.now().minusHours(1));
        try (OnScreen screen = OnScreen.started(home.resolve("settings"), Optional.of(test))) {
            screen.press(InputEvent.CTRL_DOWN_MASK, KeyEvent.VK_5);
            screen.click("run.watch.choose");
            screen.nameFolder(rig);
            screen.untilSays("run.watch.state", "Watching");
            screen.untilSays("run.head", "Warm-up 1 on A1");
            screen.press(0, KeyEvent.VK_SPACE);
            screen.untilSays("run.head", "Warm-up 2 on A1");
            screen.waitOutRepeats();
            screen.press(0, KeyEvent.VK_SPACE);
            EventWatch watch = EventWatch.begun();
            List<EventWatch.Held> last = List.of();
            for (int pull = 1; pull <= PULLS; pull++) {
                run(screen, rig, pull);
                last = watch.taken();
                say("day, pull " + pull, last);
            }
            watch.end();
            assertThat(last).hasSizeGreaterThan(50);
            assertThat(last.get(0).heldMs()).as(last.get(0).toString()).isLessThan(LONGEST_MS);
        }
    }

    @Test
    void noEventHoldsTheWindowWhileAFindingIsRead() throws IOException {
        Path test = CopiedTest.of(Path.of("plans/electric-pump"), home.resolve("pump"));
        try (OnScreen screen = OnScreen.started(home.resolve("settings"), Optional.of(test))) {
            EventWatch watch = EventWatch.begun();
            List<EventWatch.Held> last = List.of();
            for (int round = 1; round <= PULLS; round++) {
                screen.click("page.finding");
                screen.settle();
                screen.click("finding.everything");
                screen.settle();
                screen.click("finding.again");
                screen.settle();
                screen.click("page.pulls");
                screen.settle();
                last = watch.taken();
                say("finding " + round, last);
            }
            watch.end();
            assertThat(last).hasSizeGreaterThan(20);
            assertThat(last.get(0).heldMs()).as(last.get(0).toString()).isLessThan(LONGEST_MS);
        }
    }

    /** A gate, a pull aborted and taken back, the pull, its export, then a look at the page of the pulls. */
    private static void run(OnScreen screen, Path rig, int pull) throws IOException {
        screen.untilSays("run.head", "Pull " + pull + " on A1");
        screen.type("run.gate.intake-air", "2" + pull + " C");
        screen.click("run.abort");
        screen.type("run.reason.field", "wheel slip");
        screen.press(0, KeyEvent.VK_U);
        screen.press(0, KeyEvent.VK_SPACE);
        Files.copy(Path.of("demo-data/electric-pump/A1-" + pull + ".csv"), rig.resolve("run" + pull + ".csv"));
        screen.untilSays("run.watch.news", "is now pull A1-" + pull + ".");
        screen.settle();
        screen.click("page.pulls");
        screen.settle();
        screen.click("page.run");
        screen.settle();
    }

    static void say(String round, List<EventWatch.Held> events) {
        System.out.println("Longest events, " + round + " round:");
        events.stream().limit(4).forEach(held -> System.out.printf("  %6.1f ms held, %6.1f ms wall: %.150s%n", held.heldMs(), held.wallMs(),
                held.event()));
    }

    private static void use(OnScreen screen, String title) {
        screen.click("page.question");
        screen.type("question.title", title);
        screen.type("question.expected", "190 hp");
        screen.type("question.worthwhile", "1.5 %");
        screen.click("page.rig");
        screen.click("scatter.guess");
        screen.click("page.sequence");
        screen.choose("sequence.template", "ABBA");
        screen.choose("sequence.template", "ABABA");
        screen.type("sequence.pulls", "9");
        screen.type("days.hours", "10 h");
        screen.type("days.installs", "8");
        screen.clickSpot("days.chart", 1);
        screen.choose("sequence.template", "ABABA");
        screen.drag("B1", "A2");
        screen.click("outlook.prove");
        screen.settle();
        screen.click("page.limits");
        TestPane pane = screen.pane();
        Waiting.onWindowThread(() -> CoolDowns.take(pane, Path.of("demo-data/cool-down/intake-air.csv")));
        screen.settle();
        screen.type("heat.rise", "6 K");
        screen.type("gate.coolant", "80 - 95 C");
    }
}
