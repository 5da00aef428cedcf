package fairpull.ui.page.run;

import fairpull.app.usecase.running.RunFace;
import fairpull.domain.plan.Condition;
import fairpull.domain.running.GateNow;
import fairpull.domain.unit.UnitSystem;
import fairpull.report.chart.Role;
import fairpull.ui.form.Line;
import fairpull.ui.theme.LocalNumbers;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.function.BiConsumer;
import javax.swing.AbstractAction;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;

/** One gate: its name, a field for what was read, its band, and how it stands. */
final class GateRow {
    private final JLabel label;
    private final JTextField field = new JTextField();
    private final Line band = new Line("", Role.SOFT, Look.Type.SMALL);
    private final Line standing = new Line("", Role.SOFT, Look.Type.STRONG);
    private String shown = "";
    private boolean read;
    private boolean narrow;

    /**
     * A row that sends what is typed: to {@code entered} with Enter, to {@code left} once the field is left otherwise; {@code leaving}
     * hears that Escape leaves the gates.
     */
    GateRow(Condition condition, BiConsumer<Condition, String> entered, BiConsumer<Condition, String> left, Runnable leaving) {
        String key = "run.gate." + condition.id();
        label = new Line(Words.of(key), Role.INK, Look.Type.BODY);
        label.setLabelFor(field);
        field.setName(key);
        DayKeys.readings(field);
        field.setToolTipText(Words.tip(Words.of("run.gate.tip")));
        field.getAccessibleContext().setAccessibleName(Words.of(key));
        field.addActionListener(event -> entered.accept(condition, LocalNumbers.typed(field.getText().strip())));
        field.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent event) {
                if (!event.isTemporary() && !field.getText().isBlank() && !field.getText().equals(LocalNumbers.shown(shown))) {
                    left.accept(condition, LocalNumbers.typed(field.getText().strip()));
                }
            }
        });
        field.getInputMap().put(KeyStroke.getKeyStroke("ESCAPE"), "leave");
        field.getActionMap().put("leave", new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                leaving.run();
            }
        });
        standing.setName(key + ".standing");
    }

    /** Puts it into a panel; where there is less room, its band gives way to how it stands once it was read. */
    void addTo(JPanel rows, boolean narrow) {
        this.narrow = narrow;
        rows.add(label);
        rows.add(field, "h pref-2!");
        if (!narrow) {
            rows.add(band);
        }
        rows.add(standing, "wmin 0");
    }

    /** {@return whether there is a reading for the pull that is next} */
    boolean isRead() {
        return read;
    }

    /** Shows a gate; a field whose reading did not change keeps what is being typed in it. */
    void show(GateNow gate, UnitSystem system) {
        RunFace.GateFace face = RunFace.GateFace.of(gate, system);
        read = gate.state() != GateNow.State.NOT_READ;
        if (!face.typed().equals(shown)) {
            shown = face.typed();
            field.setText(LocalNumbers.shown(shown));
        }
        band.say(face.band());
        stands(narrow && !read ? face.band() : face.standing(), switch (gate.state()) {
            case NOT_READ -> Role.SOFT;
            case OPEN -> Role.INK;
            case HOLDS -> Role.GATE;
            case BROKEN -> Role.B;
        });
        if (gate.state() == GateNow.State.OPEN) {
            explain(Words.of("run.gate.open"));
        }
    }

    /** Says what is wrong with what was typed. */
    void refuse(String words) {
        stands(words, Role.B);
    }

    private void stands(String words, Role role) {
        standing.say(words, role);
        explain(words.equals(band.getText()) ? words : words + " (" + band.getText() + ")");
    }

    private void explain(String words) {
        standing.setToolTipText(Words.tip(words));
        field.getAccessibleContext().setAccessibleDescription(band.getText() + " " + words);
    }

    void focus() {
        field.requestFocusInWindow();
    }
}
