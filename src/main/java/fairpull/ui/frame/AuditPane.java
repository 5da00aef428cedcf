package fairpull.ui.frame;

import fairpull.app.document.AuditDocument;
import fairpull.app.document.Settings;
import fairpull.ui.page.audit.AuditDesk;
import fairpull.ui.page.audit.AuditPage;
import fairpull.ui.page.audit.Auditing;
import fairpull.ui.page.audit.CurvesPage;
import fairpull.ui.page.audit.ProcedurePage;
import fairpull.ui.page.audit.PublishedPage;
import fairpull.ui.page.audit.StandingPage;
import fairpull.ui.theme.Words;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;

/** All of the window of an audit but its frame: its pages, and beside them how the claims stand. */
public final class AuditPane extends PathPane<AuditPage> {
    private final AuditDocument document;
    private final AuditPanel panel;
    private Runnable repeating = () -> { };
    private Runnable reporting = () -> { };

    /**
     * A pane.
     *
     * @param document the publication
     * @param remembered what is remembered
     * @param auditing how its claims stand
     * @param opening opens other publications
     */
    public AuditPane(AuditDocument document, Settings remembered, Auditing auditing, AuditDesk.Opening opening) {
        super(remembered, AuditPage::notYet);
        this.document = document;
        setName("audit");
        AuditDesk desk = new AuditDesk(document, settings(), auditing, opening, this::complain);
        staged(List.of(new PublishedPage(desk), new ProcedurePage(desk), new CurvesPage(desk), new StandingPage(desk)));
        panel = new AuditPanel(auditing, () -> flushed(() -> repeating.run()), () -> flushed(() -> reporting.run()));
        add(title(), "spanx, wrap, wmin 0");
        add(subtitle(), "spanx, wrap, wmin 0, gaptop 6");
        addPath();
        addStage();
        add(panel, "grow, hmin 0, gaptop 6, wrap");
        addBanner();
        document.listen(this::refresh);
        auditing.listen(this::refresh);
        settings().listen(this::refresh);
        refresh();
    }

    /** Takes a file that was dropped on the window: the page in view where it has a use for it, else as a publication. */
    public void take(Path dropped, Consumer<Path> opening) {
        if (dropped.toString().toLowerCase(Locale.ROOT).endsWith(".json")) {
            opening.accept(dropped);
        } else if (!current().take(dropped)) {
            complain(Words.of("audit.drop.nothing"));
        }
    }

    @Override
    String complaint(String field, String wrong) {
        return Words.of("audit.complaint", field, wrong);
    }

    /** Hears that the fair repeat is wanted as a plan. */
    void onRepeat(Runnable work) {
        repeating = work;
    }

    /** Hears that the report is wanted. */
    void onReport(Runnable work) {
        reporting = work;
    }

    @Override
    void refresh() {
        title().setText(Titles.title(document));
        subtitle().setText(Titles.subtitle(document));
        panel.setVisible(!current().isWide());
        super.refresh();
    }
}
