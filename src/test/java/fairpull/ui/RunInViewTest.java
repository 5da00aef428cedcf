package fairpull.ui;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.app.document.Settings;
import fairpull.app.usecase.judging.FindingView;
import fairpull.domain.unit.UnitSystem;
import fairpull.ui.frame.TestPane;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Mode;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The whole day is operated without scrolling in a window of 1280 × 800, of which frame and menus take some fifty lines. */
class RunInViewTest {
    private static final int WIDTH = 1270;
    private static final int HEIGHT = 750;

    @TempDir
    private Path home;

    private final Locale locale = Locale.getDefault();
    private TestPane pane;

    private Path test() {
        return home.resolve("day");
    }

    private void show(DayUnderWay.State state, Settings settings) {
        Waiting.onWindowThread(() -> {
            Look.install(Mode.LIGHT, 1);
            try {
                pane = DayUnderWay.pane(test(), settings, state);
            } catch (IOException unreadable) {
                throw new UncheckedIOException(unreadable);
            }
        });
        for (int round = 0; round < 3; round++) {
            Waiting.onWindowThread(() -> OffScreen.laidOut(pane, WIDTH, HEIGHT));
            Waiting.forQuiet();
        }
    }

    private Settings settings() {
        return Settings.in(home.resolve("settings"));
    }

    @AfterEach
    void end() {
        Locale.setDefault(locale);
        Waiting.onWindowThread(() -> pane.removeNotify());
    }

    private <C extends Component> C find(String name, Class<C> kind) {
        return Hand.within(pane).filter(kind::isInstance).filter(one -> name.equals(one.getName())).map(kind::cast).findFirst().orElseThrow();
    }

    @ParameterizedTest
    @EnumSource
    void nothingOfTheDayIsScrolledAwayOrCutOff(DayUnderWay.State state) {
        show(state, settings());
        JComponent page = find("run", JComponent.class);
        JViewport view = (JViewport) SwingUtilities.getAncestorOfClass(JViewport.class, page);
        assertThat(view.getView().getPreferredSize().height).as("height of the page in a view of " + view.getHeight())
                .isLessThanOrEqualTo(view.getHeight());
        assertThat(find("outlook", JComponent.class).isVisible()).as("the side panel").isFalse();
        Rectangle whole = new Rectangle(view.getSize());
        List<Component> shown = Hand.within(page).filter(one -> one instanceof AbstractButton || one instanceof JTextField
                || one instanceof JTextArea || one instanceof JLabel).filter(RunInViewTest::isInView).toList();
        assertThat(shown).hasSizeGreaterThan(10);
        for (Component one : shown) {
            assertThat(whole.contains(SwingUtilities.convertRectangle(one.getParent(), one.getBounds(), view))).as(one.toString()).isTrue();
            Dimension wanted = one.getPreferredSize();
            boolean cut = one.getWidth() < wanted.width && !(one instanceof JTextArea) && !String.valueOf(one.getName()).endsWith("standing");
            assertThat(cut || one.getHeight() < wanted.height - 2).as("cut off: " + one).isFalse();
        }
        assertThat(find("run.cautions", JTextArea.class).getText()).contains("can kill", "licensed practice come first");
        assertThat(find("run.watch.choose", AbstractButton.class).isEnabled()).isTrue();
    }

    private static boolean isInView(Component component) {
        for (Component one = component; one != null && !"run".equals(one.getName()); one = one.getParent()) {
            if (!one.isVisible()) {
                return false;
            }
        }
        return true;
    }

    @Test
    void onceTheDayIsDoneThePageSaysWhatWasFoundAndWhereToReadIt() throws IOException {
        show(DayUnderWay.State.OVER, settings());
        String verdict = FindingView.of(test()).sections().stream().filter(section -> section.kind().equals("verdict")).findFirst()
                .orElseThrow().heading();
        assertThat(find("run.verdict", JTextArea.class).getText()).contains(verdict);
        assertThat(Hand.within(pane).filter(JTextArea.class::isInstance).map(area -> ((JTextArea) area).getText()))
                .anyMatch(words -> words.contains("on the page Finding")).noneMatch(words -> words.contains("No verdict"));
        Waiting.onWindowThread(() -> find("run.finding", AbstractButton.class).doClick());
        assertThat(find("page.finding", AbstractButton.class).isSelected()).isTrue();
        Waiting.until(() -> Hand.within(pane).anyMatch(one -> "finding.verdict".equals(one.getName())));
    }

    @Test
    void blindEyesSeeNoPartNameNoValueAndNoPageThatTellsThemUntilTheDayIsDone() {
        Settings settings = settings();
        settings.set("run.blind:" + test().toAbsolutePath().normalize(), "on");
        show(DayUnderWay.State.SWAPPING, settings);
        List<String> words = Hand.within(pane).filter(RunInViewTest::isInView).map(one -> one instanceof JLabel label ? label.getText()
                : one instanceof JTextArea area ? area.getText() : "").toList();
        assertThat(words).noneMatch(said -> said.contains("pump")).noneMatch(said -> said.contains("hp"));
        assertThat(pane.strip().drawing().shapes().toString()).doesNotContain("Disc[");
        for (String page : List.of("page.question", "page.pulls", "page.finding")) {
            assertThat(find(page, AbstractButton.class).isEnabled()).as(page).isFalse();
            assertThat(find(page, AbstractButton.class).getToolTipText()).contains("blind");
        }
        Waiting.onWindowThread(() -> find("run.blind", AbstractButton.class).doClick());
        Waiting.forQuiet();
        assertThat(find("page.pulls", AbstractButton.class).isEnabled()).isTrue();
        assertThat(find("run.chart", JComponent.class).isVisible()).isTrue();
    }

    @Test
    void theEndOfTheDayGivesBlindEyesTheirSight() {
        Settings settings = settings();
        settings.set("run.blind:" + test().toAbsolutePath().normalize(), "on");
        show(DayUnderWay.State.OVER, settings);
        assertThat(find("run.blind", AbstractButton.class).isSelected()).isFalse();
        assertThat(find("run.verdict", JTextArea.class).getText()).isNotBlank();
        assertThat(find("page.pulls", AbstractButton.class).isEnabled()).isTrue();
    }

    @Test
    void aDayThatNoLongerFitsSaysWhichPullsToDrop() {
        Settings settings = settings();
        settings.units(UnitSystem.METRIC);
        show(DayUnderWay.State.LATE, settings);
        assertThat(find("run.trouble", JTextArea.class).getText()).contains("beyond its end", "Dropping", "costs least");
        assertThat(find("run.sign", JLabel.class).getText()).isEqualTo("■ late");
        assertThat(find("run.gate.intake-air.standing", JLabel.class).getText()).contains("3.3", "too high", "goes on: no time");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"de-DE | METRIC | 26,4 | 3,3 | °C", "en-US | US | 79.5 | 5.9 | °F"})
    void gatesAreReadInTheUnitsAndTheDecimalMarkOfTheReader(String tag, UnitSystem units, String read, String off, String unit) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        Settings settings = settings();
        settings.units(units);
        show(DayUnderWay.State.LATE, settings);
        assertThat(find("run.gate.intake-air", JTextField.class).getText()).startsWith(read).endsWith(unit);
        assertThat(find("run.gate.intake-air.standing", JLabel.class).getText()).contains(off, "too high");
        assertThat(Optional.of(find("run.clock", JLabel.class).getText())).contains("2:00");
    }
}
