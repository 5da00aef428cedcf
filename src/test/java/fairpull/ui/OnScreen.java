package fairpull.ui;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.ui.form.ChartView;
import fairpull.ui.frame.TestPane;
import fairpull.ui.frame.TestWindow;
import fairpull.ui.strip.DayStripView;
import java.awt.AWTException;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.Robot;
import java.awt.Toolkit;
import java.awt.Window;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.geom.Point2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JFileChooser;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JTextField;
import javax.swing.plaf.basic.ComboPopup;
import javax.swing.text.JTextComponent;

/** Mouse and keyboard on the windows of the program, on a real display. Counts what a user would call an action. */
final class OnScreen implements AutoCloseable {
    private static final int DELAY_MS = 8;
    private static final int SHOWN_MS = 500;
    private static final int CORNER = 60;
    private static final int STILL = 4;
    private static final int STILL_MS = 150;
    private static final int MOST_TRIES = 3;

    private final Robot robot;
    private int actions;

    private OnScreen() {
        try {
            robot = new Robot();
        } catch (AWTException noRobot) {
            throw new AssertionError(noRobot);
        }
        robot.setAutoDelay(DELAY_MS);
    }

    /** Starts the program as its main does, with the settings of a folder, and waits for its window. */
    static OnScreen started(Path home) throws IOException {
        return started(home, Optional.empty());
    }

    /** The same with a test that is opened at once. */
    static OnScreen started(Path home, Optional<Path> test) throws IOException {
        // not the first start: that one shows the invented example
        Files.createDirectories(home);
        Files.writeString(home.resolve("settings.properties"), "started=yes\n");
        return resumed(home, test);
    }

    /** Starts it as it was left. */
    static OnScreen resumed(Path home, Optional<Path> test) throws IOException {
        System.setProperty("fairpull.home", home.toString());
        Desktop.open(test);
        OnScreen screen = new OnScreen();
        screen.until(() -> frames().anyMatch(Window::isFocused));
        screen.untilPlaced(got(() -> frames().findFirst().orElseThrow()));
        return screen;
    }

    /** A window manager moves a new window before it stays, and may do so unheard: moved once more, both agree on where it is. */
    void untilPlaced(Window window) {
        robot.delay(SHOWN_MS);
        Waiting.onWindowThread(() -> window.setLocation(CORNER, CORNER));
        Rectangle before = new Rectangle();
        for (int calm = 0; calm < STILL; calm++) {
            settle();
            robot.delay(STILL_MS);
            Rectangle now = got(() -> new Rectangle(window.getLocationOnScreen(), window.getSize()));
            calm = now.equals(before) ? calm : 0;
            before = now;
        }
    }

    /** {@return hands on windows that are there already} */
    static OnScreen there() {
        return new OnScreen();
    }

    /** The windows of whatever is open: tests, audits, lists. */
    private static Stream<Window> frames() {
        return Arrays.stream(Window.getWindows()).filter(Window::isShowing).filter(JFrame.class::isInstance);
    }

    private Stream<TestWindow> windows() {
        return Arrays.stream(Window.getWindows()).filter(Window::isShowing).filter(TestWindow.class::isInstance)
                .map(TestWindow.class::cast);
    }

    /** {@return the window whose title contains some words} */
    TestWindow window(String words) {
        return got(() -> windows().filter(window -> window.getTitle().contains(words)).findFirst()
                .orElseThrow(() -> new AssertionError("no window is called " + words)));
    }

    /** {@return the only window} */
    TestWindow window() {
        return window("");
    }

    TestPane pane() {
        return window().pane();
    }

    int actions() {
        return actions;
    }

    static <R> R got(Supplier<R> work) {
        List<R> result = new ArrayList<>();
        Waiting.onWindowThread(() -> result.add(work.get()));
        return result.get(0);
    }

    /** Waits until what was done has been heard and answered. */
    void settle() {
        robot.waitForIdle();
        Waiting.forQuiet();
    }

    private <C extends Component> Optional<C> look(String name, Class<C> type) {
        return Arrays.stream(Window.getWindows()).filter(Window::isShowing).flatMap(Hand::within)
                .filter(component -> component.isShowing() && type.isInstance(component))
                .filter(component -> name.isEmpty() || name.equals(component.getName())).map(type::cast).findFirst();
    }

    /** {@return the component of a name, waited for, brought into view} */
    <C extends Component> C find(String name, Class<C> type) {
        until(() -> look(name, type).filter(Component::isEnabled).isPresent());
        return got(() -> {
            C found = look(name, type).orElseThrow();
            if (found.getParent() instanceof JComponent around) {
                around.scrollRectToVisible(found.getBounds());
            }
            return found;
        });
    }

