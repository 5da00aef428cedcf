package fairpull.ui.frame;

import fairpull.app.document.Document;
import fairpull.app.document.Recovery;
import fairpull.app.document.Settings;
import fairpull.io.settings.UserFolder;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;
import javax.swing.WindowConstants;

/** A window with one test. */
public final class TestWindow extends JFrame {
    private final Document document;
    private final Recovery recovery;
    private final TestPane pane;

    /** A window that is not shown yet. */
    public TestWindow(Document document, Settings settings, UserFolder folder, int number) {
        this.document = document;
        recovery = Recovery.of(folder, document, number, SwingUtilities::invokeLater);
        pane = new TestPane(document, settings, Pages::of);
        setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
        add(pane, BorderLayout.CENTER);
        setMinimumSize(new Dimension(1000, 640));
        setSize((int) settings.number("window.width", 1280), (int) settings.number("window.height", 800));
        setLocationByPlatform(true);
        document.listen(this::retitle);
        retitle();
        addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosing(WindowEvent event) {
                recovery.end();
                dispose();
            }
        });
    }

    private void retitle() {
        setTitle(Titles.window(document));
    }
}
