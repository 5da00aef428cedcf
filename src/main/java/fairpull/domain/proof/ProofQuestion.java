package fairpull.domain.proof;

import fairpull.domain.finding.JudgeSettings;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What is to be proved.
 *
 * @param installs the plan, in the order in which it is run
 * @param settings how every campaign is judged
 * @param looks when it is looked at and at which level; the last one at the end
 * @param truth what is true in the simulated campaigns
 * @param campaigns how many are simulated
 * @param seed of the simulation
 */
public record ProofQuestion(List<PlannedInstall> installs, JudgeSettings settings, List<LookLevel> looks, Truth truth, int campaigns,
        long seed) {
    /** The most campaigns of one proof. */
    public static final int MOST_CAMPAIGNS = 10_000_000;

    /**
     * A look.
     *
     * @param afterInstalls after how many installs it falls
     * @param level the error rate of this look alone
     */
    public record LookLevel(int afterInstalls, double level) {
    }

    public ProofQuestion {
        installs = List.copyOf(installs);
        looks = List.copyOf(looks);
        if (campaigns < 1 || campaigns > MOST_CAMPAIGNS) {
            throw new IllegalArgumentException("campaigns must be 1 to " + MOST_CAMPAIGNS + ", were " + campaigns);
        }
        if (looks.isEmpty() || looks.get(looks.size() - 1).afterInstalls() != installs.size()) {
            throw new IllegalArgumentException("the last look is at the end of the plan");
        }
        List<LookLevel> all = looks;
        if (IntStream.range(1, all.size()).anyMatch(k -> all.get(k).afterInstalls() <= all.get(k - 1).afterInstalls())) {
            throw new IllegalArgumentException("looks come after more and more installs");
        }
    }
}
