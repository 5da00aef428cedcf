package fairpull.ui.form;

import fairpull.ui.theme.Words;
import java.awt.event.ActionEvent;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** Asks in place for a reason, where other keys stand otherwise. */
public final class ReasonBar extends JPanel {
    private final JLabel label = new JLabel();
    private final JTextField field = new JTextField();
    private final transient Consumer<Boolean> asking;
    private transient Consumer<String> wanted = reason -> { };

    /** A bar whose words begin with {@code key} and which asks {@code question} first; {@code asking} hears whether it asks. */
    public ReasonBar(String key, String question, Consumer<Boolean> asking) {
        super(new MigLayout("insets 0, gap 8 6, fillx, wrap 2", "[grow, fill, sg][grow, fill, sg]"));
        this.asking = asking;
        setOpaque(false);
        setName(key);
        field.setName(key + ".field");
        label.setLabelFor(field);
        field.addActionListener(event -> write());
        field.getInputMap().put(KeyStroke.getKeyStroke("ESCAPE"), "leave");
        field.getActionMap().put("leave", new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                leave();
            }
        });
        add(label, "spanx, growx, wmin 0");
        add(field, "spanx, growx, wmin 80");
        add(Buttons.primary(key + ".write", this::write), "growx, wmin 0");
        add(Buttons.of(key + ".leave", this::leave), "growx, wmin 0");
        name(question);
        setVisible(false);
    }

    private void name(String key) {
        label.setText(Words.of(key));
        field.getAccessibleContext().setAccessibleName(Words.of(key));
        field.setToolTipText(Words.tip(Words.of(key)));
    }

    /** Asks; {@code reason} hears the answer unless it is left. */
    public void ask(String key, Consumer<String> reason) {
        wanted = reason;
        name(key);
        field.setText("");
        asks(true);
        // the letter of the key that asked is still to be heard, and is no part of the reason
        SwingUtilities.invokeLater(field::requestFocusInWindow);
    }

    /** Goes on being asked for where the focus went elsewhere. */
    public void focus() {
        field.requestFocusInWindow();
    }

    private void asks(boolean now) {
        setVisible(now);
        asking.accept(now);
    }

    private void leave() {
        asks(false);
    }

    private void write() {
        if (!field.getText().isBlank()) {
            asks(false);
            wanted.accept(field.getText().strip());
        }
    }
}
