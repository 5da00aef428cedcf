package fairpull.domain.day;

import fairpull.domain.plan.Sequence;

/**
 * The times between the events of a day.
 *
 * @param pullIntervalS from the start of a pull to the start of the next
 * @param swapS what every install after the first of a session adds
 * @param setUpS before the first pull of a session
 */
public record Pace(double pullIntervalS, double swapS, double setUpS) {

    /** {@return the times that a sequence plans} */
    public static Pace of(Sequence sequence) {
        return new Pace(sequence.pullIntervalS(), sequence.swapS(), sequence.setUpS());
    }
}
