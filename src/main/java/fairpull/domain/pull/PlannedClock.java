package fairpull.domain.pull;

import fairpull.domain.day.DayClock;
import fairpull.domain.day.DayEvent;
import fairpull.domain.plan.Install;
import fairpull.domain.plan.Sequence;
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

    /** {@return the clock of a sequence} */
    public static PlannedClock of(Sequence sequence) {
        Map<PullId, Double> minutes = new LinkedHashMap<>();
        for (DayClock day : DayClock.of(sequence)) {
            double first = day.installs().get(0).startS();
            for (DayEvent event : day.events()) {
                if (event.kind().isPull()) {
                    minutes.put(new PullId(event.install(), event.kind() == DayEvent.Kind.WARM_UP, event.number()),
                            (event.startS() - first) / SECONDS_A_MINUTE);
                }
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
