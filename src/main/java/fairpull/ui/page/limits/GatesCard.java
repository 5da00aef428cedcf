package fairpull.ui.page.limits;

import fairpull.app.document.RigEdits;
import fairpull.app.usecase.typing.GateTyping;
import fairpull.domain.plan.Condition;
import fairpull.ui.form.Card;
import fairpull.ui.form.Entry;
import fairpull.ui.form.Prose;
import fairpull.ui.page.Desk;
import fairpull.ui.theme.Words;
import java.util.EnumMap;
import java.util.Map;

/** The gates: one line a condition, empty where it is no gate. */
final class GatesCard extends Card {
    private final Desk desk;
    private final Map<Condition, Entry<String>> gates = new EnumMap<>(Condition.class);

    GatesCard(Desk desk) {
        super(Words.of("gates.head"));
        this.desk = desk;
        add(Prose.small(Words.of("gates.sub")), "spanx, growx, wmin 0");
        for (Condition condition : Condition.values()) {
            Entry<String> gate = new Entry<>("gate." + condition.id(), text -> text, text -> desk.typed(RigEdits.gates(GateTyping.with(
                    desk.document().plan().gates(), condition, text, desk.settings().units()))), desk.document()::settle);
            gate.addTo(this);
            gates.put(condition, gate);
        }
        desk.settings().listen(this::refresh);
    }

    void refresh() {
        gates.forEach((condition, gate) -> {
            gate.show(GateTyping.text(desk.document().plan().gates(), condition, desk.settings().units()));
            gate.hintIn(desk.settings().units());
            gate.enable(!desk.document().isFixed());
        });
    }
}
