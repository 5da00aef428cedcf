package fairpull.ui.form;

import fairpull.ui.theme.Words;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import net.miginfocom.swing.MigLayout;

/** How far work is that a page waits for, in words and as a bar; comes into view only where the work takes longer than a glance. */
public final class HowFar extends JPanel {
    private static final long GLANCE_NS = 300_000_000;

    private final JProgressBar bar = new JProgressBar(0, 100);
    private final Prose words = Prose.body("");
    private long since;

    /** One of a name, by which tests find it. */
    public HowFar(String name) {
        super(new MigLayout("insets 0, gap 8 6, fillx, wrap 1", "[grow, fill]"));
        setOpaque(false);
        setVisible(false);
        setName(name);
        bar.getAccessibleContext().setAccessibleName(Words.of("howFar"));
        add(words, "growx, wmin 0");
        add(bar, "growx");
    }

    /** Work begins; says what it is. */
    public void begins(String what) {
        since = System.nanoTime();
        words.setText(what);
        bar.setValue(0);
        setVisible(false);
    }

    /** A share of it is done, 0 … 1. */
    public void reached(double share) {
        bar.setValue((int) Math.round(100 * share));
        if (!isVisible() && share < 1 && System.nanoTime() - since > GLANCE_NS) {
            setVisible(true);
        }
    }

    /** It has ended. */
    public void ends() {
        setVisible(false);
    }
}
