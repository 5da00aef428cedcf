package fairpull.ui.frame;

import fairpull.app.document.Document;
import fairpull.app.document.Settings;
import fairpull.app.usecase.auditing.KeepAudit;
import fairpull.app.usecase.judging.KeepReport;
import fairpull.ui.page.Desk;
import fairpull.ui.page.Page;
import fairpull.ui.page.finding.FindingPage;
import fairpull.ui.page.finding.ReportWriter;
import fairpull.ui.strip.DayStripView;
import fairpull.ui.theme.Words;
import java.nio.file.Path;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** All of the window of a test but its frame: strip, pages, and beside them what the plan can see or what was found. */
public final class TestPane extends PathPane<Page> implements ReportWriter {
    /** A property: whether part names and values are hidden. */
    static final String BLIND = "blind";

    private final Document document;
    private final Desk desk;
    private boolean blind;
    private final DayStripView strip;
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
        super(remembered, page -> page.notYet(document));
        this.document = document;
        setName("test");
        strip = new DayStripView(document, this::complain);
        desk = new Desk(document, settings(), strip, this::complain, this::go);
        staged(making.apply(desk));
        amendment = new AmendmentBar(document, because -> flushed(() -> amending.accept(because)));
        tour = new Tour(settings(), this::go);
        Runnable sheet = () -> flushed(() -> printing.run());
        SidePanel outlook = new SidePanel(document, settings(), () -> flushed(() -> sealing.run()), sheet);
        found = new FoundPanel(document, strip, outlook, () -> go("page.finding"), sheet);
        lay(outlook);
        document.listen(this::refresh);
        settings().listen(this::blinded);
        refresh();
    }

    private void lay(SidePanel outlook) {
        add(title(), "spanx, wrap, wmin 0");
        JPanel state = new JPanel(new MigLayout("insets 0, gap 12 0, fillx, hidemode 3", "[][grow, fill]"));
        state.setOpaque(false);
        state.add(subtitle(), "wmin 0");
        state.add(amendment, "growx, wmin pref");
        add(state, "spanx, growx, wrap, wmin 0, gaptop 6");
        add(strip, "spanx, growx, wrap, gaptop 6");
        addPath();
        add(tour, "spanx, growx, wrap, gaptop 6");
        addStage();
        add(outlook, "split 2, grow, hmin 0, gaptop 6");
        add(found, "grow, hmin 0, gaptop 6, wrap");
        addBanner();
    }

    /** Shows what may be shown to eyes that may be blind: the title names the parts, and some pages tell of them. */
    private void blinded() {
        titled();
        showPath();
    }

    private void titled() {
        boolean before = blind;
        blind = desk.isBlind();
        title().setText(Titles.title(document, blind));
        title().setToolTipText(document.folder().map(folder -> Words.tip(folder.toString())).orElse(null));
        firePropertyChange(BLIND, before, blind);
    }

    /** {@return whether part names and values are hidden} */
    boolean isBlind() {
        return blind;
    }

    /** Takes what was dropped: a test, by its folder or plan, or a publication is opened; another file is for the page in view. */
    public void take(Path dropped, Consumer<Path> opening) {
        Path folder = dropped.endsWith("plan.json") ? dropped.toAbsolutePath().getParent() : dropped;
        if (folder.toFile().isDirectory() || KeepAudit.isFile(dropped)) {
            opening.accept(folder);
        } else if (!current().take(dropped)) {
            complain(Words.of("drop.nothing"));
        }
    }

    @Override
    String complaint(String field, String wrong) {
        return Words.of("complaint", field, wrong);
    }

    /** Starts the tour unless it was seen before. */
    void offerTour() {
        tour.offer();
    }

    /** Starts the tour. */
    public void startTour() {
        tour.start();
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

    /** {@return the strip} */
    public DayStripView strip() {
        return strip;
    }

    @Override
    void refresh() {
        titled();
        subtitle().setText(Titles.subtitle(document));
        found.yieldTo(current().isWide());
        strip.compact(current().isWide());
        super.refresh();
    }
}
