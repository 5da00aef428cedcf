package fairpull.domain.audit;

import fairpull.domain.plan.Correction;
import java.util.Optional;

/**
 * How a published pair of figures came about. What is empty was not disclosed.
 *
 * @param before what the figure before is of its pulls
 * @param after what the figure after is of its pulls
 * @param rig whether both were run on one rig
 * @param strapDown whether the car stayed strapped down between them
 * @param day whether both were run on one day
 * @param correctionBefore the correction of the figure before
 * @param correctionAfter the correction of the figure after
 * @param otherChanges whether all else stayed as it was
 * @param namedBefore whether the figure, or its engine speed, was named before the test; false where it was picked afterwards
 * @param returned whether the state before was run again after the change, so that what drifts with the clock shows
 */
public record Procedure(Optional<Quote> before, Optional<Quote> after, Optional<Sameness> rig, Optional<Sameness> strapDown,
        Optional<Sameness> day, Optional<Correction> correctionBefore, Optional<Correction> correctionAfter,
        Optional<Sameness> otherChanges, Optional<Boolean> namedBefore, Optional<Boolean> returned) {

    /** {@return whether what was disclosed leaves open that the corrections of both figures differ} */
    public boolean mayMixStandards() {
        return correctionBefore.isEmpty() || !correctionBefore.equals(correctionAfter);
    }

    /** {@return nothing was disclosed} */
    public static Procedure notDisclosed() {
        return new Procedure(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }
}
