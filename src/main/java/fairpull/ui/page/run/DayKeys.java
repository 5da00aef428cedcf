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
    private DayKeys() {
    }

    /** Has a key do something while {@code page} is in view. */
    static void bind(JComponent page, String stroke, Runnable work) {
        page.getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW).put(KeyStroke.getKeyStroke(stroke), stroke);
        page.getActionMap().put(stroke, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                work.run();
            }

            @Override
            public boolean isEnabled() {
                Component focused = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
                boolean typing = focused instanceof JTextComponent text && text.isEditable();
                boolean pressing = stroke.equals("SPACE") && focused instanceof AbstractButton;
                return page.isShowing() && !typing && !pressing;
            }
        });
    }
}
