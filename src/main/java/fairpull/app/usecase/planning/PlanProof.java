package fairpull.app.usecase.planning;

import fairpull.app.task.Progress;
import fairpull.app.usecase.UsageException;
import fairpull.app.usecase.typing.TypedTruth;
import fairpull.domain.plan.Plan;
import fairpull.domain.proof.ProofAnswer;
import fairpull.domain.proof.ProofQuestion;
import fairpull.report.wording.ProofWords;
import java.util.ArrayList;
import java.util.List;

/**
 * A plan proved by simulation, for the panel that is always in view.
 *
 * @param figures error rate, power and coverage with their Monte Carlo errors; none where no campaign could be judged
 * @param sentences how it was simulated and what it showed
 */
public record PlanProof(List<Outlook.Row> figures, List<String> sentences) {
    /** Enough for an error rate of 5 % to be known to 0.2 %. */
    private static final int CAMPAIGNS = 10_000;
    private static final TypedTruth.Words AS_PLANNED = new TypedTruth.Words(null, null, null, null, null, null);

    public PlanProof {
        figures = List.copyOf(figures);
        sentences = List.copyOf(sentences);
    }

    /**
     * {@return what a simulation of a plan shows}
     *
     * @throws UsageException if the plan lacks what is needed, or cannot be judged
     */
    public static PlanProof of(Plan plan, Progress progress) {
        ProofQuestion question = question(plan);
        ProofAnswer answer = Prove.prove(question, progress);
        List<Outlook.Row> figures = ProofWords.figures(answer).entrySet().stream()
                .map(entry -> new Outlook.Row(entry.getKey(), entry.getValue())).toList();
        List<String> sentences = new ArrayList<>(ProofWords.warnings(question, answer));
        sentences.add(ProofWords.paragraph(question, answer, plan.sequence().letters(), plan.question().deciding().unit().symbol()));
        return new PlanProof(figures, sentences);
    }

    private static ProofQuestion question(Plan plan) {
        try {
            return Prove.question(plan, AS_PLANNED, new TypedTruth.Run(CAMPAIGNS, 1));
        } catch (IllegalArgumentException notEstimable) {
            throw new UsageException("prove", notEstimable.getMessage());
        }
    }
}
