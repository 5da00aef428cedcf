package fairpull.ui.page.sequence;

import fairpull.app.usecase.planning.StillToSay;
import fairpull.ui.form.Buttons;
import fairpull.ui.form.Prose;
import fairpull.ui.page.Desk;
import javax.swing.JButton;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** Stands in place of a chart that cannot be drawn yet: what is missing in a sentence, and the way to the pages where it is said. */
final class MissingFacts extends JPanel {
    private final Desk desk;
    private final Prose words = Prose.body("");
    private final JButton question;
    private final JButton rig;

    /** What is missing for the chart of that name. */
    MissingFacts(String chart, Desk desk) {
        super(new MigLayout("insets 0, gap 8 8, fillx, wrap 1, hidemode 3"));
        this.desk = desk;
        setName(chart + ".missing");
        setOpaque(false);
        question = Buttons.of("missing.question", () -> desk.pages().accept("page.question"));
        rig = Buttons.of("missing.rig", () -> desk.pages().accept("page.rig"));
        add(words, "growx, wmin 0");
        add(question);
        add(rig);
    }

    /** Shows itself where something is missing; {@return whether it does}. */
    boolean refresh() {
        StillToSay missing = StillToSay.of(desk.document().plan());
        words.setText(missing.words());
        question.setVisible(missing.gain());
        rig.setVisible(missing.scatter());
        setVisible(!missing.isNothing());
        return isVisible();
    }
}
