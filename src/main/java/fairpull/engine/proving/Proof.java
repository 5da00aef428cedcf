package fairpull.engine.proving;

import fairpull.domain.finding.JudgeSettings;
import fairpull.domain.finding.PullRow;
import fairpull.domain.finding.PullTable;
import fairpull.domain.plan.Better;
import fairpull.domain.proof.PlannedInstall;
import fairpull.domain.proof.ProofAnswer;
import fairpull.domain.proof.ProofQuestion;
import fairpull.domain.proof.ProofQuestion.LookLevel;
import fairpull.engine.judging.RepeatedJudge;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Simulates a plan as it is planned and judged. Every campaign draws scatter of refits and pulls (and outliers, drift, serial correlation
 * as asked) and is judged at each look by the core of {@code engine.judging} until something is decided: once with no change, once with
 * the gain added to every pull of B, which moves the estimate by exactly the gain and nothing else, so that one fit serves both.
 *
 * <p>The work falls into chunks that depend on the seed and their number alone: they may be run in any order, on any threads.
 *
 * <p>Checked against: error rates simulated in R (ProofTest), the sizing, exact tests on install means.
 */
public final class Proof {
    /** Campaigns of one chunk: some milliseconds of work, so that progress and cancelling are prompt. */
    public static final int CHUNK = 500;

    private final ProofQuestion question;
    private final long[] seeds;

    private Proof(ProofQuestion question) {
        this.question = question;
        seeds = new SplittableRandom(question.seed()).longs((question.campaigns() + CHUNK - 1) / CHUNK).toArray();
    }

    /**
     * Prepares a proof.
     *
     * @param question plan, judging, looks, truth
     * @return the proof
     * @throws IllegalArgumentException if at some look the change cannot be told apart from sessions or drift
     */
    public static Proof of(ProofQuestion question) {
        Proof proof = new Proof(question);
        proof.judges();
        return proof;
    }

    /** {@return how many chunks of work there are} */
    public int chunks() {
        return seeds.length;
    }

    /** {@return how many campaigns a chunk has} */
    public int campaigns(int chunk) {
        return Math.min(CHUNK, question.campaigns() - chunk * CHUNK);
    }

    /**
     * Does one chunk of the work; safe to be called from several threads at once.
     *
     * @param chunk 0 … {@link #chunks()} − 1
     * @return how its campaigns ended, to be added to the others'
     */
    public ProofAnswer run(int chunk) {
        CampaignDraw draw = new CampaignDraw(question, seeds[chunk]);
        double gain = question.settings().better() == Better.MORE ? question.truth().gain() : -question.truth().gain();
        Campaigns noChange = new Campaigns(question.looks().size(), 0);
        Campaigns withGain = new Campaigns(question.looks().size(), gain);
        List<RepeatedJudge> judges = judges();
        for (int campaign = campaigns(chunk); campaign > 0; campaign--) {
            double[] values = draw.next();
            noChange.start();
            withGain.start();
            for (int look = 0; look < judges.size() && (noChange.isOpen() || withGain.isOpen()); look++) {
                RepeatedJudge.Standing standing = judges.get(look).judge(values);
                noChange.look(look, standing);
                withGain.look(look, standing);
            }
        }
        return new ProofAnswer(noChange.tally(), withGain.tally());
    }

    private List<RepeatedJudge> judges() {
        List<RepeatedJudge> judges = new ArrayList<>();
        for (LookLevel look : question.looks()) {
            JudgeSettings settings = question.settings().withErrorRate(look.level());
            judges.add(RepeatedJudge.of(layout(question.installs().subList(0, look.afterInstalls())), settings));
        }
        return judges;
    }

    private static PullTable layout(List<PlannedInstall> installs) {
        List<PullRow> rows = new ArrayList<>();
        for (PlannedInstall install : installs) {
            for (int pull = 0; pull < install.minutes().size(); pull++) {
                rows.add(new PullRow(install.session(), install.label(), install.part(), String.valueOf(pull + 1),
                        install.minutes().get(pull), 0, List.of()));
            }
        }
        return new PullTable("", List.of(), rows);
    }
}
