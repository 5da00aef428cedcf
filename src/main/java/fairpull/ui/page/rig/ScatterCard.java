package fairpull.ui.page.rig;

import fairpull.app.document.RigEdits;
import fairpull.app.task.Job;
import fairpull.app.usecase.UsageException;
import fairpull.app.usecase.planning.PlanTyping;
import fairpull.app.usecase.planning.ScatterSource;
import fairpull.app.usecase.typing.RigTyping;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Rig;
import fairpull.domain.plan.Scatter;
import fairpull.ui.form.Card;
import fairpull.ui.form.Columns;
import fairpull.ui.form.Entry;
import fairpull.ui.form.FaultWords;
import fairpull.ui.form.Prose;
import fairpull.ui.page.Desk;
import fairpull.ui.theme.Words;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JFileChooser;
import javax.swing.SwingUtilities;

/** How much figures scatter on this rig, how well that is known, and where it is from. */
final class ScatterCard extends Card {
    private final Desk desk;
    private final Entry<Optional<Scatter>> pull;
    private final Entry<Double> pullDf;
    private final Entry<Optional<Scatter>> refit;
    private final Entry<Double> refitDf;
    private final Prose origin = Prose.small("");
    private final JButton guess = new JButton(Words.of("scatter.guess"));
    private final JButton record = new JButton(Words.of("scatter.record"));

    ScatterCard(Desk desk) {
        super(Words.of("scatter.head"));
        this.desk = desk;
        Runnable settle = desk.document()::settle;
        pull = new Entry<>("scatter.pull", text -> typing().scatter(text, rig().pullScatter()),
                scatter -> desk.typed(RigEdits.pullScatter(scatter)), settle).asTyped();
        pullDf = new Entry<>("scatter.pullDf", PlanTyping::degreesOfFreedom,
                df -> desk.typed(RigEdits.pullScatter(rig().pullScatter().map(known -> withDf(known, df)))), settle);
        refit = new Entry<>("scatter.refit", text -> typing().scatter(text, rig().refitScatter()),
                scatter -> desk.typed(RigEdits.refitScatter(scatter)), settle).asTyped();
        refitDf = new Entry<>("scatter.refitDf", PlanTyping::degreesOfFreedom,
                df -> desk.typed(RigEdits.refitScatter(rig().refitScatter().map(known -> withDf(known, df)))), settle);
        add(Prose.small(Words.of("scatter.sub")), "spanx, growx, wmin 0");
        pull.addTo(this);
        pullDf.addTo(this);
        refit.addTo(this);
        refitDf.addTo(this);
        add(origin, "skip 1, growx, wmin 0");
        button(guess, "scatter.guess", () -> take(Words.of("scatter.guess.edit"), ScatterSource.guess(plan())));
        button(record, "scatter.record", this::chooseRecord);
        Columns sources = new Columns(8, "[pref!]", "[grow]");
        sources.add(guess);
        sources.add(record);
        add(sources, "skip 1, growx, wmin 0");
    }

    private void button(JButton button, String key, Runnable work) {
        button.setName(key);
        button.setMnemonic(Words.mnemonic(key));
        button.setToolTipText(Words.tip(Words.of(key + ".tip")));
        button.addActionListener(event -> {
            try {
                work.run();
            } catch (UsageException refused) {
                desk.words().accept(refused.problem());
            }
        });
    }

    private Plan plan() {
        return desk.document().plan();
    }

    private Rig rig() {
        return plan().rig();
    }

    private PlanTyping typing() {
        return PlanTyping.in(plan());
    }

    private static Scatter withDf(Scatter scatter, double df) {
        return new Scatter(scatter.standardDeviationSi(), df, scatter.origin());
    }

    private void take(String label, ScatterSource source) {
        desk.edit(RigEdits.scatter(label, source.pull(), source.refit()));
        desk.words().accept(source.said());
    }

    private void chooseRecord() {
        JFileChooser chooser = new JFileChooser(desk.settings().find("records").orElse(null));
        chooser.setFileSelectionMode(JFileChooser.DIRECTORIES_ONLY);
        chooser.setDialogTitle(Words.of("scatter.record.choose"));
        if (chooser.showOpenDialog(this) == JFileChooser.APPROVE_OPTION) {
            takeRecord(chooser.getSelectedFile().toPath());
        }
    }

    /** Takes the matching record of a folder, which is read beside the window's thread. */
    void takeRecord(Path folder) {
        Plan plan = plan();
        Job.start(Job.onDisk(() -> ScatterSource.record(folder, plan)), SwingUtilities::invokeLater, share -> { },
                ended -> ended.tell(source -> {
                    desk.settings().set("records", folder.toString());
                    take(Words.of("scatter.record.edit"), source);
                }, fault -> desk.words().accept(FaultWords.of(fault))));
    }

    void refresh() {
        pull.show(typing().scatter(rig().pullScatter()));
        pullDf.show(PlanTyping.degreesOfFreedom(rig().pullScatter()));
        refit.show(typing().scatter(rig().refitScatter()));
        refitDf.show(PlanTyping.degreesOfFreedom(rig().refitScatter()));
        origin.setText(RigTyping.origins(rig()));
        boolean open = !desk.document().isFixed();
        pull.enable(open);
        refit.enable(open);
        pullDf.enable(open && rig().pullScatter().isPresent());
        refitDf.enable(open && rig().refitScatter().isPresent());
        List.of(guess, record).forEach(button -> button.setEnabled(open));
    }
}
