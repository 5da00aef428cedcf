package fairpull.ui.frame;

import fairpull.app.document.Document;
import fairpull.app.document.Recovery;
import fairpull.app.document.Settings;
import fairpull.app.usecase.ExamplePlan;
import fairpull.app.usecase.StartingPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The windows of a process: several tests at a time, one set of settings. */
public final class Windows {
    private static final String STARTED = "started";

    private final Settings settings;
    private final Function<OpenTest, Shell> framing;
    private final Function<OpenShelf, Shell> shelving;
    private final List<OpenTest> open = new ArrayList<>();
    private Optional<OpenShelf> shelf = Optional.empty();
    private int numbers;

    /** No windows yet. */
    public Windows(Settings settings) {
        this(settings, TestWindow::new, ShelfWindow::new);
    }

    /** No windows yet; {@code framing} makes what stands around each test, {@code shelving} what stands around the list of them. */
    Windows(Settings settings, Function<OpenTest, Shell> framing, Function<OpenShelf, Shell> shelving) {
        this.shelving = shelving;
        this.settings = settings;
        this.framing = framing;
    }

    /** {@return what all windows remember} */
    public Settings settings() {
        return settings;
    }

    /**
     * Shows what a start begins with: edits that were never saved, each in a window of its own that says so, then the test that was asked
     * for, which comes to the front where those edits are of it; the invented example at the very first start, else a new test.
     */
    public void begin(Optional<Document> asked, List<Recovery.Found> found) {
        found.forEach(edits -> add(edits.document()).tellRecovered(edits));
        if (asked.isPresent()) {
            show(asked.get());
        } else if (found.isEmpty() && settings.find(STARTED).isEmpty()) {
            welcome();
        } else if (found.isEmpty()) {
            fresh();
        }
        settings.set(STARTED, "yes");
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
        OpenTest test = new OpenTest(document, this, ++numbers, framing);
        open.add(test);
        document.folder().ifPresent(settings::opened);
        test.shell().setVisible(true);
        return test;
    }

    /** Shows a new test. */
    void fresh() {
        add(Document.unsaved(StartingPlan.in(settings.units())));
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
        shelf = Optional.of(new OpenShelf(this, shelving));
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
    }

    /** {@return the tests that are open, in the order in which they came} */
    List<OpenTest> open() {
        return List.copyOf(open);
    }
}
