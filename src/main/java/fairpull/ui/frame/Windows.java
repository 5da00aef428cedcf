package fairpull.ui.frame;

import fairpull.app.document.AuditDocument;
import fairpull.app.document.Document;
import fairpull.app.document.Settings;
import fairpull.app.document.Unsaved;
import fairpull.app.usecase.planning.ExamplePlan;
import fairpull.app.usecase.planning.StartingPlan;
import fairpull.domain.plan.Plan;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The windows of a process: several tests at a time, one set of settings. */
public final class Windows {
    private static final String STARTED = "started";
    private static final String OPEN = "open";

    private final Settings settings;
    private final Framing framing;
    private final List<OpenTest> open = new ArrayList<>();
    private final List<OpenAudit> audits = new ArrayList<>();
    private Optional<OpenShelf> shelf = Optional.empty();
    private int numbers;

    /** No windows yet. */
    public Windows(Settings settings) {
        this(settings, new Framing(TestWindow::new, AuditWindow::new, ShelfWindow::new));
    }

    /**
     * Makes what stands around the contents of a window.
     *
     * @param tests around each test
     * @param audits around each audit
     * @param shelf around the list of tests
     */
    record Framing(Function<OpenTest, Shell> tests, Function<OpenAudit, Shell> audits, Function<OpenShelf, Shell> shelf) {
    }

    /** No windows yet. */
    Windows(Settings settings, Framing framing) {
        this.settings = settings;
        this.framing = framing;
    }

    /** {@return what all windows remember} */
    public Settings settings() {
        return settings;
    }

    /**
     * Shows what a start begins with: edits that were never saved, each in a window of its own that says so, then the test that was asked
     * for, which comes to the front where those edits are of it, or the days that were under way in windows that never ended; the
     * invented example at the very first start, else a new test.
     */
    public void begin(Optional<Document> asked, Unsaved found, List<Document> running) {
        recover(found);
        if (asked.isPresent()) {
            show(asked.get());
        } else if (!running.isEmpty()) {
            running.forEach(this::show);
        } else if (found.isEmpty() && settings.find(STARTED).isEmpty()) {
            welcome();
        } else if (found.isEmpty()) {
            fresh();
        }
        settings.set(STARTED, "yes");
    }

    /**
     * Shows what a start begins with where a publication was asked for: edits that were never saved, then the publication, which comes
     * to the front where those edits are of it.
     */
    public void beginAudit(AuditDocument asked, Unsaved found) {
        recover(found);
        audit(asked);
        settings.set(STARTED, "yes");
    }

    /** Shows an audit in a window of its own; one that is shown already comes to the front. */
    void audit(AuditDocument document) {
        Optional<OpenAudit> there = document.file().flatMap(file -> audits.stream().filter(audit -> audit.isOf(file)).findFirst());
        if (there.isPresent()) {
            there.get().shell().toFront();
            return;
        }
        addAudit(document);
    }

    private OpenAudit addAudit(AuditDocument document) {
        OpenAudit audit = new OpenAudit(document, this, ++numbers, framing.audits());
        audits.add(audit);
        audit.shell().setVisible(true);
        return audit;
    }

    private void recover(Unsaved found) {
        found.tests().forEach(edits -> add(edits.document()).tellRecovered(edits));
        found.audits().forEach(edits -> addAudit(edits.document()).tellRecovered(edits));
    }

    /** Shows a test in a window of its own; one that is shown already comes to the front. */
    void show(Document document) {
        Optional<OpenTest> there = document.folder().flatMap(folder -> open.stream().filter(test -> test.isIn(folder)).findFirst());
        if (there.isPresent()) {
            there.get().shell().toFront();
        } else {
            add(document);
        }
    }

    private OpenTest add(Document document) {
        OpenTest test = new OpenTest(document, this, ++numbers, framing.tests());
        open.add(test);
        document.folder().ifPresent(settings::opened);
        remember();
        test.openWhereItStands();
        test.shell().setVisible(true);
        return test;
    }

    /** Shows a new test. */
    void fresh() {
        add(Document.unsaved(StartingPlan.in(settings.units())));
    }

    /** Shows a plan that was made for the user, as a test that is not saved yet, and says of it what there is to say. */
    void plan(Plan plan, String words) {
        add(Document.made(plan)).pane().say(words);
    }

    /** Shows the invented example, with the tour for who has not seen it. */
    void welcome() {
        add(Document.unsaved(ExamplePlan.plan())).pane().offerTour();
    }

    /** Shows the list of the tests in a folder, with the folder that was listed last; where it is open already it comes to the front. */
    void shelf() {
        if (shelf.isPresent()) {
            shelf.get().shell().toFront();
            return;
        }
        shelf = Optional.of(new OpenShelf(this, framing.shelf()));
        shelf.get().shell().setVisible(true);
        shelf.get().board().pane().resume();
    }

    void closed(OpenShelf closed) {
        shelf = Optional.empty();
    }

    /** {@return the list of tests, while it is open} */
    Optional<OpenShelf> openShelf() {
        return shelf;
    }

    void closed(OpenTest test) {
        open.remove(test);
        remember();
    }

    /** {@return the folders of the tests that were open when the program was last ended from outside} */
    public static List<Path> left(Settings settings) {
        return settings.find(OPEN).filter(kept -> !kept.isEmpty()).map(kept -> Stream.of(kept.split("\n")).map(Path::of).toList())
                .orElse(List.of());
    }

    /** Remembers what is open, for a start after an end from outside. */
    void remember() {
        settings.set(OPEN, open.stream().flatMap(test -> test.document().folder().stream())
                .map(folder -> folder.toAbsolutePath().normalize().toString()).collect(Collectors.joining("\n")));
    }

    void closed(OpenAudit audit) {
        audits.remove(audit);
    }

    /** {@return the audits that are open, in the order in which they came} */
    List<OpenAudit> audits() {
        return List.copyOf(audits);
    }

    /** {@return the tests that are open, in the order in which they came} */
    List<OpenTest> open() {
        return List.copyOf(open);
    }
}
