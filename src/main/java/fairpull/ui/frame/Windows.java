package fairpull.ui.frame;

import fairpull.app.document.Document;
import fairpull.app.document.Recovery;
import fairpull.app.document.Settings;
import fairpull.app.usecase.ExamplePlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The windows of a process: several tests at a time, one set of settings. */
public final class Windows {
    private final Settings settings;
    private final List<TestWindow> open = new ArrayList<>();
    private int numbers;

    /** No windows yet. */
    public Windows(Settings settings) {
        this.settings = settings;
    }

    /** {@return what all windows remember} */
    public Settings settings() {
        return settings;
    }

    /** Shows a test in a window of its own; one that is shown already comes to the front. */
    public TestWindow show(Document document) {
        Optional<TestWindow> there = open.stream().filter(window -> document.folder().isPresent()
                && window.document().folder().equals(document.folder())).findFirst();
        if (there.isPresent()) {
            there.get().toFront();
            return there.get();
        }
        TestWindow window = new TestWindow(document, this, ++numbers);
        open.add(window);
        document.folder().ifPresent(settings::opened);
        window.setVisible(true);
        return window;
    }

    /** Shows the invented example, with the tour for who has not seen it. */
    public void welcome() {
        show(Document.unsaved(ExamplePlan.plan())).pane().offerTour();
    }

    /** Shows edits that were never saved before the program ended, in a window of their own that says so. */
    public void offer(Recovery.Found found) {
        show(found.document()).tellRecovered();
        Recovery.forget(settings, found);
    }

    void closed(TestWindow window) {
        open.remove(window);
    }

    /** {@return the windows that are open} */
    public List<TestWindow> open() {
        return List.copyOf(open);
    }
}
