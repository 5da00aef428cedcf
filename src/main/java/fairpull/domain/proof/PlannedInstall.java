package fairpull.domain.proof;

import fairpull.domain.plan.Part;
import java.util.List;

/**
 * An install as it is planned.
 *
 * @param session its session
 * @param label its label, unique over sessions
 * @param part what is fitted
 * @param minutes when each counted pull starts, within the session
 */
public record PlannedInstall(String session, String label, Part part, List<Double> minutes) {
    public PlannedInstall {
        minutes = List.copyOf(minutes);
        if (minutes.isEmpty()) {
            throw new IllegalArgumentException("install " + label + " has no counted pull");
        }
    }
}
