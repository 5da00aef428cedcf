package fairpull.ui.page.shelf;

import fairpull.app.document.Settings;
import fairpull.app.task.Job;
import fairpull.app.usecase.shelf.ListTests;
import fairpull.app.usecase.shelf.ListedTest;
import fairpull.report.chart.Role;
import fairpull.ui.form.Buttons;
import fairpull.ui.form.FaultWords;
import fairpull.ui.form.Keys;
import fairpull.ui.form.Prose;
import fairpull.ui.form.ScrolledPage;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.awt.CardLayout;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.ButtonGroup;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.JScrollPane;
import javax.swing.JToggleButton;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** The tests below a folder and the rig over time. Tests are found and judged beside the window's thread; rows fill in as they come. */
public final class ShelfPane extends JPanel {
    private static final String FOLDER = "shelf.folder";
    private static final String TESTS = "shelf.tests";
    private static final String RIG = "shelf.rigs";
    /** What is chosen is in ink, as on the path of pages. */
    private static final String CHOSEN = "selectedBackground: $Button.default.background; selectedForeground: $Button.default.foreground";

    private final transient Settings settings;
    private final transient ListTests listing = new ListTests();
    private final TestRows rows = new TestRows();
    private final TestTable table;
    private final Filters filters = new Filters(this::filter);
    private final RigPart rig = new RigPart();
    private final Prose head = new Prose("", Role.INK, Look.Type.TITLE);
    private final Prose place = Prose.verbatim();
    private final JProgressBar progress = new JProgressBar(0, 1000);
    private final JButton stop = Buttons.of("shelf.stop", this::stop);
    private final JButton again = Buttons.of("shelf.again", this::again);
    private final CardLayout cards = new CardLayout();
    private final JPanel stage = new JPanel(cards);
    private final Map<String, JToggleButton> parts = new HashMap<>();
    private transient Optional<Job<ListTests.Found>> running = Optional.empty();
    private transient Optional<Path> folder = Optional.empty();
    private List<Path> records = List.of();

    /**
     * A pane without a folder.
     *
     * @param settings remembers the folder
     * @param opening opens a test
     * @param choosing asks for a folder, and for rig records by its other end
     */
    public ShelfPane(Settings settings, Consumer<Path> opening, Consumer<Consumer<Path>> choosing) {
        super(new MigLayout("insets 12 24 16 24, gap 16 8, fill, wrap 1, hidemode 3", "[grow, fill]", "[][][][grow, fill]"));
        this.settings = settings;
        setName("shelf");
        table = new TestTable(rows, settings, opening);
        head.setName("shelf.head");
        place.setName("shelf.place");
        stage.setOpaque(false);
        JPanel tests = new JPanel(new MigLayout("insets 0, gap 0 8, fill, wrap 1, hidemode 3", "[grow, fill]", "[][grow, fill][]"));
        tests.setOpaque(false);
        tests.add(filters, "wmin 0");
        tests.add(new JScrollPane(table), "hmin 0, wmin 0");
        WholeRow chosen = new WholeRow(table.words());
        table.listen(chosen::tell);
        tests.add(chosen, "growx, wmin 0");
        stage.add(tests, TESTS);
        stage.add(ScrolledPage.scrolled(ScrolledPage.of(rig)), RIG);
        add(head, "growx, wmin 0");
        add(place, "growx, wmin 0");
        add(bar(choosing), "growx, wmin 0");
        add(stage, "hmin 0, wmin 0");
        Keys.bindInWindow(this, "F5", this::again);
        idle();
        head.setText(Words.of("shelf.nothing"));
        rig.reckon(List.of(), List.of());
    }

