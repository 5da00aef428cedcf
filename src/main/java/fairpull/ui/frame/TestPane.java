package fairpull.ui.frame;

import fairpull.app.document.Document;
import fairpull.app.document.Settings;
import fairpull.report.chart.Role;
import fairpull.ui.page.Desk;
import fairpull.ui.page.Page;
import fairpull.ui.strip.DayStripView;
import fairpull.ui.theme.Look;
import java.awt.CardLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.KeyboardFocusManager;
import java.awt.Rectangle;
import java.beans.PropertyChangeListener;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ScrollPaneConstants;
import javax.swing.Scrollable;
import net.miginfocom.swing.MigLayout;

/** All of a window but its frame: title, strip, path, pages, side panel. It can be shown and driven without a display. */
public final class TestPane extends JPanel {
    private static final int SCROLL_STEP = 24;

    private final Document document;
    private final JLabel title = new JLabel();
    private final JLabel subtitle = new JLabel();
    private final JLabel message = new JLabel(" ");
    private final Banner banner = new Banner();
    private final DayStripView strip;
    private final List<Page> pages;
    private final PagePath path;
    private final CardLayout cards = new CardLayout();
    private final JPanel stage = new JPanel(cards);
    private final Set<String> staged = new HashSet<>();
    private Page current;

    /**
     * A pane.
     *
     * @param document the test
     * @param settings what is remembered
     * @param making makes the pages, in the order of the work
     */
    public TestPane(Document document, Settings settings, Function<Desk, List<Page>> making) {
        super(new MigLayout("insets 12 24 16 24, gap 16 6, fill", "[grow, fill][340!, fill]", "[][][][][grow, fill]"));
        this.document = document;
        setName("test");
        strip = new DayStripView(document, this::complain);
        pages = making.apply(new Desk(document, settings, strip, this::complain));
        path = new PagePath(pages, this::go);
        current = pages.get(0);
        message.setName("message");
        dress();
        stage.setOpaque(false);
        bring(current);
        add(title, "spanx, wrap, wmin 0");
        add(subtitle, "spanx, wrap, wmin 0");
        add(banner, "spanx, growx, wrap, hidemode 3");
        add(strip, "spanx, growx, wrap");
        add(path, "split 2, spanx");
        add(message, "growx, wmin 0, wrap");
        add(stage, "grow, wmin 0, hmin 0");
        add(scrolled(new SidePanel(document)), "grow, hmin 0");
        document.listen(this::refresh);
        refresh();
    }

    private static JScrollPane scrolled(JComponent view) {
        JPanel holder = new ScrolledPage();
        holder.add(view, "growx, pushx, aligny top");
        JScrollPane scroll = new JScrollPane(holder, ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED,
                ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.getVerticalScrollBar().setUnitIncrement(SCROLL_STEP);
        scroll.getViewport().setOpaque(false);
        scroll.setOpaque(false);
        return scroll;
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (title != null) {
            dress();
        }
    }

    private void dress() {
        title.setFont(Look.font(Look.Type.TITLE));
        subtitle.setFont(Look.font(Look.Type.SMALL));
        subtitle.setForeground(Look.colour(Role.SOFT));
        message.setFont(Look.font(Look.Type.SMALL));
        message.setForeground(Look.colour(Role.B));
    }

    private void complain(String words) {
        message.setText(words.isEmpty() ? " " : words);
    }

    /** Says something over the strip; empty words take it away. */
    public void say(String words) {
        banner.say(words);
    }

    /** Asks something over the strip; each answer is a key of the words and what follows from it, the first one the usual one. */
    public void ask(String question, Map<String, Runnable> answers) {
        banner.ask(question, answers);
    }

    /** Brings a page into view. */
    public void go(Page page) {
        current = page;
        bring(page);
        refresh();
    }

    private void bring(Page page) {
        if (staged.add(page.key())) {
            stage.add(scrolled(page.view()), page.key());
            stage.revalidate();
        }
        cards.show(stage, page.key());
    }

    /** {@return the pages in the order of the work} */
    public List<Page> pages() {
        return pages;
    }

    /** {@return the strip} */
    public DayStripView strip() {
        return strip;
    }

    private void refresh() {
        title.setText(document.plan().title());
        subtitle.setText(Titles.subtitle(document));
        path.show(current, document);
        current.show();
    }

    /** A page that is as wide as its view and as high as it needs; what gets the focus in it comes into view. */
    private static final class ScrolledPage extends JPanel implements Scrollable {
        private static final String FOCUS = "focusOwner";
        private final transient PropertyChangeListener following = change -> follow(change.getNewValue());

        ScrolledPage() {
            super(new MigLayout("insets 0, fillx, wrap 1", "[grow, fill]"));
            setOpaque(false);
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
            return true;
        }

        @Override
        public boolean getScrollableTracksViewportHeight() {
            return false;
        }
    }
}
