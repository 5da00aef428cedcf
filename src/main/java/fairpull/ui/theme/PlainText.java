package fairpull.ui.theme;

import java.awt.AWTEvent;
import java.awt.Component;
import java.awt.Toolkit;
import java.awt.event.AWTEventListener;
import java.awt.event.ContainerEvent;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JToolTip;
import javax.swing.plaf.basic.BasicHTML;

/**
 * Titles and names come from files of strangers. Swing takes a text that begins like a page of the web for one, and loads its pictures;
 * here every component shows its text as it is, from the moment that it is put somewhere. Tips alone are laid out, by {@link Words#tip}.
 */
final class PlainText implements AWTEventListener {
    private static final String DISABLED = "html.disable";
    private static final PlainText EVERYWHERE = new PlainText();

    private PlainText() {
    }

    /** Has it hold for all components that are put somewhere from now on. */
    static void install() {
        Toolkit.getDefaultToolkit().removeAWTEventListener(EVERYWHERE);
        Toolkit.getDefaultToolkit().addAWTEventListener(EVERYWHERE, AWTEvent.CONTAINER_EVENT_MASK);
    }

    @Override
    public void eventDispatched(AWTEvent event) {
        if (event.getID() == ContainerEvent.COMPONENT_ADDED) {
            plain(((ContainerEvent) event).getChild());
        }
    }

    private static void plain(Component added) {
        if (added instanceof JComponent component && !(added instanceof JToolTip)) {
            component.putClientProperty(DISABLED, Boolean.TRUE);
            if (component instanceof JLabel label) {
                BasicHTML.updateRenderer(label, label.getText());
            } else if (component instanceof AbstractButton button) {
                BasicHTML.updateRenderer(button, button.getText());
            }
        }
    }
}
