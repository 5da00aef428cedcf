package fairpull.ui.page.run;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import javax.swing.text.JTextComponent;

/** Keys of the day: they work wherever the focus is on the page in view, but in fields what is typed is typed. */
final class DayKeys {
    /** Keyboards repeat a held key after about half a second, then many times a second. */
    private static final long REPEATS_NS = 700_000_000;

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
                boolean typing = focused instanceof JTextComponent text && text.isEditable();
                return page.isShowing() && !typing;
            }
        });
    }
}