    /** {@return what stands in a label, a field or an area; empty where it is not in view} */
    String text(String name) {
        return got(() -> look(name, JComponent.class).map(OnScreen::words).orElse(""));
    }

    /** {@return all text within a component} */
    String textWithin(String name) {
        return got(() -> look(name, JComponent.class).stream().flatMap(Hand::within).filter(JComponent.class::isInstance)
                .map(component -> words((JComponent) component)).filter(words -> !words.isBlank()).collect(Collectors.joining("\n")));
    }

    private static String words(JComponent component) {
        return component instanceof JLabel label ? String.valueOf(label.getText())
                : component instanceof JTextComponent text ? text.getText() : "";
    }

    /** Waits until a text holds some words. */
    void untilSays(String name, String words) {
        until(() -> look(name, JComponent.class).filter(component -> words(component).contains(words)).isPresent());
    }

    /** Waits until a text that is in view does not hold some words. */
    void untilNoLongerSays(String name, String words) {
        until(() -> look(name, JComponent.class).filter(component -> !words(component).contains(words)).isPresent());
    }

    /** Waits until something holds; where it does not, what is to be seen is kept as a picture beside the test's report. */
    private void until(BooleanSupplier holds) {
        try {
            Waiting.until(holds);
        } catch (AssertionError never) {
            picture(Path.of("target", "window-failed.png"));
            throw never;
        }
    }

