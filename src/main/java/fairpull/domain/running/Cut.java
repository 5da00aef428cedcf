package fairpull.domain.running;

import fairpull.domain.pull.PullId;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The pulls to drop where a day no longer fits its hours.
 *
 * @param lateS how far the day would run beyond its end
 * @param dropped the pulls whose loss costs least; none where no choice makes it fit
 * @param gainBefore smallest gain found with all of them, in the unit of the measure; empty where scatter is not known
 * @param gainAfter smallest gain found without them
 */
public record Cut(double lateS, List<PullId> dropped, OptionalDouble gainBefore, OptionalDouble gainAfter) {
    public Cut {
        dropped = List.copyOf(dropped);
    }
}
