package fairpull.ui.frame;

import fairpull.app.document.Document;
import fairpull.app.usecase.UsageException;
import fairpull.app.usecase.planning.Outlook;
import fairpull.app.usecase.planning.PlanProof;
import fairpull.domain.plan.Plan;
import fairpull.report.chart.Role;
import fairpull.ui.form.FaultWords;
import fairpull.ui.form.Figures;
import fairpull.ui.form.Line;
import fairpull.ui.form.Prose;
import fairpull.ui.form.WorkLine;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** The plan proved by simulation, when it is asked for. What was found belongs to one plan and goes with it. */
final class ProofPart extends JPanel {
    private final Document document;
    private final JPanel answer = new JPanel(new MigLayout("insets 0, gap 4 4, fillx, wrap 1", "[grow, fill]"));
    private final WorkLine working = new WorkLine("proof");
    private Plan proved;

    ProofPart(Document document) {
        super(new MigLayout("insets 0, gap 8 4, fillx, wrap 1, hidemode 3", "[grow, fill]"));
        this.document = document;
        setName("proof");
        setOpaque(false);
        answer.setOpaque(false);
        add(working);
        add(answer, "growx, wmin 0");
        document.listen(this::refresh);
    }

    /** Simulates the plan as it stands. */
    void prove() {
        Plan plan = document.plan();
        proved = plan;
        working.start(watch -> PlanProof.of(plan, watch), this::answer, fault -> {
            answer.removeAll();
            answer.add(Prose.body(words(fault)), "growx, wmin 0");
            redone();
        });
    }

    private static String words(Throwable fault) {
        String words = FaultWords.of(fault);
        return fault instanceof UsageException ? Words.of("proof.cannot", words) : words;
    }

    private void answer(PlanProof proof) {
        answer.removeAll();
        answer.add(new Line(Words.of("proof.head"), Role.INK, Look.Type.STRONG), "gaptop 8");
        Figures figures = new Figures(SidePanel.LINE);
        for (Outlook.Row row : proof.figures()) {
            figures.figure(row.name(), row.figure());
        }
        answer.add(figures, "growx, wmin 0");
        proof.sentences().forEach(sentence -> answer.add(Prose.small(sentence), "growx, wmin 0"));
        redone();
    }

    private void refresh() {
        if (proved != null && !document.plan().equals(proved)) {
            proved = null;
            working.stop();
            answer.removeAll();
            redone();
        }
    }

    private void redone() {
        revalidate();
        repaint();
    }
}
