package fairpull.ui.page.run;

import fairpull.domain.plan.Condition;
import fairpull.domain.running.GateNow;
import fairpull.domain.unit.UnitSystem;
import fairpull.ui.form.Card;
import fairpull.ui.form.Prose;
import fairpull.ui.theme.Words;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/**
 * The gates before the next pull: a reading typed, its band, and whether it holds, in words. Enter goes on to the next gate that was not
 * read, and behind the last one back to the keys of the day. Many gates stand in two columns.
 */
final class GatesCard extends Card {
    /** So many stand one below the other. */
    private static final int ONE_COLUMN = 4;

    private final BiConsumer<Condition, String> typed;
    private final Runnable leaving;
    private final JPanel panel = new JPanel();
    private final Map<Condition, GateRow> rows = new LinkedHashMap<>();
    private Optional<Condition> answered = Optional.empty();

    /** A card that sends what is typed; {@code leaving} hears that nothing is left to be read. */
    GatesCard(BiConsumer<Condition, String> typed, Runnable leaving) {
        super(Words.of("run.gates.head"), new MigLayout("insets 10 20 10 20, gap 0 2, fillx, wrap 1", "[grow, fill]"));
        this.typed = typed;
        this.leaving = leaving;
        setName("run.gates");
        panel.setOpaque(false);
        add(panel, "growx, wmin 0");
        lay(List.of(), false);
    }

    /** Shows gates; {@code planned} is whether the plan has any. */
    void show(List<GateNow> gates, boolean planned, UnitSystem units) {
        if (!gates.stream().map(one -> one.gate().condition()).toList().equals(List.copyOf(rows.keySet())) || gates.isEmpty()) {
            lay(gates, planned);
        }
        gates.forEach(gate -> rows.get(gate.gate().condition()).show(gate, units));
        answered.filter(rows::containsKey).ifPresent(this::goOnFrom);
        answered = Optional.empty();
        revalidate();
        repaint();
    }

    private void lay(List<GateNow> gates, boolean planned) {
        rows.clear();
        panel.removeAll();
        boolean many = gates.size() > ONE_COLUMN;
        String gate = many ? "[pref!][84!, fill][grow, fill]" : "[pref!][104!, fill][pref!][grow, fill]";
        panel.setLayout(new MigLayout("insets 0, gap 10 3, fillx, wrap " + (many ? 6 : 4), many ? gate + "16" + gate : gate));
        if (gates.isEmpty()) {
            panel.add(Prose.small(Words.of(planned ? "run.gates.wait" : "run.gates.none")), "spanx, growx, wmin 0");
        }
        for (GateNow one : gates) {
            GateRow row = new GateRow(one.gate().condition(), this::answer, typed, leaving);
            rows.put(one.gate().condition(), row);
            row.addTo(panel, many);
        }
    }

    private void answer(Condition condition, String words) {
        answered = Optional.of(condition);
        typed.accept(condition, words);
    }

    private void goOnFrom(Condition condition) {
        List<GateRow> all = List.copyOf(rows.values());
        int place = all.indexOf(rows.get(condition));
        all.subList(place, all.size()).stream().filter(row -> !row.isRead()).findFirst().ifPresentOrElse(GateRow::focus, leaving);
    }

    /** Says beside its field what is wrong with what was typed. */
    void refuse(Condition condition, String words) {
        answered = Optional.empty();
        Optional.ofNullable(rows.get(condition)).ifPresent(row -> row.refuse(words));
    }
}
