package fairpull.ui.form;

import fairpull.ui.theme.Words;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;

/** What stands behind words, one click or one press of the space bar away: a button that says what it shows, and that beneath it. */
public final class Fold extends JPanel {
    private final String key;
    private final JToggleButton button;
    private final JPanel inside = new JPanel(new MigLayout("insets 0, gap 8 8, fillx, wrap 1", "[grow, fill]"));

    /** A closed fold; {@code key} is what its button says, {@code key.close} what it says while open, {@code of} what both are about. */
    public Fold(String key, String of) {
        super(new MigLayout("insets 0, gap 8 8, fillx, wrap 1, hidemode 3", "[grow, fill]"));
        this.key = key;
        button = new JToggleButton(Words.of(key));
        setOpaque(false);
        inside.setOpaque(false);
        button.setName(key);
        button.setToolTipText(Words.tip(Words.of(key + ".tip")));
        button.getAccessibleContext().setAccessibleName(Words.of(key) + ": " + of);
        button.addActionListener(event -> open(button.isSelected()));
        add(button, "growx 0");
        add(inside, "growx, wmin 0");
        open(false);
    }

    /** Puts something inside. */
    public void put(JComponent part) {
        inside.add(part, "growx, wmin 0");
    }

    /** {@return whether nothing stands behind it} */
    public boolean isEmpty() {
        return inside.getComponentCount() == 0;
    }

    /** Opens or closes it. */
    public void open(boolean open) {
        button.setSelected(open);
        button.setText(Words.of(open ? key + ".close" : key));
        inside.setVisible(open);
        revalidate();
    }
}
