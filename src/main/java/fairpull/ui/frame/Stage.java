package fairpull.ui.frame;

import fairpull.ui.form.Input;
import fairpull.ui.form.ScrolledPage;
import fairpull.ui.page.Leaf;
import java.awt.CardLayout;
import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.Stream;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.KeyStroke;

/**
 * Where the pages of a path are seen, one at a time; a page that never came into view was never laid out.
 *
 * @param <L> the pages
 */
final class Stage<L extends Leaf> extends JPanel {
    private final CardLayout cards = new CardLayout();
    private final transient List<L> pages;
    private final transient Predicate<L> reachable;
    private final Set<String> staged = new HashSet<>();
    private transient L current;

    /**
     * A field that is not understood.
     *
     * @param <L> the pages
     * @param page on which it stands
     * @param entry the field
     */
    record Complaint<L>(L page, Input entry) {
        /** Brings the field into view. */
        void reach() {
            JComponent field = entry.field();
            field.requestFocusInWindow();
            field.scrollRectToVisible(new Rectangle(field.getSize()));
        }
    }

    /** A stage that shows the first of its pages that can be reached. */
    Stage(List<L> pages, Predicate<L> reachable) {
        this.pages = pages;
        this.reachable = reachable;
        setLayout(cards);
        setOpaque(false);
        bring(pages.stream().filter(reachable).findFirst().orElse(pages.get(0)));
    }

    List<L> pages() {
        return pages;
    }

    /** {@return the page in view} */
    L current() {
        return current;
    }

    Optional<L> page(String key) {
        return pages.stream().filter(page -> page.key().equals(key)).findFirst();
    }

    /** Brings a page into view. */
    void bring(L page) {
        current = page;
        if (staged.add(page.key())) {
            add(ScrolledPage.scrolled(ScrolledPage.of(page.view())), page.key());
            revalidate();
        }
        cards.show(this, page.key());
    }

    /** {@return the first field that shows something else than the document holds, because it is not understood} */
    Optional<Complaint<L>> complaint() {
        return pages.stream().filter(page -> staged.contains(page.key())).flatMap(this::complaint).findFirst();
    }

    private Stream<Complaint<L>> complaint(L page) {
        return Input.complaining(page.view()).map(entry -> new Complaint<L>(page, entry)).stream();
    }

    /** The first page comes with the menu key and 1, the second with 2, and so on, wherever the focus is in {@code pane}. */
    void keys(JComponent pane, Consumer<L> go) {
        int mask = GraphicsEnvironment.isHeadless() ? InputEvent.CTRL_DOWN_MASK : pane.getToolkit().getMenuShortcutKeyMaskEx();
        for (int place = 0; place < pages.size(); place++) {
            L page = pages.get(place);
            pane.getInputMap(WHEN_IN_FOCUSED_WINDOW).put(KeyStroke.getKeyStroke(KeyEvent.VK_1 + place, mask), page.key());
            pane.getActionMap().put(page.key(), new AbstractAction() {
                @Override
                public void actionPerformed(ActionEvent event) {
                    if (reachable.test(page)) {
                        go.accept(page);
                    }
                }
            });
        }
    }
}
