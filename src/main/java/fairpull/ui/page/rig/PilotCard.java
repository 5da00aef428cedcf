package fairpull.ui.page.rig;

import fairpull.app.document.RigEdits;
import fairpull.app.usecase.UsageException;
import fairpull.app.usecase.planning.ScatterSource;
import fairpull.report.chart.Role;
import fairpull.ui.form.Card;
import fairpull.ui.form.Prose;
import fairpull.ui.page.Desk;
import fairpull.ui.theme.LocalNumbers;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import javax.swing.JButton;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** Pilot pulls pasted in: the scatter of the rig from a few repeats of an unchanged car. */
final class PilotCard extends Card {
    private final Desk desk;
    private final JTextArea pulls = new JTextArea(4, 40);
    private final JButton take = new JButton(Words.of("pilot.take"));
    private final Prose answer = new Prose("", Role.B, Look.Type.SMALL);

    PilotCard(Desk desk) {
        super(Words.of("pilot.head"), new MigLayout("insets 20, gap 8 8, fillx, wrap 1", "[grow, fill]"));
        this.desk = desk;
        add(Prose.small(Words.of("pilot.sub")), "growx, wmin 0");
        pulls.setName("pilot.pulls");
        pulls.getAccessibleContext().setAccessibleName(Words.of("pilot.head"));
        pulls.setToolTipText(Words.tip(Words.of("pilot.tip")));
        add(new JScrollPane(pulls), "growx, wmin 0");
        take.setName("pilot.take");
        take.setMnemonic(Words.mnemonic("pilot.take"));
        take.addActionListener(event -> take());
        add(take, "split 2, growx 0");
        add(answer, "growx, wmin 0, aligny center");
    }

    private void take() {
        try {
            ScatterSource source = ScatterSource.pilot(LocalNumbers.typed(pulls.getText()), desk.document().plan());
            desk.edit(RigEdits.scatter(Words.of("pilot.edit"), source.pull(), source.refit()));
            answer.setText(source.said());
        } catch (UsageException misunderstood) {
            answer.setText(misunderstood.problem());
        } catch (IllegalArgumentException impossible) {
            answer.setText(impossible.getMessage());
        }
    }

    void refresh() {
        take.setEnabled(!desk.document().isFixed());
    }
}
