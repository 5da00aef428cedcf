package fairpull.ui.page.run;

import fairpull.app.usecase.RunDay;
import fairpull.domain.running.GateNow;
import fairpull.domain.running.NextAction;
import fairpull.ui.form.Buttons;
import fairpull.ui.form.Card;
import fairpull.ui.page.Desk;
import fairpull.ui.theme.Words;
import java.awt.Insets;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import net.miginfocom.swing.MigLayout;

/** What can be done on the day, each with its key. */
final class ActsCard extends Card {
    private static final String ON = "on";
    private static final String OFF = "off";
    private static final String SOUND = "run.sound";

    private final Desk desk;
    private final RunPage page;
    private final JButton done;
    private final JButton abort;
    private final JButton swap;
    private final JButton go;
    private final JButton undo;
    private final JButton look;
    private final JCheckBox blind = box("run.blind");
    private final JCheckBox sound = box(SOUND);

    ActsCard(Desk desk, RunPage page) {
        super("", new MigLayout("insets 14 16 12 16, gap 8 6, fillx, wrap 2, hidemode 3",
                "[grow, fill, sg][grow, fill, sg]"));
        this.desk = desk;
        this.page = page;
        setName("run.acts");
        done = Buttons.primary("run.done", this::done);
        abort = Buttons.of("run.abort", this::abort);
        swap = Buttons.of("run.swap", this::swap);
        go = Buttons.of("run.go", this::goOn);
        undo = Buttons.of("run.undo", this::undo);
        look = Buttons.primary("run.look", page::look);
        add(look, "spanx, growx");
        add(done, "spanx, growx, h 34!");
        for (JButton button : new JButton[] {abort, swap, go, undo}) {
            button.setMargin(new Insets(2, 4, 2, 4));
            add(button, "growx, wmin 0");
        }
        add(sound);
        add(blind);
        blind.addActionListener(event -> page.keep("blind", blind.isSelected() ? ON : OFF));
        sound.addActionListener(event -> desk.settings().set(SOUND, sound.isSelected() ? ON : OFF));
        look.setVisible(false);
    }

    private static JCheckBox box(String key) {
        JCheckBox box = new JCheckBox(Words.of(key));
        box.setName(key);
        box.setMnemonic(Words.mnemonic(key));
        box.setToolTipText(Words.tip(Words.of(key + ".tip")));
        box.setOpaque(false);
        return box;
    }

    private void done() {
        if (done.isEnabled()) {
            page.act(RunDay::pullDone);
        }
    }

    private void abort() {
        if (abort.isEnabled()) {
            page.ask("run.reason.abort", why -> (day, now) -> day.aborted(why, now));
        }
    }

    private void swap() {
        if (swap.isEnabled()) {
            page.act(RunDay::swap);
        }
    }

    private void goOn() {
        if (go.isEnabled()) {
            page.ask("run.reason.go", why -> (day, now) -> day.goOn(why, now));
        }
    }

    private void undo() {
        if (undo.isEnabled()) {
            page.act(RunDay::undo);
        }
    }

    /** Binds the keys to the page. */
    void bindKeys(JComponent view) {
        DayKeys.bind(view, "SPACE", this::done);
        DayKeys.bind(view, "X", this::abort);
        DayKeys.bind(view, "S", this::swap);
        DayKeys.bind(view, "G", this::goOn);
        DayKeys.bind(view, "U", this::undo);
    }

    boolean isBlind() {
        return desk.settings().find(page.setting("blind")).filter(ON::equals).isPresent();
    }

    boolean isLoud() {
        return desk.settings().find(SOUND).filter(OFF::equals).isEmpty();
    }

    /** Shows what can be done now. */
    void show(RunDay day, NextAction next) {
        boolean pull = next.pull().isPresent();
        done.setEnabled(pull);
        abort.setEnabled(pull);
        swap.setEnabled(day.canSwap(next));
        go.setEnabled(day.gates(next).stream().anyMatch(gate -> gate.state() == GateNow.State.BROKEN && gate.overridden().isEmpty()));
        undo.setEnabled(day.last().isPresent());
        look.setVisible(next.kind() == NextAction.Kind.LOOK);
        blind.setSelected(isBlind());
        sound.setSelected(isLoud());
        revalidate();
    }
}
