package fairpull.ui.page.run;

import javax.swing.JPanel;
import javax.swing.Timer;

/** A panel whose timer runs as long as it belongs to a window. */
final class Ticking extends JPanel {
    private final Timer timer;
    private final transient Runnable ending;

    Ticking(Timer timer, Runnable ending) {
        this.timer = timer;
        this.ending = ending;
    }

    @Override
    public void addNotify() {
        super.addNotify();
        timer.start();
    }

    @Override
    public void removeNotify() {
        timer.stop();
        ending.run();
        super.removeNotify();
    }
}
