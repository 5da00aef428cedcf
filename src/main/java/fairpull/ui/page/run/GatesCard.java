package fairpull.ui.page.run;

import fairpull.app.usecase.RunFace;
import fairpull.domain.plan.Condition;
import fairpull.domain.running.GateNow;
import fairpull.domain.unit.UnitSystem;
import fairpull.report.chart.Role;
import fairpull.ui.form.Card;
import fairpull.ui.form.Line;
import fairpull.ui.form.Prose;
import fairpull.ui.theme.LocalNumbers;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.util.List;
import java.util.function.BiConsumer;
import javax.swing.JLabel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;

/** The gates before the next pull: a reading typed, its band, and whether it holds, in words. */
final class GatesCard extends Card {
    private final BiConsumer<Condition, String> typed;
    private List<GateNow> shown = List.of();
    private UnitSystem system;
    private boolean asked;

    /** A card that sends what is typed. */
    GatesCard(BiConsumer<Condition, String> typed) {
        super(Words.of("run.gates.head"), new MigLayout("insets 16 20 16 20, gap 12 6, fillx, wrap 4",
                "[pref!][110!, fill][pref!][grow, fill]"));
        this.typed = typed;
        setName("run.gates");
    }

    /** Shows gates; fields in which nothing changed keep what is typed in them. */
    void show(List<GateNow> gates, boolean planned, UnitSystem units) {
        if (asked && gates.equals(shown) && units == system) {
            return;
        }
        asked = true;
        shown = List.copyOf(gates);
        system = units;
        while (getComponentCount() > 1) {
            remove(1);
        }
        if (gates.isEmpty()) {
            add(Prose.small(Words.of(planned ? "run.gates.wait" : "run.gates.none")), "spanx, growx, wmin 0");
        }
        gates.forEach(this::row);
        revalidate();
        repaint();
    }

    private void row(GateNow gate) {
        RunFace.GateFace face = RunFace.GateFace.of(gate, system);
        Condition condition = gate.gate().condition();
        String key = "run.gate." + condition.id();
        JTextField field = new JTextField(LocalNumbers.shown(face.typed()));
        field.setName(key);
        field.setToolTipText(Words.tip(Words.of("run.gate.tip")));
        field.getAccessibleContext().setAccessibleName(Words.of(key));
        field.addActionListener(event -> typed.accept(condition, LocalNumbers.typed(field.getText().strip())));
        JLabel label = new Line(Words.of(key), Role.INK, Look.Type.BODY);
        label.setLabelFor(field);
        Line standing = new Line(face.standing(), gate.state() == GateNow.State.HOLDS ? Role.GATE
                : gate.state() == GateNow.State.BROKEN ? Role.B : Role.SOFT, Look.Type.STRONG);
        standing.setName(key + ".standing");
        add(label);
        add(field);
        add(new Line(face.band(), Role.SOFT, Look.Type.SMALL));
        add(standing, "wmin 0");
    }
}
