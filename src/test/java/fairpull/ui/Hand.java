package fairpull.ui;

import fairpull.app.document.Document;
import fairpull.app.document.Settings;
import fairpull.domain.pull.PullId;
import fairpull.ui.form.ChartView;
import fairpull.ui.frame.Pages;
import fairpull.ui.frame.TestPane;
import fairpull.ui.page.Page;
import fairpull.ui.strip.DayStripView;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Mode;
import java.awt.Component;
import java.awt.Container;
import java.awt.event.ActionEvent;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.event.MouseEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.Action;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.plaf.basic.BasicHTML;

/** A hand on the real components of a window without a display: it types, chooses, presses, clicks and drags as a user does. */
final class Hand {
    private static final int WIDTH = 1280;
    private static final int HEIGHT = 800;

    private final Document document;
    private final TestPane pane;
    private Page page;

    private Hand(Document document, TestPane pane) {
        this.document = document;
        this.pane = pane;
        page = pane.pages().get(0);
    }

    /** {@return a hand on a document in a window whose settings lie in a folder} */
    static Hand on(Document document, Path home) {
        Settings settings = Settings.in(home);
        return got(() -> {
            Look.install(Mode.LIGHT, 1);
            TestPane pane = new TestPane(document, settings, Pages::of);
            OffScreen.laidOut(pane, WIDTH, HEIGHT);
            return new Hand(document, pane);
        });
    }

    private static <R> R got(Supplier<R> work) {
        List<R> result = new ArrayList<>();
        Waiting.onWindowThread(() -> result.add(work.get()));
        return result.get(0);
    }

    private void done(Runnable work) {
        Waiting.onWindowThread(work);
        Waiting.forQuiet();
    }

    TestPane pane() {
        return pane;
    }

    Document document() {
        return document;
    }

    /** {@return the page in view} */
    Page page() {
        return page;
    }

    /** Goes to a page by its button on the path. */
    void go(String key) {
        page = pane.pages().stream().filter(one -> one.key().equals(key)).findFirst().orElseThrow();
        AbstractButton step = find(key, AbstractButton.class);
        done(() -> {
            require(step.isEnabled(), key);
            OffScreen.silence(page.view());
            step.doClick(0);
            OffScreen.laidOut(pane, WIDTH, HEIGHT);
        });
        done(() -> OffScreen.laidOut(pane, WIDTH, HEIGHT));
    }

    /** {@return all components within one, itself first} */
    static Stream<Component> within(Component component) {
        return Stream.concat(Stream.of(component), component instanceof Container container
                ? Stream.of(container.getComponents()).flatMap(Hand::within) : Stream.empty());
    }

    /** {@return the component of a name; only pages that are in view are looked at} */
    <C extends Component> C find(String name, Class<C> type) {
        return within(pane).filter(component -> name.equals(component.getName()) && type.isInstance(component)).map(type::cast)
                .findFirst().orElseThrow(() -> new AssertionError("there is no " + type.getSimpleName() + " named " + name));
    }

    /** Types into an entry in place of what stands there, and ends with Enter. */
    void type(String name, String text) {
        JTextField field = find(name, JTextField.class);
        done(() -> {
            require(field.isEnabled() && field.isEditable(), name);
            field.setText(text);
            field.postActionEvent();
        });
    }

    /** Writes into an area of several lines and leaves it. */
    void write(String name, String text) {
        JTextArea area = find(name, JTextArea.class);
        done(() -> {
            require(area.isEnabled() && area.isEditable(), name);
            area.setText(text);
            for (FocusListener listener : area.getFocusListeners()) {
                listener.focusLost(new FocusEvent(area, FocusEvent.FOCUS_LOST));
            }
        });
    }

    /** Chooses in a box by place. */
    void choose(String name, int place) {
        JComboBox<?> box = find(name, JComboBox.class);
        done(() -> {
            require(box.isEnabled(), name);
            box.setSelectedIndex(place);
        });
    }

    /** Chooses a value in a box. */
    void choose(String name, Object value) {
        JComboBox<?> box = find(name, JComboBox.class);
        done(() -> {
            require(box.isEnabled(), name);
            box.setSelectedItem(value);
        });
    }

    /** Presses a button. */
    void press(String name) {
        AbstractButton button = find(name, AbstractButton.class);
        done(() -> {
            require(button.isEnabled(), name);
            button.doClick(0);
        });
    }

    /** Presses a key while the strip has the focus. */
    void strip(String key) {
        DayStripView strip = pane.strip();
        done(() -> {
            Object name = strip.getInputMap().get(KeyStroke.getKeyStroke(key));
            require(name != null, "the key " + key + " of the strip");
            Action action = strip.getActionMap().get(name);
            action.actionPerformed(new ActionEvent(strip, ActionEvent.ACTION_PERFORMED, key));
        });
    }

