package fairpull.ui.theme;

import java.util.List;
import javax.swing.JComponent;
import javax.swing.UIManager;
import javax.swing.plaf.ComponentUI;

/**
 * Has every component show its text as it is. Swing takes a text that begins with {@code <html>} as a page, with pictures from anywhere;
 * names of parts, titles and files come from strangers. It stands before the delegates of the look, so that a component is told before it
 * has its text; renderers of tables and lists are labels, and told likewise. Tips alone are laid out,
 * by {@link Words#tip}.
 */
public final class PlainText extends ComponentUI {
    private static final List<String> WITH_TEXT = List.of("LabelUI", "ButtonUI", "ToggleButtonUI", "CheckBoxUI", "RadioButtonUI", "MenuUI",
            "MenuItemUI", "CheckBoxMenuItemUI", "RadioButtonMenuItemUI");

    private PlainText() {
    }

    static void install() {
        WITH_TEXT.forEach(kind -> UIManager.put(kind, PlainText.class.getName()));
    }

    /** {@return the delegate of the look for a component that from now on shows its text as it is; Swing calls this by its name} */
    public static ComponentUI createUI(JComponent component) {
        component.putClientProperty("html.disable", Boolean.TRUE);
        return UIManager.getLookAndFeelDefaults().getUI(component);
    }
}
