package fairpull.ui.page.sequence;

import fairpull.app.document.RigEdits;
import fairpull.app.task.Latest;
import fairpull.app.usecase.UsageException;
import fairpull.app.usecase.planning.LooksTyping;
import fairpull.domain.plan.Condition;
import fairpull.domain.plan.Looks;
import fairpull.domain.plan.Plan;
import fairpull.ui.form.Card;
import fairpull.ui.form.Choice;
import fairpull.ui.form.Entry;
import fairpull.ui.form.FaultWords;
import fairpull.ui.form.Prose;
import fairpull.ui.page.Desk;
import fairpull.ui.theme.Words;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JCheckBox;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** When the data are looked at before the end, and the conditions whose slope is taken out. */
final class LooksCard extends Card {
    private final Desk desk;
    private final Choice<Optional<Looks.Spending>> spending;
    private final Entry<Optional<Looks>> places;
    private final Prose cost = Prose.small("");
    private final Map<Condition, JCheckBox> covariates = new EnumMap<>(Condition.class);
    private final Latest<String> reckoning = new Latest<>(SwingUtilities::invokeLater);
    private Plan shown;

    LooksCard(Desk desk) {
        super(Words.of("looks.head"));
        this.desk = desk;
        List<Optional<Looks.Spending>> kinds = Stream.concat(Stream.of(Optional.<Looks.Spending>empty()),
                Arrays.stream(Looks.Spending.values()).map(Optional::of)).toList();
        spending = new Choice<>("looks.spending", kinds,
                kind -> Words.of("looks.spending." + kind.map(Looks.Spending::name).orElse("NONE")), this::spend);
        places = new Entry<>("looks.places", text -> LooksTyping.parse(text, plan(), spendingNow()),
                looks -> desk.typed(RigEdits.looks(looks)), desk.document()::settle).asWritten();
        add(Prose.small(Words.of("looks.sub")), "spanx, growx, wmin 0");
        spending.addTo(this);
        places.addTo(this);
        cost.setName("looks.cost");
        add(cost, "skip 1, growx, wmin 0, hidemode 3");
        add(Prose.small(Words.of("covariates.sub")), "spanx, growx, wmin 0, gaptop 8");
        JPanel boxes = new JPanel(new MigLayout("insets 0, gap 12 2, wrap 2"));
        boxes.setOpaque(false);
        for (Condition condition : Condition.values()) {
            JCheckBox box = new JCheckBox(condition.words());
            box.setName("covariate." + condition.id());
            box.setOpaque(false);
            box.addActionListener(event -> desk.edit(RigEdits.covariates(chosen())));
            covariates.put(condition, box);
            boxes.add(box);
        }
        add(boxes, "spanx");
    }

    private Plan plan() {
        return desk.document().plan();
    }

    private Looks.Spending spendingNow() {
        return plan().looks().map(Looks::spending).orElse(Looks.Spending.OBRIEN_FLEMING);
    }

    private void spend(Optional<Looks.Spending> kind) {
        try {
            desk.edit(RigEdits.looks(kind.map(one -> plan().looks().map(looks -> new Looks(one, looks.afterInstalls()))
                    .orElseGet(() -> LooksTyping.everywhere(plan(), one)))));
        } catch (UsageException noPlace) {
            desk.words().accept(noPlace.problem());
            spending.show(plan().looks().map(Looks::spending));
        }
    }

    private List<Condition> chosen() {
        return covariates.entrySet().stream().filter(entry -> entry.getValue().isSelected()).map(Map.Entry::getKey).toList();
    }

    void refresh() {
        Plan plan = plan();
        boolean open = !desk.document().isFixed();
        spending.show(plan.looks().map(Looks::spending));
        spending.enable(open);
        places.show(LooksTyping.text(plan.looks()));
        places.enable(open);
        covariates.forEach((condition, box) -> {
            box.setSelected(plan.analysis().covariates().contains(condition));
            box.setEnabled(open);
        });
        if (!plan.equals(shown)) {
            shown = plan;
            cost.setVisible(plan.looks().isPresent());
            reckoning.ask(progress -> LooksTyping.cost(plan), ended -> {
                ended.tell(cost::setText, fault -> cost.setText(FaultWords.of(fault)));
                revalidate();
            });
        }
    }
}
