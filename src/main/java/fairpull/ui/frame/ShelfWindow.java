package fairpull.ui.frame;

import fairpull.ui.form.Keys;
import fairpull.ui.theme.Words;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import javax.swing.WindowConstants;

/** The frame around the list of tests on a display. */
final class ShelfWindow extends ShellFrame {
    ShelfWindow(OpenShelf shelf) {
        super(shelf.windows().settings());
        setTitle(Words.of("shelf.title") + " – Fairpull");
        setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
        add(shelf.board(), BorderLayout.CENTER);
        setMinimumSize(new Dimension(1000, 640));
        setSize(1280, 800);
        setLocationByPlatform(true);
        Keys.bindInWindow(shelf.board(), "ctrl W", shelf::end);
        addWindowListener(new WindowAdapter() {
            @Override
            public void windowOpened(WindowEvent event) {
                shelf.board().pane().focus();
            }

            @Override
            public void windowClosing(WindowEvent event) {
                shelf.end();
            }
        });
    }
}
