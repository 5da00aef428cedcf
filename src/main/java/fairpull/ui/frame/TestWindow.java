package fairpull.ui.frame;

import fairpull.app.document.Document;
import fairpull.app.document.Settings;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import javax.swing.WindowConstants;

/** The frame around a test on a display. */
public final class TestWindow extends ShellFrame {
    private final transient OpenTest test;

    TestWindow(OpenTest test) {
        super(test.windows().settings());
        this.test = test;
        Settings settings = test.windows().settings();
        setJMenuBar(TestMenu.of(test.actions(), settings));
        setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
        add(test.pane(), BorderLayout.CENTER);
        setMinimumSize(new Dimension(1000, 640));
        setSize((int) settings.number("window.width", 1280), (int) settings.number("window.height", 800));
        setLocationByPlatform(true);
        test.document().listen(this::retitle);
        test.pane().addPropertyChangeListener(TestPane.BLIND, change -> retitle());
        retitle();
        addWindowListener(new WindowAdapter() {
            @Override
            public void windowOpened(WindowEvent event) {
                // without a focus within, keys of the window go nowhere: all fields of a sealed test refuse it
                test.pane().strip().requestFocusInWindow();
            }

            @Override
            public void windowClosing(WindowEvent event) {
                test.actions().close();
            }
        });
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
