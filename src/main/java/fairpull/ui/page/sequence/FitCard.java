package fairpull.ui.page.sequence;

import fairpull.app.document.SequenceEdits;
import fairpull.app.task.Latest;
import fairpull.app.usecase.planning.DayRemedies;
import fairpull.domain.plan.Plan;
import fairpull.ui.form.Card;
import fairpull.ui.form.FaultWords;
import fairpull.ui.form.Prose;
import fairpull.ui.page.Desk;
import fairpull.ui.theme.LocalNumbers;
import fairpull.ui.theme.Words;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.SwingConstants;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** A plan that does not fit its day: what is late, and every change that would make it fit as a button that takes it. */
final class FitCard extends Card {
    private final Desk desk;
    private final Latest<DayRemedies> reckoning = new Latest<>(SwingUtilities::invokeLater);
    private final JPanel content = new JPanel(new MigLayout("insets 0, gap 4 6, fillx, wrap 1", "[grow, fill]"));
    private Plan shown;

    FitCard(Desk desk) {
        super(Words.of("fit.head"), new MigLayout("insets 16 20 16 20, gap 8 8, fillx, wrap 1", "[grow, fill]"));
        this.desk = desk;
        content.setOpaque(false);
        add(content, "growx, wmin 0");
        setName("fit");
        setVisible(false);
    }

    void refresh() {
        Plan plan = desk.document().plan();
        for (var act : content.getComponents()) {
            act.setEnabled(!desk.document().isFixed());
        }
        if (!plan.equals(shown)) {
            shown = plan;
            reckoning.ask(progress -> DayRemedies.of(plan), ended -> ended.tell(this::show, fault -> {
                content.removeAll();
                content.add(Prose.body(FaultWords.of(fault)), "growx, wmin 0");
                appear(true);
            }));
        }
    }

    private void show(DayRemedies remedies) {
        content.removeAll();
        remedies.said().forEach(sentence -> content.add(Prose.body(sentence), "growx, wmin 0"));
        int number = 0;
        for (DayRemedies.Change change : remedies.changes()) {
            JButton button = new JButton(LocalNumbers.shown(change.words()));
            button.setName("fit." + number++);
            button.setHorizontalAlignment(SwingConstants.LEADING);
            button.setToolTipText(Words.tip(change.words()));
            button.setEnabled(!desk.document().isFixed());
            button.addActionListener(event -> desk.edit(SequenceEdits.take(Words.of("fit.edit"), change.sequence())));
            content.add(button, "wmin 0");
        }
        appear(!remedies.said().isEmpty());
    }

    private void appear(boolean hasSomethingToSay) {
        setVisible(hasSomethingToSay);
        revalidate();
        repaint();
    }
}
