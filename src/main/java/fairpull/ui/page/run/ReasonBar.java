package fairpull.ui.page.run;

import fairpull.ui.form.Buttons;
import fairpull.ui.form.Card;
import fairpull.ui.theme.Words;
import java.awt.event.ActionEvent;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.JLabel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;

/** Asks in place for a reason. While it does not ask it takes no room. */
final class ReasonBar extends Card {
    private final JLabel label = new JLabel();
    private final JTextField field = new JTextField();
    private Consumer<String> wanted = reason -> { };

    ReasonBar() {
        super("", new MigLayout("insets 8 14 8 8, gap 8 6, fillx", "[pref!][grow, fill][pref!][pref!]"));
        setName("run.reason");
        field.setName("run.reason.field");
        label.setLabelFor(field);
        field.addActionListener(event -> write());
        field.getInputMap().put(KeyStroke.getKeyStroke("ESCAPE"), "leave");
        field.getActionMap().put("leave", new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                setVisible(false);
            }
        });
        add(label);
        add(field, "growx, wmin 80");
        add(Buttons.of("run.reason.write", this::write));
        add(Buttons.of("run.reason.leave", () -> setVisible(false)));
        field.getAccessibleContext().setAccessibleName(Words.of("run.reason.abort"));
        field.setToolTipText(Words.tip(Words.of("run.reason.abort")));
        setVisible(false);
    }

    /** Asks; {@code reason} hears the answer unless it is left. */
    void ask(String key, Consumer<String> reason) {
        wanted = reason;
        label.setText(Words.of(key));
        field.setText("");
        field.getAccessibleContext().setAccessibleName(Words.of(key));
        field.setToolTipText(Words.tip(Words.of(key)));
        setVisible(true);
        revalidate();
        field.requestFocusInWindow();
    }

    private void write() {
        if (!field.getText().isBlank()) {
            setVisible(false);
            wanted.accept(field.getText().strip());
        }
    }
}