    /** Drags an install of the strip onto the place of another one, or clicks it where both are one. */
    void drag(String install, String onto) {
        DayStripView strip = pane.strip();
        done(() -> {
            var from = strip.boundsOf(install).orElseThrow();
            var to = strip.boundsOf(onto).orElseThrow();
            int y = (int) (from.y() + from.bottom()) / 2 + 6;
            int start = (int) from.middle() + 6;
            int beyond = (int) to.middle() + 6 + (onto.equals(install) ? 0 : to.middle() > from.middle() ? 4 : -4);
            send(strip, MouseEvent.MOUSE_PRESSED, start, y);
            send(strip, MouseEvent.MOUSE_DRAGGED, beyond, y);
            send(strip, MouseEvent.MOUSE_RELEASED, beyond, y);
        });
    }

    /** Clicks a pull of the strip. */
    void click(PullId pull) {
        DayStripView strip = pane.strip();
        done(() -> {
            var at = strip.boundsOf(pull).orElseThrow();
            send(strip, MouseEvent.MOUSE_PRESSED, (int) Math.round(at.middle()), (int) Math.round((at.y() + at.bottom()) / 2));
            send(strip, MouseEvent.MOUSE_RELEASED, (int) Math.round(at.middle()), (int) Math.round((at.y() + at.bottom()) / 2));
        });
    }

    /** Clicks a spot of a chart, counted from 0. */
    void click(String chart, int spot) {
        ChartView view = find(chart, ChartView.class);
        done(() -> {
            var at = view.spots().get(spot);
            send(view, MouseEvent.MOUSE_CLICKED, (int) Math.round(at.x()), (int) Math.round(at.y()));
        });
    }

    /** The form with absolute coordinates does not ask a component that is nowhere on a screen where it is. */
    private static void send(JComponent component, int id, int x, int y) {
        component.dispatchEvent(new MouseEvent(component, id, System.currentTimeMillis(), MouseEvent.BUTTON1_DOWN_MASK, x, y, x, y, 1,
                false, MouseEvent.BUTTON1));
    }

    /** Chooses rows of a table, counted from 0 as they are shown. */
    void select(String table, int first, int last) {
        JTable rows = find(table, JTable.class);
        done(() -> rows.setRowSelectionInterval(first, last));
    }

    /** {@return what stands in a cell of a table, as it is shown} */
    String cell(String table, int row, int column) {
        JTable rows = find(table, JTable.class);
        return got(() -> ((JLabel) rows.prepareRenderer(rows.getCellRenderer(row, column), row, column)).getText());
    }

    /** Drops files on the window. */
    void drop(Path... files) {
        done(() -> {
            for (Path file : files) {
                pane.take(file, folder -> {
                    throw new AssertionError("opened as a test: " + folder);
                });
            }
        });
        settle();
    }

    /** Moves the pointer over a component. */
    void point(String name, int x, int y) {
        JComponent component = find(name, JComponent.class);
        done(() -> send(component, MouseEvent.MOUSE_MOVED, x, y));
    }

    /** Drags over a component from one place to another. */
    void drag(String name, int fromX, int toX, int y) {
        JComponent component = find(name, JComponent.class);
        done(() -> {
            send(component, MouseEvent.MOUSE_PRESSED, fromX, y);
            send(component, MouseEvent.MOUSE_DRAGGED, toX, y);
            send(component, MouseEvent.MOUSE_RELEASED, toX, y);
        });
    }

    /** Presses a key while a component has the focus. */
    void key(String name, String key) {
        JComponent component = find(name, JComponent.class);
        done(() -> {
            Object action = component.getInputMap().get(KeyStroke.getKeyStroke(key));
            require(action != null, "the key " + key + " of " + name);
            component.getActionMap().get(action).actionPerformed(new ActionEvent(component, ActionEvent.ACTION_PERFORMED, key));
        });
    }

    /** {@return what is told of a component to who cannot see it} */
    String described(String name) {
        return got(() -> String.valueOf(find(name, JComponent.class).getAccessibleContext().getAccessibleDescription()));
    }

    /** Work of the window that begins other work: waits for all of it, and lays out what came of it. */
    void settle() {
        for (int round = 0; round < 3; round++) {
            done(() -> OffScreen.laidOut(pane, WIDTH, HEIGHT));
        }
    }

    /** {@return what stands in an entry} */
    String text(String name) {
        return got(() -> find(name, JTextField.class).getText());
    }

    /** {@return what is said beneath an entry; empty where nothing is wrong} */
    String complaint(String name) {
        JLabel label = find(name + ".complaint", JLabel.class);
        return got(() -> label.isVisible() ? label.getText() : "");
    }

    /** {@return whether what is said beneath an entry was taken for a page of HTML} */
    boolean isPage(String name) {
        return got(() -> find(name + ".complaint", JLabel.class).getClientProperty(BasicHTML.propertyKey) != null);
    }

    /** Takes everything back. */
    void undoAll() {
        while (document.undoLabel().isPresent()) {
            done(document::undo);
        }
    }

    /** Does everything again that was taken back. */
    void redoAll() {
        while (document.redoLabel().isPresent()) {
            done(document::redo);
        }
    }

    private static void require(boolean holds, String name) {
        if (!holds) {
            throw new AssertionError("cannot be used now: " + name);
        }
    }
}
