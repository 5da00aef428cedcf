package fairpull.ui;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.app.document.Document;
import fairpull.app.usecase.planning.StartingPlan;
import fairpull.domain.plan.Plan;
import fairpull.domain.unit.UnitSystem;
import fairpull.io.folder.TestFolder;
import fairpull.io.json.PlanJson;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import javax.swing.AbstractButton;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program's own window under mouse and keyboard: from nothing to a sealed test on disk. */
@Tag("window")
class WindowTest {
    private static final int CTRL = InputEvent.CTRL_DOWN_MASK;

    @TempDir
    private Path home;

    @Test
    void aTestIsPlannedByMouseAndKeyboardTakenBackDoneAgainAndSealed() throws IOException {
        Path test = home.resolve("cooler");
        try (OnScreen screen = OnScreen.started(home.resolve("settings"))) {
            Document document = screen.window().document();
            plan(screen);
            screen.press(CTRL, KeyEvent.VK_S);
            screen.nameFolder(test);
            Waiting.until(() -> !document.isChanged());
            String complete = saved(test);
            Plan written = PlanJson.read(complete, "plan.json");
            assertThat(written.title()).isEqualTo("Larger cooler");
            assertThat(written.question().worthwhileGainSi()).isPresent();
            assertThat(written.sequence().letters()).isEqualTo("BAABA");
            assertThat(written.gates()).isNotEqualTo(StartingPlan.in(UnitSystem.US).gates());

            int steps = through(screen, KeyEvent.VK_Z, () -> document.undoLabel().isPresent());
            assertThat(steps).isGreaterThan(12);
            save(screen, document);
            assertThat(saved(test)).isEqualTo(PlanJson.indented(StartingPlan.in(UnitSystem.US)));
            assertThat(through(screen, KeyEvent.VK_Y, () -> document.redoLabel().isPresent())).isEqualTo(steps);
            save(screen, document);
            assertThat(saved(test)).isEqualTo(complete);

            screen.press(CTRL, KeyEvent.VK_E);
            screen.click("seal.yes");
            Waiting.until(document::isSealed);
            assertThat(saved(test)).isEqualTo(complete);
            assertThat(TestFolder.open(test).read().isSealed()).isTrue();
        }
    }

    private static void plan(OnScreen screen) {
        screen.type("question.title", "Larger cooler");
        screen.type("question.partB", "large cooler");
        screen.type("question.expected", "190 hp");
        screen.type("question.worthwhile", "1.5 %");
        screen.click("page.rig");
        screen.click("scatter.guess");
        screen.type("rig.gear", "4");
        screen.click("page.sequence");
        screen.choose("sequence.template", "ABBA");
        screen.type("sequence.interval", "6 min");
        screen.clickSpot("days.chart", 0);
        screen.choose("sequence.template", "ABABA");
        screen.drag("B1", "A2");
        screen.clickInstall("B1");
        screen.press(InputEvent.ALT_DOWN_MASK, KeyEvent.VK_LEFT);
        screen.press(InputEvent.ALT_DOWN_MASK, KeyEvent.VK_LEFT);
        screen.press(0, KeyEvent.VK_ADD);
        screen.click("page.limits");
        screen.type("gate.coolant", "80 - 95 C");
    }

    private static int through(OnScreen screen, int key, BooleanSupplier more) {
        int steps = 0;
        while (OnScreen.got(() -> more.getAsBoolean()) && steps < 200) {
            screen.press(CTRL, key);
            steps++;
        }
        return steps;
    }

    /** Files are written beside the window's thread. */
    private static void save(OnScreen screen, Document document) {
        screen.press(CTRL, KeyEvent.VK_S);
        Waiting.until(() -> !document.isChanged());
    }

    private static String saved(Path test) throws IOException {
        Waiting.until(() -> Files.exists(test.resolve("plan.json")));
        return Files.readString(test.resolve("plan.json"));
    }

    @Test
    void anABABAPlanIsSealedInFewerThanTenActions() throws IOException {
        Path test = home.resolve("few");
        try (OnScreen screen = OnScreen.started(home.resolve("settings"))) {
            Document document = screen.window().document();
            screen.type("question.title", "Larger cooler");
            screen.type("question.expected", "190 hp");
            screen.type("question.worthwhile", "1.5 %");
            screen.click("page.rig");
            screen.click("scatter.guess");
            screen.press(CTRL, KeyEvent.VK_E);
            screen.click("seal.yes");
            screen.nameFolder(test);
            Waiting.until(document::isSealed);
            TestFolder.Content kept = TestFolder.open(test).read();
            assertThat(kept.isSealed()).isTrue();
            assertThat(kept.plan().sequence().letters()).isEqualTo("ABABA");
            assertThat(kept.plan().rig().pullScatter()).isPresent();
            assertThat(screen.actions()).isLessThan(10);
        }
    }

    @Test
    void whoWalksWithTheTabulatorSeesEveryFieldThatHasTheFocus() throws IOException {
        try (OnScreen screen = OnScreen.started(home.resolve("settings"))) {
            screen.click("question.title");
            List<String> visited = new ArrayList<>();
            OnScreen.Focus focus = screen.focus();
            while (!visited.contains(focus.name()) && visited.size() < 60) {
                visited.add(focus.name());
                assertThat(focus.wholeInView()).as(focus.toString()).isTrue();
                screen.press(0, KeyEvent.VK_TAB);
                focus = screen.focus();
            }
            assertThat(visited).contains("question.title", "question.expected", "gain.claims", "strip", "page.question");
        }
    }

    @Test
    void keysOfThePagesWorkInASealedTestAsSoonAsItIsOpen() throws IOException {
        try (OnScreen screen = OnScreen.started(home.resolve("settings"), Optional.of(Path.of("plans/electric-pump")))) {
            assertThat(screen.window().document().isSealed()).isTrue();
            screen.press(CTRL, KeyEvent.VK_3);
            assertThat(screen.find("page.sequence", AbstractButton.class).isSelected()).isTrue();
        }
    }

    @Test
    void everyMenuAndEveryLineOfAMenuHasALetterOfItsOwn() throws IOException {
        try (OnScreen screen = OnScreen.started(home.resolve("settings"))) {
            JMenuBar bar = screen.window().getJMenuBar();
            Map<String, List<Integer>> taken = new TreeMap<>();
            Map<String, Integer> accelerators = new TreeMap<>();
            for (int place = 0; place < bar.getMenuCount(); place++) {
                JMenu menu = bar.getMenu(place);
                taken.computeIfAbsent("bar", none -> new ArrayList<>()).add(menu.getMnemonic());
                for (int line = 0; line < menu.getItemCount(); line++) {
                    JMenuItem item = menu.getItem(line);
                    if (item != null && item.getMnemonic() != 0) {
                        taken.computeIfAbsent(menu.getName(), none -> new ArrayList<>()).add(item.getMnemonic());
                    }
                    if (item != null && item.getAccelerator() != null) {
                        accelerators.merge(item.getAccelerator().toString(), 1, Integer::sum);
                    }
                }
            }
            assertThat(taken.get("bar")).doesNotContain(0);
            assertThat(taken.values()).allSatisfy(letters -> assertThat(letters).doesNotHaveDuplicates());
            assertThat(accelerators.values()).isNotEmpty().containsOnly(1);
        }
    }
}
