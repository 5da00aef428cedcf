package fairpull.domain.pull;

import fairpull.domain.plan.Install;
import fairpull.domain.plan.Sequence;
import fairpull.domain.plan.Session;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * When each pull starts if the day goes as planned.
 *
 * @param minutes minutes from the first pull of the pull's session, warm-ups included, in the order in which they are run
 */
public record PlannedClock(Map<PullId, Double> minutes) {
    private static final double SECONDS_A_MINUTE = 60;

    /** {@return the clock of a sequence: every pull takes one interval, every swap adds its time} */
    public static PlannedClock of(Sequence sequence) {
        Map<PullId, Double> minutes = new LinkedHashMap<>();
        for (Session session : sequence.sessions()) {
            double clockS = 0;
            for (Install install : session.installs()) {
                for (PullId pull : pullsOf(install)) {
                    minutes.put(pull, clockS / SECONDS_A_MINUTE);
                    clockS += sequence.pullIntervalS();
                }
                clockS += sequence.swapS();
            }
        }
        return new PlannedClock(minutes);
    }

    /** {@return the pulls of an install in the order in which they are run: warm-ups, then counted ones} */
    public static List<PullId> pullsOf(Install install) {
        List<PullId> pulls = new ArrayList<>();
        for (int i = 1; i <= install.warmUpPulls(); i++) {
            pulls.add(new PullId(install.label(), true, i));
        }
        for (int i = 1; i <= install.countedPulls(); i++) {
            pulls.add(new PullId(install.label(), false, i));
        }
        return pulls;
    }
}
