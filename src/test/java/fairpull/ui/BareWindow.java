package fairpull.ui;

import fairpull.ui.theme.Look;
import fairpull.ui.theme.Mode;
import java.awt.BorderLayout;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** A window of our look with ten fields and nothing behind it: what Swing, the look and the typeface cost by themselves. */
final class BareWindow {
    private static final int FIELDS = 10;

    private BareWindow() {
    }

    /** Shows it. */
    public static void main(String[] arguments) {
        FirstPaint.say();
        SwingUtilities.invokeLater(() -> {
            Look.install(Mode.LIGHT, 1);
            JPanel form = new JPanel(new MigLayout("wrap 2"));
            for (int field = 0; field < FIELDS; field++) {
                form.add(new JLabel("Field " + field));
                form.add(new JTextField("text", 30));
            }
            JFrame frame = new JFrame("bare");
            frame.add(form, BorderLayout.CENTER);
            frame.setSize(1280, 800);
            frame.setVisible(true);
        });
    }
}
