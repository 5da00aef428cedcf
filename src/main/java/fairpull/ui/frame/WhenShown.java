package fairpull.ui.frame;

import javax.swing.event.MenuEvent;
import javax.swing.event.MenuListener;

/** Does something just before a menu shows. */
record WhenShown(Runnable work) implements MenuListener {
    @Override
    public void menuSelected(MenuEvent event) {
        work.run();
    }

    @Override
    public void menuDeselected(MenuEvent event) {
        // nothing to take back
    }

    @Override
    public void menuCanceled(MenuEvent event) {
        // nothing to take back
    }
}
