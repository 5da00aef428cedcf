package fairpull.ui.frame;

import fairpull.app.document.Document;
import fairpull.app.task.Job;
import fairpull.app.usecase.Outlook;
import fairpull.app.usecase.PlanProof;
import fairpull.app.usecase.UsageException;
import fairpull.domain.plan.Plan;
import fairpull.report.chart.Role;
import fairpull.ui.form.Buttons;
import fairpull.ui.form.FaultWords;
import fairpull.ui.form.Figures;
import fairpull.ui.form.Line;
import fairpull.ui.form.Prose;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** The plan proved by simulation, when it is asked for. What was found belongs to one plan and goes with it. */
final class ProofPart extends JPanel {
    private final Document document;
    private final JPanel answer = new JPanel(new MigLayout("insets 0, gap 4 4, fillx, wrap 1", "[grow, fill]"));
    private final JProgressBar progress = new JProgressBar(0, 100);
    private final JButton cancel = Buttons.of("cancel", this::stop);
    private Optional<Job<PlanProof>> job = Optional.empty();
    private Plan proved;

    ProofPart(Document document) {
        super(new MigLayout("insets 0, gap 8 4, fillx, wrap 2, hidemode 3", "[grow, fill][pref!]"));
        this.document = document;
        setName("proof");
        setOpaque(false);
        answer.setOpaque(false);
        progress.setName("proof.progress");
        progress.getAccessibleContext().setAccessibleName(Words.of("proof.working"));
        cancel.setName("proof.cancel");
        add(progress);
        add(cancel);
        add(answer, "spanx, growx, wmin 0");
        document.listen(this::refresh);
        working(false);
    }

    /** Simulates the plan as it stands. */
    void prove() {
        stop();
        Plan plan = document.plan();
        proved = plan;
        working(true);
        job = Optional.of(Job.start(watch -> PlanProof.of(plan, watch), SwingUtilities::invokeLater,
                share -> progress.setValue((int) Math.round(100 * share)), this::ended));
    }

    private void ended(Job.Ended<PlanProof> ended) {
        working(false);
        answer.removeAll();
        ended.tell(this::show, fault -> answer.add(Prose.body(words(fault)), "growx, wmin 0"));
        redone();
    }

    private static String words(Throwable fault) {
        String words = FaultWords.of(fault);
        return fault instanceof UsageException ? Words.of("proof.cannot", words) : words;
    }

    private void show(PlanProof proof) {
        answer.add(new Line(Words.of("proof.head"), Role.INK, Look.Type.STRONG), "gaptop 8");
        Figures figures = new Figures(SidePanel.LINE);
        for (Outlook.Row row : proof.figures()) {
            figures.figure(row.name(), row.figure());
        }
        answer.add(figures, "growx, wmin 0");
        proof.sentences().forEach(sentence -> answer.add(Prose.small(sentence), "growx, wmin 0"));
    }

    private void refresh() {
        if (proved != null && !document.plan().equals(proved)) {
            proved = null;
            stop();
            answer.removeAll();
            redone();
        }
    }

    private void stop() {
        job.ifPresent(Job::cancel);
        job = Optional.empty();
        working(false);
    }

    private void working(boolean busy) {
        progress.setVisible(busy);
        cancel.setVisible(busy);
        progress.setValue(0);
    }

    private void redone() {
        revalidate();
        repaint();
    }
}
