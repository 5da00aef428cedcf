package fairpull.ui.frame;

import fairpull.app.document.Document;
import fairpull.app.document.Settings;
import fairpull.app.usecase.KeepAudit;
import fairpull.app.usecase.KeepReport;
import fairpull.report.chart.Role;
import fairpull.ui.form.Entry;
import fairpull.ui.form.Teller;
import fairpull.ui.page.Desk;
import fairpull.ui.page.Page;
import fairpull.ui.page.finding.FindingPage;
import fairpull.ui.page.finding.ReportWriter;
import fairpull.ui.strip.DayStripView;
import fairpull.ui.theme.LocalNumbers;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** All of a window but its frame: title, strip, path, pages, side panel. It can be shown and driven without a display. */
public final class TestPane extends JPanel implements Teller, ReportWriter {
    /** The width of the side panel at the usual size of type. */
    private static final int SIDE = 340;

    /** A property: whether part names and values are hidden. */
    static final String BLIND = "blind";

    private final Document document;
    private final Settings settings;
    private final Desk desk;
    private boolean blind;
    private final JLabel title = new JLabel();
    private final JLabel subtitle = new JLabel();
    private final JLabel message = new JLabel(" ");
    private final Banner banner = new Banner();
    private final DayStripView strip;
    private final PagePath<Page> path;
    private final Stage<Page> stage;
    private final AmendmentBar amendment;
    private final Tour tour;
    private final FoundPanel found;
    private Runnable sealing = () -> { };
    private Runnable printing = () -> { };
    private Consumer<String> amending = because -> { };
    private BiConsumer<KeepReport.Kind, String> reporting = (kind, seen) -> { };

    /**
     * A pane.
     *
     * @param document the test
     * @param remembered what is remembered
     * @param making makes the pages, in the order of the work
     */
    public TestPane(Document document, Settings remembered, Function<Desk, List<Page>> making) {
        super(new MigLayout("insets 12 24 16 24, gap 16 0, fill", "[grow, fill][" + SIDE + "!, fill]", "[][][][][][][grow, fill]"));
        this.document = document;
        settings = remembered.ofOne();
        setName("test");
        strip = new DayStripView(document, this::complain);
        desk = new Desk(document, settings, strip, this::complain, this::go);
        stage = new Stage<>(making.apply(desk), page -> page.notYet(document).isEmpty());
        path = new PagePath<>(stage.pages(), this::go);
        message.setName("message");
        dress();
        add(title, "spanx, wrap, wmin 0");
        amendment = new AmendmentBar(document, because -> flushed(() -> amending.accept(because)));
        JPanel state = new JPanel(new MigLayout("insets 0, gap 12 0, fillx, hidemode 3", "[][grow, fill]"));
        state.setOpaque(false);
        state.add(subtitle, "wmin 0");
        state.add(amendment, "growx, wmin pref");
        add(state, "spanx, growx, wrap, wmin 0, gaptop 6");
        add(banner, "spanx, growx, wrap, hidemode 3, gaptop 6");
        add(strip, "spanx, growx, wrap, gaptop 6");
        add(path, "split 2, spanx, gaptop 6");
        add(message, "growx, wmin 0, wrap");
        tour = new Tour(settings, this::go);
        add(tour, "spanx, growx, wrap, hidemode 3, gaptop 6");
        add(stage, "grow, wmin 0, hmin 0, gaptop 6");
        Runnable sheet = () -> flushed(() -> printing.run());
        SidePanel outlook = new SidePanel(document, settings, () -> flushed(() -> sealing.run()), sheet);
        found = new FoundPanel(document, strip, outlook, () -> go("page.finding"), sheet);
        add(outlook, "split 2, grow, hmin 0, gaptop 6, hidemode 3");
        add(found, "grow, hmin 0, gaptop 6, hidemode 3");
        stage.keys(this, this::go);
        document.listen(this::refresh);
        settings.listen(this::blinded);
        refresh();
    }

