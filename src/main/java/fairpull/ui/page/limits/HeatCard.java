package fairpull.ui.page.limits;

import fairpull.app.task.Latest;
import fairpull.app.usecase.conditions.HeatCheck;
import fairpull.domain.plan.Plan;
import fairpull.report.chart.Drawing;
import fairpull.report.chart.PlanStrip;
import fairpull.report.chart.Role;
import fairpull.ui.form.Card;
import fairpull.ui.form.ChartView;
import fairpull.ui.form.Entry;
import fairpull.ui.form.FaultWords;
import fairpull.ui.form.Prose;
import fairpull.ui.page.Desk;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JFileChooser;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** The heat of the day, from a logged cool-down or a typed time constant; what it predicts runs beneath the day strip. */
final class HeatCard extends Card {
    private final Desk desk;
    private final Latest<HeatCheck> reckoning = new Latest<>(SwingUtilities::invokeLater);
    private final Entry<String> timeConstant;
    private final Entry<String> rise;
    private final Entry<String> ambient;
    private final JButton log = new JButton(Words.of("heat.log"));
    private final Prose heading = new Prose("", Role.INK, Look.Type.HEAD);
    private final JPanel answer = new JPanel(new MigLayout("insets 0, gap 4 8, fillx, wrap 1, hidemode 3", "[grow, fill]"));
    private HeatCheck.Typed typed = new HeatCheck.Typed(Optional.empty(), "", "", "");
    private Plan shown;

    HeatCard(Desk desk) {
        super(Words.of("heat.head"));
        this.desk = desk;
        timeConstant = new Entry<>("heat.timeConstant", String::strip,
                text -> reckon(new HeatCheck.Typed(Optional.empty(), text, typed.pullRise(), typed.ambient())), () -> { }).asTyped();
        rise = new Entry<>("heat.rise", String::strip,
                text -> reckon(new HeatCheck.Typed(typed.log(), typed.timeConstant(), text, typed.ambient())), () -> { }).asTyped();
        ambient = new Entry<>("heat.ambient", String::strip,
                text -> reckon(new HeatCheck.Typed(typed.log(), typed.timeConstant(), typed.pullRise(), text)), () -> { }).asTyped();
        add(Prose.small(Words.of("heat.sub")), "spanx, growx, wmin 0");
        log.setName("heat.log");
        log.setMnemonic(Words.mnemonic("heat.log"));
        log.setToolTipText(Words.tip(Words.of("heat.log.tip")));
        log.addActionListener(event -> choose());
        add(log, "skip 1, growx 0");
        timeConstant.addTo(this);
        rise.addTo(this);
        ambient.addTo(this);
        desk.settings().listen(this::hint);
        hint();
        answer.setOpaque(false);
        heading.setName("heat.heading");
        add(heading, "spanx, growx, wmin 0");
        add(answer, "spanx, growx, wmin 0");
    }

    private void hint() {
        List.of(rise, ambient).forEach(entry -> entry.hintIn(desk.settings().units()));
    }

    private void choose() {
        JFileChooser chooser = new JFileChooser(desk.settings().find("logs").orElse(null));
        chooser.setDialogTitle(Words.of("heat.log.choose"));
        if (chooser.showOpenDialog(this) == JFileChooser.APPROVE_OPTION) {
            desk.settings().set("logs", chooser.getSelectedFile().getParent());
            take(chooser.getSelectedFile().toPath());
        }
    }

    /** Takes a logged cool-down. */
    void take(Path file) {
        reckon(new HeatCheck.Typed(Optional.of(file), "", typed.pullRise(), typed.ambient()));
    }

    void refresh() {
        if (!desk.document().plan().equals(shown)) {
            reckon(typed);
        }
    }

    private void reckon(HeatCheck.Typed asked) {
        typed = asked;
        Plan plan = desk.document().plan();
        shown = plan;
        reckoning.ask(progress -> HeatCheck.of(plan, asked), ended -> ended.tell(this::tell, fault -> {
            heading.setText(FaultWords.of(fault));
            answer.removeAll();
            shownOnStrip(Optional.empty());
        }));
    }

    private void tell(HeatCheck check) {
        heading.setText(check.heading().isEmpty() ? Words.of("heat.nothing") : check.heading());
        answer.removeAll();
        check.sentences().forEach(sentence -> answer.add(Prose.body(sentence), "growx, wmin 0"));
        for (Drawing drawing : check.charts()) {
            ChartView view = new ChartView("heat.chart", (int) drawing.height(), (width, height) -> Optional.of(new ChartView.Shown(drawing,
                    List.of())));
            answer.add(view, "growx, wmin 0");
        }
        shownOnStrip(check.strip());
    }

    private void shownOnStrip(Optional<PlanStrip.Heat> predicted) {
        desk.strip().show(predicted);
        revalidate();
        repaint();
    }
}
