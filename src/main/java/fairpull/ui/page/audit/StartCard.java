package fairpull.ui.page.audit;

import fairpull.app.usecase.auditing.KeepAudit;
import fairpull.ui.form.Buttons;
import fairpull.ui.form.Card;
import fairpull.ui.form.Columns;
import fairpull.ui.form.Prose;
import fairpull.ui.theme.Words;
import net.miginfocom.swing.MigLayout;

/** The first step of an audit of which nothing is known yet: type, open a file, or look at one that comes with the program. */
final class StartCard extends Card {
    private final AuditDesk desk;

    StartCard(AuditDesk desk) {
        super(Words.of("audit.start.head"), new MigLayout("insets 20, gap 8 8, fillx, wrap 1", "[grow, fill]"));
        this.desk = desk;
        add(Prose.body(Words.of("audit.start.about")), "growx, wmin 0");
        add(Buttons.of("audit.start.open", desk.opening()::choose), "growx 0");
        Columns row = new Columns(8, "[grow, fill]", "[grow, fill]", "[grow, fill]", "[grow, fill]");
        for (String name : KeepAudit.EXAMPLES) {
            row.add(Buttons.of("audit.example." + name, () -> desk.opening().example(name)));
        }
        add(row, "growx");
    }

    void refresh() {
        setVisible(desk.document().isUntouched());
    }
}
