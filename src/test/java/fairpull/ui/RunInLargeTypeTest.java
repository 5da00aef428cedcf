package fairpull.ui;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.app.document.Settings;
import fairpull.ui.frame.TestPane;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Mode;
import java.awt.Component;
import java.awt.Rectangle;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** On a day under way the next action, its count-down and the keys are in view without scrolling, however large the type is. */
class RunInLargeTypeTest {
    @TempDir
    private Path folder;

    @AfterEach
    void usualType() {
        Waiting.onWindowThread(() -> Look.install(Mode.LIGHT, 1));
    }

    private TestPane shown(DayUnderWay.State state, double type, int width, int height) {
        TestPane[] pane = new TestPane[1];
        Waiting.onWindowThread(() -> {
            Look.install(Mode.LIGHT, type);
            try {
                pane[0] = DayUnderWay.pane(folder.resolve("test"), Settings.in(folder.resolve("home")), state);
            } catch (IOException unreadable) {
                throw new UncheckedIOException(unreadable);
            }
            OffScreen.laidOut(pane[0], width, height);
        });
        Waiting.forQuiet();
        Waiting.onWindowThread(() -> OffScreen.laidOut(pane[0], width, height));
        Waiting.forQuiet();
        Waiting.onWindowThread(() -> OffScreen.laidOut(pane[0], width, height));
        return pane[0];
    }

    @ParameterizedTest
    @CsvSource({"WAITING, 1, 1280, 800", "LATE, 1.5, 1280, 800", "LATE, 2, 1280, 800", "MANY_GATES, 2, 1280, 800", "LATE, 1.5, 1600, 1000",
        "LATE, 2, 1600, 1000", "SWAPPING, 2, 1280, 800"})
    void actionCountDownAndKeysAreInView(DayUnderWay.State state, double type, int width, int height) {
        TestPane pane = shown(state, type, width, height);
        Waiting.onWindowThread(() -> {
            List<Component> all = Hand.within(pane).toList();
            List<Component> keys = all.stream().filter(one -> "run.acts".equals(one.getName())).flatMap(Hand::within)
                    .filter(one -> one instanceof AbstractButton && one.isVisible() && one.getName() != null
                            && !one.getName().startsWith("run.reason") && !one.getName().equals("run.look")).toList();
            assertThat(keys).hasSize(7);
            List<Component> words = all.stream().filter(one -> List.of("run.head", "run.clock").contains(String.valueOf(one.getName())))
                    .toList();
            assertThat(words).hasSize(2);
            Stream.concat(keys.stream(), words.stream()).forEach(RunInLargeTypeTest::assertInView);
        });
    }

    private static void assertInView(Component component) {
        JViewport view = (JViewport) SwingUtilities.getAncestorOfClass(JViewport.class, component);
        Rectangle at = SwingUtilities.convertRectangle(component.getParent(), component.getBounds(), view);
        assertThat(at).as(component.getName()).matches(place -> new Rectangle(view.getSize()).contains(place), "within " + view.getSize());
        if (component instanceof JLabel label) {
            assertThat(label.getFontMetrics(label.getFont()).stringWidth(label.getText())).as("%s is not cut", label.getText())
                    .isLessThanOrEqualTo(label.getWidth());
        }
        for (Component around = component; around instanceof JComponent && around != view; around = around.getParent()) {
            assertThat(around.getX() + around.getWidth()).as("%s within what is around it", around.getName())
                    .isLessThanOrEqualTo(around.getParent().getWidth() + 2);
        }
    }
}
