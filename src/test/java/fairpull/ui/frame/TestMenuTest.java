package fairpull.ui.frame;

import static fairpull.ui.frame.Seat.done;
import static org.assertj.core.api.Assertions.assertThat;

import fairpull.app.document.Unsaved;
import fairpull.domain.unit.UnitSystem;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Mode;
import java.awt.event.ActionEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import javax.swing.JComponent;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TestMenuTest {
    @TempDir
    private Path home;
    private Seat seat;
    private JMenuBar bar;

    @BeforeEach
    void open() {
        seat = new Seat(home);
        done(() -> {
            seat.windows.begin(Optional.empty(), Unsaved.none(), List.of());
            bar = TestMenu.of(seat.windows.open().get(0).actions(), seat.settings);
        });
    }

    @AfterEach
    void undress() {
        done(() -> Look.install(Mode.LIGHT, 1));
    }

    private List<JMenuItem> items(int menu) {
        JMenu of = bar.getMenu(menu);
        return IntStream.range(0, of.getItemCount()).mapToObj(of::getItem).filter(item -> item != null).toList();
    }

    private JMenuItem item(String name) {
        return IntStream.range(0, bar.getMenuCount()).boxed().flatMap(menu -> items(menu).stream())
                .filter(item -> name.equals(item.getName())).findFirst().orElseThrow(() -> new AssertionError("there is no " + name));
    }

    private void press(String name, String key) {
        JMenuItem item = item(name);
        Object act = item.getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW).get(KeyStroke.getKeyStroke(key));
        assertThat(act).as(key).isNotNull();
        done(() -> item.getActionMap().get(act).actionPerformed(new ActionEvent(item, ActionEvent.ACTION_PERFORMED, key)));
    }

    private double scale() {
        return Seat.got(() -> seat.settings.number("scale", 1));
    }

    @Test
    void typeIsMadeLargerWhereverThePlusLies() {
        for (String key : List.of("ctrl EQUALS", "ctrl shift EQUALS", "ctrl ADD")) {
            double before = scale();
            press("menu.larger", key);
            assertThat(scale()).as(key).isGreaterThan(before);
        }
        double before = scale();
        press("menu.smaller", "ctrl SUBTRACT");
        assertThat(scale()).isLessThan(before);
    }

    @Test
    void theMenuOfEveryWindowShowsWhatWasChosenInAnother() {
        JMenu view = bar.getMenu(2);
        done(() -> {
            seat.settings.units(UnitSystem.US);
            seat.settings.set("theme", "DARK");
            view.setSelected(true);
        });
        assertThat(item("menu.units.US").isSelected()).isTrue();
        assertThat(item("menu.mode.DARK").isSelected()).isTrue();
        done(() -> {
            view.setSelected(false);
            seat.settings.units(UnitSystem.METRIC);
            view.setSelected(true);
        });
        assertThat(item("menu.units.METRIC").isSelected()).isTrue();
        assertThat(item("menu.units.US").isSelected()).isFalse();
    }

    @Test
    void everyLineOfAMenuHasALetterOfItsOwn() {
        for (int menu = 0; menu < bar.getMenuCount(); menu++) {
            Map<Integer, List<String>> letters = new TreeMap<>();
            items(menu).forEach(item -> letters.computeIfAbsent(item.getMnemonic(), none -> new ArrayList<>()).add(item.getName()));
            assertThat(letters.values()).allSatisfy(named -> assertThat(named).hasSize(1));
            assertThat(letters).as(bar.getMenu(menu).getText()).doesNotContainKey(0);
        }
    }
}
