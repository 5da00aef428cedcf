package fairpull.ui.page.limits;

import fairpull.app.task.Latest;
import fairpull.app.usecase.conditions.AirCheck;
import fairpull.domain.plan.Plan;
import fairpull.report.chart.Role;
import fairpull.ui.form.Card;
import fairpull.ui.form.Entry;
import fairpull.ui.form.FaultWords;
import fairpull.ui.form.Prose;
import fairpull.ui.page.Desk;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.util.List;
import javax.swing.SwingUtilities;

/** The air now: may a pull start, and how far may it move until the last install. It belongs to the day, not to the plan. */
final class AirCard extends Card {
    private final Desk desk;
    private final Latest<AirCheck> reckoning = new Latest<>(SwingUtilities::invokeLater);
    private final Prose decision = new Prose("", Role.INK, Look.Type.HEAD);
    private final Prose text = Prose.small("");
    private final List<Entry<String>> entries;
    private final String[] typed = {"", "", "", "", ""};
    private Plan shown;

    AirCard(Desk desk) {
        super(Words.of("air.head"));
        this.desk = desk;
        entries = List.of(entry("air.temperature", 0), entry("air.pressure", 1), entry("air.humidity", 2), entry("air.elevation", 3),
                entry("air.first", 4));
        entries.forEach(entry -> entry.addTo(this));
        desk.settings().listen(this::hint);
        hint();
        decision.setName("air.decision");
        add(decision, "spanx, growx, wmin 0");
        add(text, "spanx, growx, wmin 0");
    }

    private Entry<String> entry(String key, int place) {
        return new Entry<>(key, String::strip, value -> {
            typed[place] = value;
            reckon();
        }, () -> { }).asTyped();
    }

    private void hint() {
        entries.forEach(entry -> entry.hintIn(desk.settings().units()));
    }

    void refresh() {
        if (!desk.document().plan().equals(shown)) {
            reckon();
        }
    }

    private void reckon() {
        Plan plan = desk.document().plan();
        shown = plan;
        AirCheck.Typed air = new AirCheck.Typed(typed[0], typed[1], typed[2], typed[3], typed[4]);
        reckoning.ask(progress -> AirCheck.of(plan, air), ended -> ended.tell(
                check -> tell(check.decision().isEmpty() ? Words.of("air.nothing") : check.decision(), check.text()),
                fault -> tell(FaultWords.of(fault), "")));
    }

    private void tell(String decided, String why) {
        decision.setText(decided);
        text.setText(why);
        revalidate();
    }
}
