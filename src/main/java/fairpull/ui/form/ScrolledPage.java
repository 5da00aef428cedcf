package fairpull.ui.form;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.KeyboardFocusManager;
import java.awt.Rectangle;
import java.beans.PropertyChangeListener;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ScrollPaneConstants;
import javax.swing.Scrollable;
import net.miginfocom.swing.MigLayout;

/** A page that is as wide as its view, or as it needs at least, and as high as it needs; what gets the focus in it comes into view. */
public final class ScrolledPage extends JPanel implements Scrollable {
    private static final int SCROLL_STEP = 24;
    private static final String FOCUS = "focusOwner";

    private final transient PropertyChangeListener following = change -> follow(change.getNewValue());

    /** A page with so many pixels left free beside its scroll bar. */
    public ScrolledPage(int free) {
        super(new MigLayout("insets 0 0 0 " + free + ", fillx, wrap 1", "[grow, fill]"));
        setOpaque(false);
    }

    /** {@return a page with one view on it} */
    public static ScrolledPage of(JComponent view) {
        ScrolledPage page = new ScrolledPage(0);
        page.add(view, "growx, pushx, aligny top");
        return page;
    }

    /** {@return a page that scrolls where it is higher than its place, or needs more width at least} */
    public static JScrollPane scrolled(ScrolledPage page) {
        JScrollPane scroll = new JScrollPane(page, ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED,
                ScrollPaneConstants.HORIZONTAL_SCROLLBAR_AS_NEEDED);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.getVerticalScrollBar().setUnitIncrement(SCROLL_STEP);
        scroll.getViewport().setOpaque(false);
        scroll.setOpaque(false);
        return scroll;
    }

    private void follow(Object focused) {
        if (focused instanceof Component component && isAncestorOf(component)
                && component.getParent() instanceof JComponent around) {
            around.scrollRectToVisible(component.getBounds());
        }
    }

    @Override
    public void addNotify() {
        super.addNotify();
        KeyboardFocusManager.getCurrentKeyboardFocusManager().addPropertyChangeListener(FOCUS, following);
    }

    @Override
    public void removeNotify() {
        KeyboardFocusManager.getCurrentKeyboardFocusManager().removePropertyChangeListener(FOCUS, following);
        super.removeNotify();
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return SCROLL_STEP;
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return visible.height - SCROLL_STEP;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return getParent() == null || getMinimumSize().width <= getParent().getWidth();
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return false;
    }
}
