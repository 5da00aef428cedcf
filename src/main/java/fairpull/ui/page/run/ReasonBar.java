package fairpull.ui.page.run;

import fairpull.ui.form.Buttons;
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

/** Asks in place for a reason, where the keys of the day stand otherwise. */
final class ReasonBar extends JPanel {
    private final JLabel label = new JLabel();
    private final JTextField field = new JTextField();
    private final transient Consumer<Boolean> asking;
    private transient Consumer<String> wanted = reason -> { };

    /** A bar; {@code asking} hears whether it asks. */
    ReasonBar(Consumer<Boolean> asking) {
        super(new MigLayout("insets 0, gap 8 6, fillx, wrap 2", "[grow, fill, sg][grow, fill, sg]"));
        this.asking = asking;
        setOpaque(false);
        setName("run.reason");
        field.setName("run.reason.field");
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
        add(Buttons.primary("run.reason.write", this::write), "growx, wmin 0");
        add(Buttons.of("run.reason.leave", this::leave), "growx, wmin 0");
        name("run.reason.abort");
        setVisible(false);
    }

    private void name(String key) {
        label.setText(Words.of(key));
        field.getAccessibleContext().setAccessibleName(Words.of(key));
        field.setToolTipText(Words.tip(Words.of(key)));
    }

    /** Asks; {@code reason} hears the answer unless it is left. */
    void ask(String key, Consumer<String> reason) {
        wanted = reason;
        name(key);
        field.setText("");
        asks(true);
        // the letter of the key that asked is still to be heard, and is no part of the reason
        SwingUtilities.invokeLater(field::requestFocusInWindow);
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
