package fairpull.ui.frame;

import fairpull.app.document.Settings;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import javax.swing.JComponent;
import javax.swing.JMenuBar;
import javax.swing.WindowConstants;

/** A frame on a display around a pane with menus. */
class PaneWindow extends ShellFrame {
    /** A frame; {@code closing} hears that it is to be ended, {@code first} gets the focus when it opens. */
    PaneWindow(JComponent pane, JMenuBar menus, Settings settings, Runnable closing, JComponent first) {
        super(settings);
        setJMenuBar(menus);
        setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
        add(pane, BorderLayout.CENTER);
        setMinimumSize(new Dimension(1000, 640));
        setSize((int) settings.number("window.width", 1280), (int) settings.number("window.height", 800));
        setLocationByPlatform(true);
        addWindowListener(new WindowAdapter() {
            @Override
            public void windowOpened(WindowEvent event) {
                // without a focus within, keys of the window go nowhere: all fields of a sealed test refuse it
                first.requestFocusInWindow();
            }

            @Override
            public void windowClosing(WindowEvent event) {
                closing.run();
            }
        });
    }
}
