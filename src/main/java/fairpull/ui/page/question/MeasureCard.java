package fairpull.ui.page.question;

import fairpull.app.document.QuestionEdits;
import fairpull.app.usecase.planning.PlanTyping;
import fairpull.domain.plan.Correction;
import fairpull.domain.plan.Measure;
import fairpull.domain.plan.Plan;
import fairpull.domain.unit.UnitSystem;
import fairpull.ui.form.Card;
import fairpull.ui.form.Choice;
import fairpull.ui.form.Entry;
import fairpull.ui.form.Prose;
import fairpull.ui.page.Desk;
import fairpull.ui.theme.Words;
import java.util.List;

/** The number that decides, with its definition as it is typed, and the numbers beside it. */
final class MeasureCard extends Card {
    private static final String OWN = "own";
    private static final List<String> KINDS = List.of("band", "peakPower", "peakTorque", "atSpeed", "elapsed", "trap", OWN);

    private final Desk desk;
    private final Choice<String> kind;
    private final Entry<Measure> measure;
    private final Prose definition = Prose.small("");
    private final Choice<Correction> correction;
    private final Entry<List<Measure>> further;

    MeasureCard(Desk desk) {
        super(Words.of("measure.head"));
        this.desk = desk;
        Runnable settle = desk.document()::settle;
        kind = new Choice<>("measure.kind", KINDS, key -> Words.of("measure.kind." + key), this::take);
        measure = new Entry<>("question.measure", text -> typing().measure(text),
                decides -> desk.typed(QuestionEdits.deciding(decides)), settle);
        correction = new Choice<>("measure.correction", List.of(Correction.values()), PlanTyping::correction,
                standard -> desk.edit(QuestionEdits.deciding(PlanTyping.corrected(plan().question().deciding(), standard))));
        further = new Entry<>("measure.further", text -> typing().measures(text),
                measures -> desk.typed(QuestionEdits.further(measures)), settle);
        kind.addTo(this);
        measure.addTo(this);
        add(definition, "skip 1, growx, wmin 0");
        correction.addTo(this);
        further.addTo(this);
    }

    private Plan plan() {
        return desk.document().plan();
    }

    private PlanTyping typing() {
        return PlanTyping.in(plan());
    }

    private void take(String key) {
        if (!key.equals(OWN)) {
            boolean us = desk.settings().units() == UnitSystem.US;
            String text = Words.of("measure.text." + key, us ? "hp" : "kW", us ? "lbf·ft" : "N·m", us ? "60-100 mph" : "100-160 km/h",
                    us ? "mph" : "km/h");
            desk.edit(QuestionEdits.deciding(typing().measure(text)));
        }
    }

    void refresh() {
        Measure deciding = plan().question().deciding();
        kind.show(OWN);
        measure.show(PlanTyping.text(deciding));
        definition.setText(PlanTyping.definition(deciding));
        correction.show(deciding.correction());
        further.show(PlanTyping.text(plan().question().further()));
        boolean open = !desk.document().isFixed();
        kind.enable(open);
        measure.enable(open);
        correction.enable(open);
        further.enable(open);
    }
}