    private JPanel bar(Consumer<Consumer<Path>> choosing) {
        JPanel bar = new JPanel(new MigLayout("insets 0, gap 8 6, fillx, hidemode 3"));
        bar.setOpaque(false);
        ButtonGroup group = new ButtonGroup();
        for (String key : List.of(TESTS, RIG)) {
            JToggleButton button = new JToggleButton(Words.of(key), key.equals(TESTS));
            button.setName(key);
            button.setMnemonic(Words.mnemonic(key));
            button.setToolTipText(Words.tip(Words.of(key + ".tip")));
            button.putClientProperty("FlatLaf.style", CHOSEN);
            button.addActionListener(event -> cards.show(stage, key));
            group.add(button);
            parts.put(key, button);
            bar.add(button);
        }
        progress.setName("shelf.progress");
        progress.getAccessibleContext().setAccessibleName(Words.of("shelf.progress"));
        progress.setToolTipText(Words.tip(Words.of("shelf.progress")));
        bar.add(progress, "gapleft 12, w 160!");
        bar.add(stop);
        bar.add(again, "push, alignx right");
        bar.add(Buttons.of("shelf.record", () -> choosing.accept(this::record)));
        bar.add(Buttons.primary("shelf.choose", () -> choosing.accept(this::look)));
        return bar;
    }

    /** Lists the folder that was listed last, where there is one. */
    public void resume() {
        try {
            settings.find(FOLDER).map(Path::of).ifPresent(this::look);
        } catch (InvalidPathException unreadable) {
            head.setText(Words.of("shelf.nothing"));
        }
    }

    /** Gives the keys to the list. */
    public void focus() {
        table.requestFocusInWindow();
    }

    /** Takes what was dropped: a folder is listed, a file is shown as a rig record. */
    public void take(Path dropped) {
        if (dropped.toFile().isDirectory()) {
            look(dropped);
        } else {
            record(dropped);
        }
    }

    /** Lists the tests below a folder. */
    public void look(Path where) {
        folder = Optional.of(where.toAbsolutePath().normalize());
        settings.set(FOLDER, folder.get().toString());
        focus();
        again();
    }

    /** Looks again; what has not changed since is not judged anew. */
    public void again() {
        folder.ifPresent(this::begin);
    }

    private void begin(Path where) {
        running.ifPresent(Job::cancel);
        place.setText(where.toString());
        head.setText(Words.of("shelf.looking"));
        progress.setValue(0);
        busy(true);
        running = Optional.of(Job.start(watch -> Job.onDisk(() -> ListTests.find(where, watch)).apply(watch), SwingUtilities::invokeLater,
                share -> { }, ended -> ended.tell(this::judge, this::failed)));
    }

    private void judge(ListTests.Found found) {
        Optional<Path> before = table.chosen();
        rows.have(found.tests());
        records = found.records();
        table.choose(before);
        head.setText(Words.of("shelf.judging", rows.getRowCount()));
        Told told = new Told(rows::tell);
        running = Optional.of(Job.start(watch -> {
            listing.list(found, told, watch);
            return found;
        }, SwingUtilities::invokeLater, share -> progress.setValue((int) Math.round(share * progress.getMaximum())),
                ended -> ended.tell(this::done, this::failed)));
    }

    private void done(ListTests.Found found) {
        table.settle();
        say(found);
        idle();
        rig.reckon(records, rows.tests());
    }

    private void say(ListTests.Found found) {
        String more = found.isCut() ? " " + Words.of("shelf.cut", ListTests.MOST_TESTS, ListTests.DEEPEST) : "";
        head.setText((rows.getRowCount() == 0 ? Words.of("shelf.empty") : ListedTest.count(rows.tests())) + more);
    }

    private void failed(Throwable fault) {
        head.setText(FaultWords.of(fault));
        idle();
    }

    private void stop() {
        running.ifPresent(Job::cancel);
        table.settle();
        head.setText(Words.of("shelf.stopped", rows.tests().size(), rows.getRowCount()));
        idle();
    }

    private void idle() {
        running = Optional.empty();
        busy(false);
    }

    private void busy(boolean working) {
        progress.setVisible(working);
        stop.setVisible(working);
        again.setEnabled(!working && folder.isPresent());
    }

    private void filter() {
        table.filter(row -> filters.shows(row, table.words()));
    }

    private void record(Path where) {
        parts.get(RIG).doClick();
        rig.reckon(List.of(where), rows.tests());
    }

    /** Lets go of what still runs. */
    public void end() {
        running.ifPresent(Job::cancel);
        rig.end();
    }
}
