package fairpull.ui.frame;

import fairpull.app.usecase.auditing.AuditView;
import fairpull.report.chart.Role;
import fairpull.ui.form.Buttons;
import fairpull.ui.form.Card;
import fairpull.ui.form.Columns;
import fairpull.ui.form.Figures;
import fairpull.ui.form.Prose;
import fairpull.ui.form.ScrolledPage;
import fairpull.ui.form.Sentences;
import fairpull.ui.page.audit.Auditing;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.awt.Insets;
import java.util.List;
import javax.swing.JButton;
import net.miginfocom.swing.MigLayout;

/** How the claims stand, always in view: audited beside the window's thread after every change. What can be done with it stands below. */
final class AuditPanel extends Card {
    private final Auditing auditing;
    private final ScrolledPage content = new ScrolledPage(10);
    private final JButton repeat;
    private final JButton report;

    AuditPanel(Auditing auditing, Runnable repeating, Runnable reporting) {
        super(Words.of("audit.panel"), new MigLayout("insets 20 20 16 12, gap 8 8, fill, wrap 1", "[grow, fill]", "[][grow, fill][]"));
        this.auditing = auditing;
        setName("audit.panel");
        add(ScrolledPage.scrolled(content), "grow, hmin 0, wmin 0");
        Columns acts = new Columns(8, "[grow, fill]", "[pref!, fill]");
        repeat = Buttons.primary("audit.repeat", repeating);
        report = Buttons.of("audit.report", reporting);
        report.setMargin(new Insets(2, 10, 2, 10));
        acts.add(repeat, "h 34!");
        acts.add(report, "h 34!");
        add(acts, "growx, gapright 8, gaptop 4");
        auditing.listen(this::refresh);
        refresh();
    }

    private void refresh() {
        content.removeAll();
        boolean answered = auditing.view().isPresent();
        repeat.setEnabled(answered);
        report.setEnabled(answered);
        auditing.view().ifPresent(this::show);
        if (!auditing.trouble().isEmpty()) {
            say(new Prose(auditing.trouble(), Role.B, Look.Type.BODY));
        }
        List<String> lacking = auditing.lacking();
        lacking.forEach(sentence -> say(Prose.body(sentence)));
        content.revalidate();
        content.repaint();
    }

    private void show(AuditView view) {
        if (view.claims().isEmpty()) {
            say(Prose.body(Words.of("audit.panel.noClaim")));
        } else if (view.claims().size() > 1) {
            say(new Prose(view.heading(), Role.INK, Look.Type.HEAD));
        }
        for (AuditView.Stand claim : view.claims()) {
            content.add(Prose.small("“" + claim.words() + "”"), "growx, wmin 0, gaptop 8");
            Prose grade = new Prose(Words.sentence(claim.grade()), Role.INK, Look.Type.VERDICT);
            grade.setName("audit.grade");
            say(grade);
            say(Prose.body(Words.sentence(claim.why())));
        }
        Figures figures = new Figures(SidePanel.LINE);
        view.rows().forEach(row -> figures.figure(row.name(), row.figure()));
        content.add(figures, "growx, wmin 0, gaptop 8");
        Sentences gaps = new Sentences(Words.of("audit.panel.gaps"));
        gaps.say(view.gaps());
        content.add(gaps, "growx, wmin 0, hidemode 3");
    }

    private void say(Prose words) {
        content.add(words, "growx, wmin 0");
    }
}
