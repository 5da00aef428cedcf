package fairpull.ui.page.run;

import fairpull.app.usecase.running.RunDay;
import fairpull.domain.running.GateNow;
import fairpull.domain.running.NextAction;
import fairpull.ui.form.Buttons;
import fairpull.ui.form.Card;
import fairpull.ui.form.ReasonBar;
import fairpull.ui.form.Teller;
import fairpull.ui.page.Desk;
import fairpull.ui.theme.Words;
import java.awt.Insets;
import java.time.OffsetDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** What can be done on the day, each with its key. */
final class ActsCard extends Card {
    private static final String SOUND = "run.sound";
    private static final String OFF = "off";

    private final Desk desk;
    private final RunPage page;
    private final JPanel keys = new JPanel(new MigLayout("insets 0, gap 8 5, fillx, wrap 2, hidemode 3",
            "[grow, fill, sg][grow, fill, sg]"));
    private final ReasonBar reason = new ReasonBar("run.reason", "run.reason.abort", this::asking);
    private final JButton done;
    private final JButton abort;
    private final JButton swap;
    private final JButton go;
    private final JButton undo;
    private final JButton look;
    private boolean isDone;
    private String last = "";
    private final JCheckBox blind = box("run.blind");
    private final JCheckBox sound = box(SOUND);

    ActsCard(Desk desk, RunPage page) {
        super("", new MigLayout("insets 12 16 10 16, gap 0 0, fillx, wrap 1, hidemode 3", "[grow, fill]"));
        this.desk = desk;
        this.page = page;
        setName("run.acts");
        setFocusable(true);
        done = Buttons.primary("run.done", this::done);
        abort = Buttons.of("run.abort", this::abort);
        swap = Buttons.of("run.swap", this::swap);
        go = Buttons.of("run.go", this::goOn);
        undo = Buttons.of("run.undo", this::undo);
        look = Buttons.primary("run.look", page::look);
        keys.setOpaque(false);
        keys.add(look, "spanx, growx, hmin 34");
        keys.add(done, "spanx, growx, hmin 34");
        for (JButton button : new JButton[] {abort, swap, go, undo}) {
            button.setMargin(new Insets(2, 4, 2, 4));
            keys.add(button, "growx, wmin 0");
        }
        List.of(look, done, abort, swap, go, undo).forEach(DayKeys::leaveFocus);
        keys.add(sound);
        keys.add(blind);
        add(keys, "growx, wmin 0");
        add(reason, "growx, wmin 0");
        blind.addActionListener(event -> desk.blind(blind.isSelected()));
        sound.addActionListener(event -> desk.settings().set(SOUND, sound.isSelected() ? "on" : OFF));
        look.setVisible(false);
    }

    private static JCheckBox box(String key) {
        JCheckBox box = new JCheckBox(Words.of(key));
        box.setName(key);
        box.setMnemonic(Words.mnemonic(key));
        box.setToolTipText(Words.tip(Words.of(key + ".tip")));
        box.setOpaque(false);
        DayKeys.leaveFocus(box);
        return box;
    }

    private void asking(boolean now) {
        keys.setVisible(!now);
        revalidate();
        if (!now) {
            // the field that had the focus is gone; keys of the day need one on the page
            focus();
        }
    }

    /** Takes the focus itself, and gives it to no button, so that the keys of the day are heard and mean what they say. */
    void focus() {
        requestFocusInWindow();
    }

    /** The moment and the pull are those of the key, however long the reason takes. */
    private void ask(String key, Function<String, RunPage.Act> answered) {
        OffsetDateTime at = page.now();
        RunPage.Act seen = page.meant((day, now) -> day);
        reason.ask(key, why -> page.act(at, (day, now) -> answered.apply(why).on(seen.on(day, now), now)));
    }

    /** While a reason is asked for, the keys of the day are not in view, and bring back to it. */
    private boolean isAsking() {
        if (reason.isVisible()) {
            reason.focus();
        }
        return reason.isVisible();
    }

    private void done() {
        if (done.isEnabled() && !isAsking()) {
            page.act(page.now(), page.meant(RunDay::pullDone));
        }
    }

    private void abort() {
        if (abort.isEnabled() && !isAsking()) {
            ask("run.reason.abort", why -> (day, now) -> day.aborted(why, now));
        }
    }

    private void swap() {
        if (swap.isEnabled() && !isAsking()) {
            page.act(page.now(), page.meant(RunDay::swap));
        }
    }

    /** The reason is of the pull whose gates were in view, also where its export comes in while the reason is typed. */
    private void goOn() {
        if (go.isEnabled() && !isAsking()) {
            page.nextPull().ifPresent(pull -> {
                OffsetDateTime at = page.now();
                reason.ask("run.reason.go", why -> page.act(at, (day, now) -> day.goOn(pull, why, now)));
            });
        }
    }

    /** Once the day is done, nothing is taken back unasked. */
    private void undo() {
        if (!undo.isEnabled() || isAsking()) {
            return;
        }
        if (isDone) {
            Map<String, Runnable> answers = new LinkedHashMap<>();
            answers.put("run.undo.no", () -> { });
            answers.put("run.undo.yes", this::takeBack);
            Teller.around(this).ask(Words.of("run.undo.question", last), answers);
        } else {
            takeBack();
        }
    }

    private void takeBack() {
        String gone = last;
        page.act(page.now(), RunDay::undo, () -> desk.words().accept(Words.of("run.undo.done", gone)));
    }

    /** Binds the keys to the page. */
    void bindKeys(JComponent view) {
        DayKeys.bindSpaceBar(view, this::done);
        DayKeys.bind(view, "X", this::abort);
        DayKeys.bind(view, "S", this::swap);
        DayKeys.bind(view, "G", this::goOn);
        DayKeys.bind(view, "U", this::undo);
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
        undo.setEnabled(day.canUndo());
        isDone = next.kind() == NextAction.Kind.DONE;
        last = day.lastAct();
        look.setVisible(next.kind() == NextAction.Kind.LOOK);
        blind.setSelected(desk.isBlind());
        blind.setEnabled(next.kind() != NextAction.Kind.DONE);
        sound.setSelected(isLoud());
        revalidate();
    }
}
