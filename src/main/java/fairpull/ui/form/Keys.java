package fairpull.ui.form;

import java.awt.event.ActionEvent;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.util.function.BooleanSupplier;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;

/** Keys for components that are painted by hand: strokes while they have the focus, and a repaint when it comes or goes. */
public final class Keys {
    private Keys() {
    }

    /** Lets a component take the focus and show whether it has it. */
    public static void focusable(JComponent component) {
        component.setFocusable(true);
        component.addFocusListener(new FocusListener() {
            @Override
            public void focusGained(FocusEvent event) {
                component.repaint();
            }

            @Override
            public void focusLost(FocusEvent event) {
                component.repaint();
            }
        });
    }

    /** Does some work at a stroke while the component has the focus. */
    public static void bind(JComponent component, String stroke, Runnable work) {
        bind(component, stroke, work, () -> true);
    }

    /** The same as long as the key is wanted; while it is not, whoever else binds it hears it. */
    public static void bind(JComponent component, String stroke, Runnable work, BooleanSupplier wanted) {
        bind(component, JComponent.WHEN_FOCUSED, stroke, work, wanted);
    }

    /** Does some work at a stroke wherever in the window the focus is. */
    public static void bindInWindow(JComponent component, String stroke, Runnable work) {
        bind(component, JComponent.WHEN_IN_FOCUSED_WINDOW, stroke, work, () -> true);
    }

    private static void bind(JComponent component, int when, String stroke, Runnable work, BooleanSupplier wanted) {
        component.getInputMap(when).put(KeyStroke.getKeyStroke(stroke), stroke);
        component.getActionMap().put(stroke, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                work.run();
            }

            @Override
            public boolean isEnabled() {
                return wanted.getAsBoolean();
            }
        });
    }
}
