package fairpull.ui.frame;

import fairpull.app.document.Settings;
import fairpull.ui.OffScreen;
import fairpull.ui.Waiting;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Mode;
import java.awt.Component;
import java.awt.Container;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;

/** Someone who sits before the windows of a process, without a display. Its fields are touched as a keyboard would. */
final class Seat {
    final Settings settings;
    final Windows windows;

    /** A process that starts with the settings of a folder. */
    Seat(Path home) {
        settings = Settings.in(home);
        windows = new Windows(settings, new Windows.Framing(test -> new NoFrame(), audit -> new NoFrame(), shelf -> new NoFrame()));
        Waiting.onWindowThread(() -> Look.install(Mode.LIGHT, 1));
    }

    static <R> R got(Supplier<R> work) {
        if (SwingUtilities.isEventDispatchThread()) {
            return work.get();
        }
        List<R> result = new ArrayList<>();
        Waiting.onWindowThread(() -> result.add(work.get()));
        return result.get(0);
    }

    static void done(Runnable work) {
        Waiting.onWindowThread(work);
        Waiting.forQuiet();
    }

    /** {@return the only test that is open} */
    OpenTest only() {
        List<OpenTest> open = got(windows::open);
        if (open.size() != 1) {
            throw new AssertionError(open.size() + " tests are open");
        }
        return open.get(0);
    }

    static NoFrame frame(OpenTest test) {
        return (NoFrame) test.shell();
    }

    static Stream<Component> within(Component component) {
        return Stream.concat(Stream.of(component), component instanceof Container container
                ? Stream.of(container.getComponents()).flatMap(Seat::within) : Stream.empty());
    }

    static <C extends Component> C find(OpenTest test, String name, Class<C> type) {
        return within(test.pane()).filter(component -> name.equals(component.getName())).map(type::cast).findFirst()
                .orElseThrow(() -> new AssertionError("there is no " + name));
    }

    static void go(OpenTest test, String page) {
        done(() -> {
            OffScreen.laidOut(test.pane(), 1280, 800);
            find(test, page, AbstractButton.class).doClick(0);
        });
    }

    /** Types without leaving the field and without a pause: what is typed has not been sent yet. */
    static void typing(OpenTest test, String name, String text) {
        Waiting.onWindowThread(() -> find(test, name, JTextField.class).setText(text));
    }

    /** Types and ends with Enter. */
    static void type(OpenTest test, String name, String text) {
        done(() -> {
            JTextField field = find(test, name, JTextField.class);
            field.setText(text);
            field.postActionEvent();
        });
    }

    static void click(OpenTest test, String name) {
        done(() -> find(test, name, AbstractButton.class).doClick(0));
    }

    /** {@return what the banner says; empty while it is silent} */
    static String said(OpenTest test) {
        return got(() -> find(test, "banner", Banner.class).isVisible() ? find(test, "banner.words", JTextArea.class).getText() : "");
    }
}
