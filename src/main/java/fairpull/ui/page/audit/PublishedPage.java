package fairpull.ui.page.audit;

import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** What was published: words, figures and claims, as they were printed. */
public final class PublishedPage implements AuditPage {
    private final JPanel view = new JPanel(new MigLayout("insets 0, gap 16 16, fillx, wrap 1, hidemode 3", "[grow, fill]"));
    private final StartCard start;
    private final WordsCard words;
    private final FiguresCard figures;
    private final ClaimsCard claims;
    private final ValuesCard values;

    /** The page on a desk. */
    public PublishedPage(AuditDesk desk) {
        view.setOpaque(false);
        start = new StartCard(desk);
        words = new WordsCard(desk);
        figures = new FiguresCard(desk);
        claims = new ClaimsCard(desk);
        values = new ValuesCard(desk);
        view.add(start, "growx, wmin 0");
        view.add(figures, "growx, wmin 0");
        view.add(claims, "growx, wmin 0");
        view.add(values, "growx, wmin 0");
        view.add(words, "growx, wmin 0");
    }

    @Override
    public String key() {
        return "page.published";
    }

    @Override
    public JComponent view() {
        return view;
    }

    @Override
    public void show() {
        start.refresh();
        words.refresh();
        figures.refresh();
        claims.refresh();
        values.refresh();
    }
}
