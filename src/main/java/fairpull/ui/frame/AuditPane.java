package fairpull.ui.frame;

import fairpull.app.document.AuditDocument;
import fairpull.app.document.Settings;
import fairpull.report.chart.Role;
import fairpull.ui.form.Entry;
import fairpull.ui.form.Teller;
import fairpull.ui.page.audit.AuditDesk;
import fairpull.ui.page.audit.AuditPage;
import fairpull.ui.page.audit.Auditing;
import fairpull.ui.page.audit.CurvesPage;
import fairpull.ui.page.audit.ProcedurePage;
import fairpull.ui.page.audit.PublishedPage;
import fairpull.ui.page.audit.StandingPage;
import fairpull.ui.theme.LocalNumbers;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** All of the window of an audit but its frame: title, path, pages, and how the claims stand. It can be driven without a display. */
public final class AuditPane extends JPanel implements Teller {
    /** The width of the side panel at the usual size of type. */
    private static final int SIDE = 340;

    private final AuditDocument document;
    private final Settings settings;
    private final JLabel title = new JLabel();
    private final JLabel subtitle = new JLabel();
    private final JLabel message = new JLabel(" ");
    private final Banner banner = new Banner();
    private final PagePath<AuditPage> path;
    private final Stage<AuditPage> stage;
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
        super(new MigLayout("insets 12 24 16 24, gap 16 0, fill, hidemode 3", "[grow, fill][" + SIDE + "!, fill]"));
        this.document = document;
        settings = remembered.ofOne();
        setName("audit");
        AuditDesk desk = new AuditDesk(document, settings, auditing, opening, this::complain);
        stage = new Stage<>(List.of(new PublishedPage(desk), new ProcedurePage(desk), new CurvesPage(desk), new StandingPage(desk)),
                page -> page.notYet().isEmpty());
        path = new PagePath<>(stage.pages(), this::go);
        panel = new AuditPanel(auditing, () -> flushed(() -> repeating.run()), () -> flushed(() -> reporting.run()));
        message.setName("message");
        dress();
        add(title, "spanx, wrap, wmin 0");
        add(subtitle, "spanx, wrap, wmin 0, gaptop 6");
        add(banner, "spanx, growx, wrap, gaptop 6");
        add(path, "split 2, spanx, gaptop 6");
        add(message, "growx, wmin 0, wrap");
        add(stage, "grow, pushy, wmin 0, hmin 0, gaptop 6");
        add(panel, "grow, hmin 0, gaptop 6");
        stage.keys(this, this::go);
        document.listen(this::refresh);
        auditing.listen(this::refresh);
        settings.listen(this::refresh);
        refresh();
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (title != null) {
            dress();
        }
    }

    private void dress() {
        columns();
        title.setFont(Look.font(Look.Type.TITLE));
        subtitle.setFont(Look.font(Look.Type.SMALL));
        subtitle.setForeground(Look.colour(Role.SOFT));
        message.setFont(Look.font(Look.Type.SMALL));
        message.setForeground(Look.colour(Role.INK));
    }

    /** The side panel grows with the type, but leaves the pages the larger part; beside a wide page it goes. */
    private void columns() {
        boolean wide = stage.current().isWide();
        panel.setVisible(!wide);
        String side = SIDE + ":" + Math.round(SIDE * Look.scale()) + ":40%";
        ((MigLayout) getLayout()).setColumnConstraints("[grow, fill]" + (wide ? "" : "[" + side + ", fill, shrink 0]"));
    }

    private void complain(String words) {
        message.setText(words.isEmpty() ? " " : LocalNumbers.shown(words));
        message.setToolTipText(words.isEmpty() ? null : Words.tip(words));
    }

    @Override
    public void say(String words) {
        banner.say(words);
    }

    @Override
    public void ask(String question, Map<String, Runnable> answers) {
        banner.ask(question, answers);
    }

    /** Takes a file that was dropped on the window: the page in view where it has a use for it, else as a publication. */
    public void take(Path dropped, Consumer<Path> opening) {
        if (dropped.toString().toLowerCase(Locale.ROOT).endsWith(".json")) {
            opening.accept(dropped);
        } else if (!stage.current().take(dropped)) {
            complain(Words.of("audit.drop.nothing"));
        }
    }

    /** Does something once what is still being typed has been sent: it counts as edited before. */
    public void flushed(Runnable work) {
        Entry.flush(this);
        work.run();
    }

    /** {@return whether a field shows something else than the publication holds, because it is not understood} */
    boolean complains() {
        return stage.complaint().isPresent();
    }

    /** {@return whether a field is not understood; the first such field is then brought into view, and what is wrong with it said} */
    boolean showsComplaint() {
        Optional<Stage.Complaint<AuditPage>> found = stage.complaint();
        found.ifPresent(complaint -> {
            go(complaint.page());
            complaint.reach();
            say(LocalNumbers.shown(Words.of("audit.complaint", complaint.entry().name(), complaint.entry().wrong())));
        });
        return found.isPresent();
    }

    /** Hears that the fair repeat is wanted as a plan. */
    void onRepeat(Runnable work) {
        repeating = work;
    }

    /** Hears that the report is wanted. */
    void onReport(Runnable work) {
        reporting = work;
    }

    /** Brings a page into view. */
    public void go(AuditPage page) {
        complain("");
        stage.bring(page);
        refresh();
    }

    /** {@return the pages in the order of the work} */
    public List<AuditPage> pages() {
        return stage.pages();
    }

    /** {@return what gets the focus first} */
    JComponent first() {
        return path;
    }

    /** Lets go of what outlives it. */
    public void end() {
        settings.end();
    }

    private void refresh() {
        title.setText(Titles.title(document));
        subtitle.setText(Titles.subtitle(document));
        columns();
        path.show(stage.current(), AuditPage::notYet);
        stage.current().show();
    }
}
