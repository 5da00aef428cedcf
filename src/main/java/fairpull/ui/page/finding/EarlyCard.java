package fairpull.ui.page.finding;

import fairpull.app.usecase.judging.NotYetOver;
import fairpull.report.chart.Role;
import fairpull.ui.form.Buttons;
import fairpull.ui.form.Card;
import fairpull.ui.form.Prose;
import fairpull.ui.form.ReasonBar;
import fairpull.ui.theme.Look;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** In place of a finding while the day is under way: how far it is, and the honest ways on. */
final class EarlyCard extends Card {
    /** What can be done before the end. */
    interface Ways {
        /** Goes on with the day. */
        void run();

        /** Takes the planned look. */
        void look();

        /** Ends the day for good. */
        void end(String reason);
    }

    EarlyCard(NotYetOver early, Ways ways) {
        super("", new MigLayout("insets 20, gap 8 8, fillx, wrap 1, hidemode 3", "[grow, fill]"));
        setName("finding.early");
        add(new Prose(early.heading(), Role.INK, Look.Type.VERDICT), "growx, wmin 0");
        early.sentences().forEach(sentence -> add(Prose.body(sentence), "growx, wmin 0"));
        JPanel buttons = new JPanel(new MigLayout("insets 0, gap 8 0", ""));
        buttons.setOpaque(false);
        if (early.isLookDue()) {
            buttons.add(Buttons.primary("finding.look", ways::look));
            buttons.add(Buttons.of("finding.run", ways::run));
        } else {
            buttons.add(Buttons.primary("finding.run", ways::run));
        }
        ReasonBar reason = new ReasonBar("finding.reason", "finding.reason.end", asking -> buttons.setVisible(!asking));
        if (early.canEnd()) {
            buttons.add(Buttons.of("finding.end", () -> reason.ask("finding.reason.end", ways::end)));
        }
        add(buttons, "growx 0");
        add(reason, "growx, wmin 0, wmax 560");
    }
}
