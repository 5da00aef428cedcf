package fairpull.ui.frame;

import java.awt.Dimension;
import java.awt.Rectangle;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ScrollPaneConstants;
import javax.swing.Scrollable;
import net.miginfocom.swing.MigLayout;

/** A page that is as wide as its view and as high as it needs. */
final class ScrolledPage extends JPanel implements Scrollable {
    private static final int SCROLL_STEP = 24;

    /** A page with so many pixels left free beside its scroll bar. */
    ScrolledPage(int free) {
        super(new MigLayout("insets 0 0 0 " + free + ", fillx, wrap 1", "[grow, fill]"));
        setOpaque(false);
    }

    /** {@return a page with one view on it} */
    static ScrolledPage of(JComponent view) {
        ScrolledPage page = new ScrolledPage(0);
        page.add(view, "growx, pushx, aligny top");
        return page;
    }

    /** {@return a page that scrolls up and down where it is higher than its place} */
    static JScrollPane scrolled(ScrolledPage page) {
        JScrollPane scroll = new JScrollPane(page, ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED,
                ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.getVerticalScrollBar().setUnitIncrement(SCROLL_STEP);
        scroll.getViewport().setOpaque(false);
        scroll.setOpaque(false);
        return scroll;
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
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return false;
    }
}
