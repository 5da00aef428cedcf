package fairpull.domain.day;

import fairpull.domain.plan.Sequence;
import java.util.OptionalDouble;

/**
 * A change that makes a plan fit its days.
 *
 * @param kind what is changed
 * @param sequence the plan's sequence, changed just so much that it fits
 * @param detectableGain smallest gain that it finds with the power wanted, in the unit of the measure; empty where scatter is not known
 */
public record Remedy(Kind kind, Sequence sequence, OptionalDouble detectableGain) {
    /** What can be changed, in the order in which it is offered. */
    public enum Kind {
        FEWER_WARM_UPS, FEWER_PULLS, FEWER_INSTALLS, START_EARLIER, END_LATER, SECOND_DAY
    }
}