    /** Shows what may be shown to eyes that may be blind: the title names the parts, and some pages tell of them. */
    private void blinded() {
        boolean before = blind;
        blind = desk.isBlind();
        title.setText(Titles.title(document, blind));
        path.show(stage.current(), page -> page.notYet(document));
        firePropertyChange(BLIND, before, blind);
    }

    /** {@return whether part names and values are hidden} */
    boolean isBlind() {
        return blind;
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

    /** The side panel grows with the type, but leaves the pages the larger part, or all of it. */
    private void columns() {
        String side = SIDE + ":" + Math.round(SIDE * Look.scale()) + ":40%";
        ((MigLayout) getLayout()).setColumnConstraints(stage.current().isWide() ? "[grow, fill]0[0!]"
                : "[grow, fill][" + side + ", fill, shrink 0]");
        revalidate();
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

    /** Takes what was dropped: a test, by its folder or plan, or a publication is opened; another file is for the page in view. */
    public void take(Path dropped, Consumer<Path> opening) {
        Path folder = dropped.endsWith("plan.json") ? dropped.toAbsolutePath().getParent() : dropped;
        if (folder.toFile().isDirectory() || KeepAudit.isFile(dropped)) {
            opening.accept(folder);
        } else if (!stage.current().take(dropped)) {
            complain(Words.of("drop.nothing"));
        }
    }

    /** Does something once what is still being typed has been sent: it counts as edited before. */
    public void flushed(Runnable work) {
        Entry.flush(this);
        work.run();
    }

    /** {@return whether a field shows something else than the plan holds, because it is not understood} */
    boolean complains() {
        return stage.complaint().isPresent();
    }

    /** {@return whether a field is not understood; the first such field is then brought into view, and what is wrong with it said} */
    boolean showsComplaint() {
        Optional<Stage.Complaint<Page>> found = stage.complaint();
        found.ifPresent(complaint -> {
            go(complaint.page());
            complaint.reach();
            say(LocalNumbers.shown(Words.of("complaint", complaint.entry().name(), complaint.entry().wrong())));
        });
        return found.isPresent();
    }

    /** Lets go of what outlives it. */
    public void end() {
        settings.end();
    }

    /** Starts the tour unless it was seen before. */
    void offerTour() {
        tour.offer();
    }

    /** Starts the tour. */
    public void startTour() {
        tour.start();
    }

    private void go(String key) {
        stage.page(key).ifPresent(this::go);
    }

    /** Brings a page into view. */
    public void go(Page page) {
        complain("");
        stage.bring(page);
        refresh();
    }

    /** Hears that the plan is to be sealed. */
    public void onSeal(Runnable work) {
        sealing = work;
    }

    /** Hears that the run sheet of a sealed plan is wanted. */
    public void onSheet(Runnable work) {
        printing = work;
    }

    /** Hears that a finding is to be written. */
    public void onReport(BiConsumer<KeepReport.Kind, String> work) {
        reporting = work;
    }

    @Override
    public void write(KeepReport.Kind kind, String seen) {
        reporting.accept(kind, seen);
    }

    /** {@return the page of the finding, brought into view} */
    FindingPage finding() {
        FindingPage finding = pages().stream().filter(FindingPage.class::isInstance).map(FindingPage.class::cast).findFirst().orElseThrow();
        go(finding);
        return finding;
    }

    /** Hears that an amendment is to be written, with its reason. */
    public void onAmend(Consumer<String> work) {
        amending = work;
    }

    /** Asks in place for the reason of the amendment that is being made. */
    public void askReason() {
        amendment.askReason();
    }

    /** {@return the pages in the order of the work} */
    public List<Page> pages() {
        return stage.pages();
    }

    /** {@return the strip} */
    public DayStripView strip() {
        return strip;
    }

    private void refresh() {
        blinded();
        subtitle.setText(Titles.subtitle(document));
        columns();
        found.yieldTo(stage.current().isWide());
        stage.current().show();
    }
}
