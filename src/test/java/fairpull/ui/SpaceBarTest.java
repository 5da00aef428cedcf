package fairpull.ui;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.app.usecase.keeping.KeepTest;
import fairpull.app.usecase.running.RunDay;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The space bar says that a pull is done, wherever somebody clicked last. */
@Tag("window")
class SpaceBarTest {
    @TempDir
    private Path home;
    private Path day;

    @BeforeEach
    void seal() throws IOException {
        day = home.resolve("day");
        KeepTest.create(day, KeepTest.open(Path.of("plans/electric-pump")).plan());
        KeepTest.seal(day, OffsetDateTime.now().minusHours(1));
    }

    private int pullsRun() throws IOException {
        return RunDay.of(day).log().run().size();
    }

    @Test
    void afterAClickOnThePathAndInAFieldForAReadingThatIsStillEmpty() throws IOException {
        try (OnScreen screen = OnScreen.started(home.resolve("settings"), Optional.of(day))) {
            screen.click("page.run");
            screen.untilSays("run.head", "Warm-up 1 on A1");
            screen.press(0, KeyEvent.VK_SPACE);
            screen.untilSays("run.head", "Warm-up 2 on A1");
            screen.waitOutRepeats();
            screen.click("run.gate.coolant");
            screen.press(0, KeyEvent.VK_SPACE);
            screen.untilSays("run.head", "Pull 1 on A1");
            assertThat(screen.text("run.gate.coolant")).isEmpty();
        }
    }

    @Test
    void notWhileAReasonIsAskedForWhereverTheFocusWent() throws IOException {
        try (OnScreen screen = OnScreen.started(home.resolve("settings"), Optional.of(day))) {
            screen.click("page.run");
            screen.untilSays("run.head", "Warm-up 1 on A1");
            screen.press(0, KeyEvent.VK_X);
            screen.click("run.next");
            screen.press(0, KeyEvent.VK_SPACE);
            screen.typeOn("run.reason.field", "wheel slip");
            screen.settle();
            assertThat(pullsRun()).isZero();
            assertThat(RunDay.of(day).log().aborted()).hasSize(1);
        }
    }
}
