package fairpull.ui.page.question;

import fairpull.app.document.Document;
import fairpull.ui.page.Desk;
import fairpull.ui.page.Page;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** What is compared, by which number, and which gain would matter. */
public final class QuestionPage implements Page {
    private final JPanel view = new JPanel(new MigLayout("insets 0, gap 16 16, fillx, wrap 1", "[grow, fill]"));
    private final Desk desk;
    private final PartsCard parts;
    private final MeasureCard measure;
    private final GainCard gain;

    /** The page on a desk. */
    public QuestionPage(Desk desk) {
        this.desk = desk;
        view.setOpaque(false);
        parts = new PartsCard(desk);
        measure = new MeasureCard(desk);
        gain = new GainCard(desk);
        view.add(parts);
        view.add(measure);
        view.add(gain);
    }

    @Override
    public String key() {
        return "page.question";
    }

    @Override
    public JComponent view() {
        return view;
    }

    @Override
    public Optional<String> notYet(Document document) {
        return desk.blinded();
    }

    @Override
    public void show() {
        parts.refresh();
        measure.refresh();
        gain.refresh();
    }
}
