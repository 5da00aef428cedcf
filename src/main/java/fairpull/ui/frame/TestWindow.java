package fairpull.ui.frame;

import fairpull.app.document.Document;
import fairpull.app.document.Recovery;
import fairpull.ui.theme.Words;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.io.IOException;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;
import javax.swing.WindowConstants;

/** A window with one test. */
public final class TestWindow extends JFrame {
    private final Document document;
    private final Windows windows;
    private final Recovery recovery;
    private final TestPane pane;

    TestWindow(Document document, Windows windows, int number) {
        this.document = document;
        this.windows = windows;
        recovery = Recovery.of(windows.settings(), document, number, SwingUtilities::invokeLater);
        pane = new TestPane(document, windows.settings(), Pages::of);
        TestActions actions = new TestActions(this, windows);
        pane.setTransferHandler(new Drops(path -> pane.take(path, actions::open)));
        pane.onSeal(actions::seal);
        pane.onSheet(actions::sheet);
        pane.onAmend(actions::amend);
        setJMenuBar(TestMenu.of(actions, windows.settings()));
        setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
        add(pane, BorderLayout.CENTER);
        setMinimumSize(new Dimension(1000, 640));
        setSize((int) windows.settings().number("window.width", 1280), (int) windows.settings().number("window.height", 800));
        setLocationByPlatform(true);
        document.listen(this::retitle);
        retitle();
        addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosing(WindowEvent event) {
                actions.close();
            }
        });
    }

    /** {@return what it shows} */
    public Document document() {
        return document;
    }

    /** {@return all of it but the frame} */
    public TestPane pane() {
        return pane;
    }

    /** Says that what is shown was found after the program had been ended from outside. */
    void tellRecovered() {
        recovery.keepNow();
        pane.say(Words.of("recovered"));
    }

    /** Ends the window; what was not saved is given up. */
    void end() {
        windows.settings().set("window.width", Integer.toString(getWidth()));
        windows.settings().set("window.height", Integer.toString(getHeight()));
        recovery.end();
        windows.closed(this);
        dispose();
        try {
            windows.settings().remember();
        } catch (IOException forgotten) {
            // sizes and recent tests are a comfort; nothing of the user's work is lost with them
            return;
        }
    }

    private void retitle() {
        setTitle(Titles.window(document));
    }
}
