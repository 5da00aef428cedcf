package fairpull.ui.page.run;

import java.awt.Component;
import java.awt.KeyEventDispatcher;
import java.awt.KeyboardFocusManager;
import java.awt.event.ActionEvent;
import java.awt.event.HierarchyEvent;
import java.awt.event.KeyEvent;
import javax.swing.AbstractAction;
import javax.swing.AbstractButton;
import javax.swing.Action;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.MenuSelectionManager;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;

/** Keys of the day: they work wherever the focus is on the page in view, but in fields what is typed is typed. */
final class DayKeys {
    /** Keyboards repeat a held key after about half a second, then many times a second. */
    private static final long REPEATS_NS = 700_000_000;

    private static final String SPACE = "SPACE";

    private DayKeys() {
    }

    /**
     * A click on a button leaves the focus where it is, and the space bar does not press it: it says that a pull is done, whatever has the
     * focus. The tabulator still reaches the button, where Enter presses it.
     */
    static void leaveFocus(AbstractButton button) {
        button.setRequestFocusEnabled(false);
        for (String key : new String[] {"", "released "}) {
            button.getInputMap().put(KeyStroke.getKeyStroke(key + "SPACE"), "none");
            button.getInputMap().put(KeyStroke.getKeyStroke(key + "ENTER"), key.isEmpty() ? "pressed" : "released");
        }
    }

    /**
     * Has the space bar do something while {@code page} is in view, whatever has the focus: the page in the path that was clicked last as
     * well, which would press itself once more. A button elsewhere that does something of its own, such as an answer, keeps it.
     */
    static void bindSpaceBar(JComponent page, Runnable work) {
        bind(page, SPACE, work);
        Action action = page.getActionMap().get(SPACE);
        KeyEventDispatcher heard = new SpaceBar(page, action);
        page.addHierarchyListener(change -> {
            if ((change.getChangeFlags() & HierarchyEvent.SHOWING_CHANGED) != 0) {
                KeyboardFocusManager keys = KeyboardFocusManager.getCurrentKeyboardFocusManager();
                keys.removeKeyEventDispatcher(heard);
                if (page.isShowing()) {
                    keys.addKeyEventDispatcher(heard);
                }
            }
        });
    }

    /** Takes a press of the space bar with all that comes of it, the blank that would be typed and the release. */
    private static final class SpaceBar implements KeyEventDispatcher {
        private final JComponent page;
        private final Action action;
        private boolean isTaken;

        SpaceBar(JComponent page, Action action) {
            this.page = page;
            this.action = action;
        }

        @Override
        public boolean dispatchKeyEvent(KeyEvent key) {
            if (key.getKeyCode() != KeyEvent.VK_SPACE && key.getKeyChar() != ' ') {
                return false;
            }
            if (key.getID() == KeyEvent.KEY_PRESSED) {
                isTaken = key.getModifiersEx() == 0 && isMeant(page) && action.isEnabled();
                if (isTaken) {
                    action.actionPerformed(new ActionEvent(page, ActionEvent.ACTION_PERFORMED, SPACE));
                }
            }
            return isTaken;
        }
    }

    /** A reading begins with no blank: in a field for one that is still empty, the space bar says that a pull is done. */
    static void readings(JTextField field) {
        field.putClientProperty(SPACE, Boolean.TRUE);
    }

    private static boolean isTyping(Component focused) {
        boolean isEmptyReading = focused instanceof JTextField field && field.getClientProperty(SPACE) != null && field.getText().isBlank();
        return focused instanceof JTextComponent text && text.isEditable() && !isEmptyReading;
    }

    private static boolean isMeant(JComponent page) {
        KeyboardFocusManager keys = KeyboardFocusManager.getCurrentKeyboardFocusManager();
        return SwingUtilities.getWindowAncestor(page) == keys.getFocusedWindow() && !(keys.getFocusOwner() instanceof JButton)
                && MenuSelectionManager.defaultManager().getSelectedPath().length == 0;
    }

    /** Has a key do something while {@code page} is in view. */
    static void bind(JComponent page, String stroke, Runnable work) {
        page.getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW).put(KeyStroke.getKeyStroke(stroke), stroke);
        page.getActionMap().put(stroke, new AbstractAction() {
            private long pressedAt = -REPEATS_NS;

            /** A key that is held, or bounces, is pressed again and again: only the first press counts. */
            @Override
            public void actionPerformed(ActionEvent event) {
                long now = System.nanoTime();
                boolean repeated = now - pressedAt < REPEATS_NS;
                pressedAt = now;
                if (!repeated) {
                    work.run();
                }
            }

            @Override
            public boolean isEnabled() {
                Component focused = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
                boolean typing = stroke.equals(SPACE) ? isTyping(focused) : focused instanceof JTextComponent text && text.isEditable();
                return page.isShowing() && !typing;
            }
        });
    }
}
