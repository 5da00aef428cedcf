package fairpull.ui.frame;

import fairpull.app.document.Document;

/** The frame around a test on a display. */
public final class TestWindow extends PaneWindow {
    private final transient OpenTest test;

    TestWindow(OpenTest test) {
        super(test.pane(), TestMenu.of(test.actions(), test.windows().settings()), test.windows().settings(), test.actions()::close,
                test.pane().strip());
        this.test = test;
        test.document().listen(this::retitle);
        test.pane().addPropertyChangeListener(TestPane.BLIND, change -> retitle());
        retitle();
    }

    /** {@return what it shows} */
    public Document document() {
        return test.document();
    }

    /** {@return all of it but the frame} */
    public TestPane pane() {
        return test.pane();
    }

    private void retitle() {
        setTitle(Titles.window(test.document(), test.pane().isBlind()));
    }
}
