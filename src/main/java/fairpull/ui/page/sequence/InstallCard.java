package fairpull.ui.page.sequence;

import fairpull.app.document.Edit;
import fairpull.app.document.SequenceEdits;
import fairpull.app.usecase.planning.PlanTyping;
import fairpull.domain.plan.Install;
import fairpull.ui.form.Card;
import fairpull.ui.form.Entry;
import fairpull.ui.form.Prose;
import fairpull.ui.page.Desk;
import fairpull.ui.theme.Words;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** The install that is chosen on the strip: its pulls, its straps, and what can be done with it. */
final class InstallCard extends Card {
    private final Desk desk;
    private final Prose hint = Prose.body(Words.of("install.none"));
    private final Entry<Integer> pulls;
    private final Entry<Integer> warmUps;
    private final JCheckBox unstrapped = new JCheckBox(Words.of("install.unstrapped"));
    private final JPanel form = new JPanel(new MigLayout("insets 0, gap 8 8, fillx, wrap 2, hidemode 3", "[pref!][grow, fill]"));
    private final JPanel acts = new JPanel(new MigLayout("insets 0, gap 6 6, wrap 2", "[grow, fill, sg b][grow, fill, sg b]"));

    InstallCard(Desk desk) {
        super(Words.of("install.head"), new MigLayout("insets 20, gap 8 8, fillx, wrap 1, hidemode 3", "[grow, fill]"));
        this.desk = desk;
        Runnable settle = desk.document()::settle;
        pulls = new Entry<>("install.pulls", text -> PlanTyping.count(text, 1, 1000), count -> chosen().ifPresent(
                install -> desk.typed(SequenceEdits.pulls(install.label(), count, install.warmUpPulls()))), settle);
        warmUps = new Entry<>("install.warmUps", text -> PlanTyping.count(text, 0, 100), count -> chosen().ifPresent(
                install -> desk.typed(SequenceEdits.pulls(install.label(), install.countedPulls(), count))), settle);
        add(hint, "growx, wmin 0");
        form.setOpaque(false);
        form.setVisible(false);
        pulls.addTo(form);
        warmUps.addTo(form);
        unstrapped.setName("install.unstrapped");
        unstrapped.setOpaque(false);
        unstrapped.setToolTipText(Words.tip(Words.of("install.unstrapped.tip")));
        unstrapped.addActionListener(event -> chosen().ifPresent(
                install -> desk.edit(SequenceEdits.unstrapped(install.label(), unstrapped.isSelected()))));
        form.add(unstrapped, "spanx");
        acts.setOpaque(false);
        act("install.earlier", label -> SequenceEdits.move(label, -1), -1);
        act("install.later", label -> SequenceEdits.move(label, 1), 1);
        act("install.add", SequenceEdits::addAfter, 0);
        act("install.other", SequenceEdits::otherPart, 0);
        act("install.remove", SequenceEdits::remove, 0);
        form.add(acts, "spanx, growx");
        add(form, "growx, wmin 0");
        desk.strip().onChosen(label -> refresh());
    }

    private void act(String key, Function<String, Edit> edit, int by) {
        JButton button = new JButton(Words.of(key));
        button.setName(key);
        button.setToolTipText(Words.tip(Words.of(key + ".tip")));
        button.addActionListener(event -> desk.strip().change(edit, by));
        acts.add(button, "wmin 0");
    }

    private Optional<Install> chosen() {
        return desk.strip().chosen().flatMap(label -> desk.document().plan().sequence().installs()
                .filter(install -> install.label().equals(label)).findFirst());
    }

    void refresh() {
        Optional<Install> install = chosen();
        boolean editable = install.isPresent() && !desk.document().isFixed();
        head(install.map(one -> Words.of("install.head.of", one.label(), words(one))).orElse(Words.of("install.head")));
        hint.setVisible(install.isEmpty());
        form.setVisible(install.isPresent());
        pulls.enable(editable);
        warmUps.enable(editable);
        unstrapped.setEnabled(editable);
        for (var act : acts.getComponents()) {
            act.setEnabled(editable);
        }
        pulls.show(install.map(one -> Integer.toString(one.countedPulls())).orElse(""));
        warmUps.show(install.map(one -> Integer.toString(one.warmUpPulls())).orElse(""));
        unstrapped.setSelected(install.map(Install::unstrapped).orElse(false));
    }

    private String words(Install install) {
        return switch (install.part()) {
            case A -> desk.document().plan().question().partA();
            case B -> desk.document().plan().question().partB();
        };
    }
}
