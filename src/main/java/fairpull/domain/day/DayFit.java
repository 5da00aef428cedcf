package fairpull.domain.day;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Whether a plan fits its days, and what would.
 *
 * @param days the clock of every session
 * @param detectableGain smallest gain that the plan finds with the power wanted, in the unit of the measure; empty where scatter is not
 *     known
 * @param remedies what would make it fit, one a kind; none where it fits
 */
public record DayFit(List<DayClock> days, OptionalDouble detectableGain, List<Remedy> remedies) {
    public DayFit {
        days = List.copyOf(days);
        remedies = List.copyOf(remedies);
    }

    /** {@return whether every session is over by its end of day} */
    public boolean fits() {
        return days.stream().allMatch(day -> day.lateS() == 0);
    }
}