    private void picture(Path file) {
        try {
            ImageIO.write(robot.createScreenCapture(new Rectangle(Toolkit.getDefaultToolkit().getScreenSize())), "png", file.toFile());
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
    }

    private Point onScreen(Component component, double x, double y) {
        settle();
        return got(() -> {
            Point corner = component.getLocationOnScreen();
            return new Point(corner.x + (int) Math.round(x), corner.y + (int) Math.round(y));
        });
    }

    private void clickAt(Component component, double x, double y) {
        Point at = onScreen(component, x, y);
        robot.mouseMove(at.x, at.y);
        robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
        robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
        settle();
    }

    private void clickMiddle(Component component) {
        clickAt(component, component.getWidth() / 2.0, component.getHeight() / 2.0);
    }

    /** Clicks a control. */
    void click(String name) {
        actions++;
        clickMiddle(find(name, JComponent.class));
    }

    /** Types into an entry in place of what stands there, and ends with Enter. */
    void type(String name, String text) {
        actions++;
        JTextField field = find(name, JTextField.class);
        clickMiddle(field);
        replace(field, text);
        stroke(KeyEvent.VK_ENTER);
        settle();
    }

    /** A display that is kept busy takes a key for held and repeats its letter: then the text is typed once more. */
    private void replace(JTextComponent field, String text) {
        until(field::isFocusOwner);
        String typed = "";
        for (int tries = 0; tries < MOST_TRIES && !typed.equals(text); tries++) {
            chord(InputEvent.CTRL_DOWN_MASK, KeyEvent.VK_A);
            keys(text);
            settle();
            typed = got(field::getText);
        }
        assertThat(typed).isEqualTo(text);
    }

    /** Types into an entry that has the focus without being clicked, and ends with Enter. */
    void typeOn(String name, String text) {
        replace(find(name, JTextField.class), text);
        stroke(KeyEvent.VK_ENTER);
        settle();
    }

    /** Types to whatever has the focus, and ends with Enter. */
    void typeAhead(String text) {
        keys(text);
        stroke(KeyEvent.VK_ENTER);
        settle();
    }

    /** Clicks a place within a component. */
    void clickIn(String name, Point2D place) {
        actions++;
        clickAt(find(name, JComponent.class), place.getX(), place.getY());
    }

    /** Chooses in a box, by its place. */
    void choosePlace(String name, int place) {
        JComboBox<?> box = find(name, JComboBox.class);
        choose(name, got(() -> box.getItemAt(place)));
    }

    /** Chooses in a box, by what it shows. */
    void choose(String name, Object value) {
        actions++;
        JComboBox<?> box = find(name, JComboBox.class);
        clickMiddle(box);
        until(box::isPopupVisible);
        JList<?> list = ((ComboPopup) box.getUI().getAccessibleChild(box, 0)).getList();
        Rectangle cell = got(() -> {
            int place = 0;
            while (!list.getModel().getElementAt(place).equals(value)) {
                place++;
            }
            list.ensureIndexIsVisible(place);
            return list.getCellBounds(place, place);
        });
        clickAt(list, cell.getCenterX(), cell.getCenterY());
        until(() -> !box.isPopupVisible());
    }

    /** {@return the component with the focus and whether all of it can be seen} */
    Focus focus() {
        settle();
        return got(() -> {
            Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
            Rectangle seen = owner instanceof JComponent component ? component.getVisibleRect() : new Rectangle();
            return new Focus(String.valueOf(owner == null ? null : owner.getName()), owner == null ? new Rectangle() : owner.getBounds(),
                    seen);
        });
    }

    /** Where the focus is. */
    record Focus(String name, Rectangle bounds, Rectangle seen) {
        boolean wholeInView() {
            return seen.getSize().equals(bounds.getSize()) && !seen.isEmpty();
        }
    }

    /** Clicks a spot of a chart. */
    void clickSpot(String chart, int spot) {
        actions++;
        ChartView view = find(chart, ChartView.class);
        until(() -> view.spots().size() > spot);
        var at = got(() -> view.spots().get(spot));
        clickAt(view, at.x(), at.y());
    }

    /** Clicks an install of the day strip. */
    void clickInstall(String install) {
        actions++;
        DayStripView strip = pane().strip();
        var block = got(() -> strip.boundsOf(install).orElseThrow());
        clickAt(strip, block.middle() + 6, (block.y() + block.bottom()) / 2 + 6);
    }

    /** Drags an install of the day strip beyond the middle of another. */
    void drag(String install, String beyond) {
        actions++;
        DayStripView strip = pane().strip();
        var from = got(() -> strip.boundsOf(install).orElseThrow());
        var to = got(() -> strip.boundsOf(beyond).orElseThrow());
        int side = to.middle() > from.middle() ? 5 : -5;
        double y = (from.y() + from.bottom()) / 2 + 6;
        Point start = onScreen(strip, from.middle() + 6, y);
        Point end = onScreen(strip, to.middle() + 6 + side, y);
        robot.mouseMove(start.x, start.y);
        robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
        for (int step = 1; step <= 5; step++) {
            robot.mouseMove(start.x + (end.x - start.x) * step / 5, start.y);
        }
        robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
        settle();
    }

    /** Presses a key with its modifiers, such as Ctrl and Z. */
    void press(int modifiers, int key) {
        actions++;
        chord(modifiers, key);
        settle();
    }

    /** A key that is pressed twice in less than this counts once. */
    void waitOutRepeats() {
        robot.delay(800);
    }

    /** Names a folder in the dialogue that asks for one. */
    void nameFolder(Path folder) {
        actions++;
        JFileChooser chooser = find("", JFileChooser.class);
        until(() -> fileName(chooser).isPresent());
        JTextField field = got(() -> fileName(chooser).orElseThrow());
        clickMiddle(field);
        replace(field, folder.toString());
        stroke(KeyEvent.VK_ENTER);
        until(() -> !chooser.isShowing());
        settle();
    }

    private static Optional<JTextField> fileName(JFileChooser chooser) {
        return Hand.within(chooser).filter(component -> component instanceof JTextField && component.isShowing())
                .map(JTextField.class::cast).findFirst();
    }

    private void chord(int modifiers, int key) {
        List<Integer> held = new ArrayList<>();
        if ((modifiers & InputEvent.CTRL_DOWN_MASK) != 0) {
            held.add(KeyEvent.VK_CONTROL);
        }
        if ((modifiers & InputEvent.ALT_DOWN_MASK) != 0) {
            held.add(KeyEvent.VK_ALT);
        }
        if ((modifiers & InputEvent.SHIFT_DOWN_MASK) != 0) {
            held.add(KeyEvent.VK_SHIFT);
        }
        held.forEach(robot::keyPress);
        stroke(key);
        held.forEach(robot::keyRelease);
    }

    private void stroke(int key) {
        robot.keyPress(key);
        robot.keyRelease(key);
    }

    /** Letters, digits and a few signs, as they lie on a US keyboard. */
    private void keys(String text) {
        for (char letter : text.toCharArray()) {
            int shifted = "%:_<>?".indexOf(letter);
            if (shifted >= 0) {
                chord(InputEvent.SHIFT_DOWN_MASK, "5;-,./".charAt(shifted) == ';' ? KeyEvent.VK_SEMICOLON
                        : KeyEvent.getExtendedKeyCodeForChar("5;-,./".charAt(shifted)));
            } else if (Character.isUpperCase(letter)) {
                chord(InputEvent.SHIFT_DOWN_MASK, KeyEvent.getExtendedKeyCodeForChar(letter));
            } else {
                stroke(KeyEvent.getExtendedKeyCodeForChar(letter));
            }
        }
    }

    @Override
    public void close() {
        Waiting.forQuiet();
        Waiting.onWindowThread(() -> Arrays.stream(Window.getWindows()).forEach(Window::dispose));
    }
}
