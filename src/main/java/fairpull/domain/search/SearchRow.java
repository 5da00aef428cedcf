package fairpull.domain.search;

import fairpull.domain.finding.SizeAnswer;
import java.util.List;

/**
 * A day worth choosing: no other one within the limits is as short and finds a smaller gain.
 *
 * @param order installs in letters
 * @param pulls counted pulls per install
 * @param warmUps warm-up pulls per install
 * @param seen what it can see, as {@code size} has it, without what it would take to reach the power wanted
 * @param linearDriftLeft what a drift of 1 per hour passes for in the change; 0 where it is modelled or the order cancels it
 * @param quadraticDriftLeft likewise for a drift of 1 per hour², from the middle of the day
 * @param cautions what it cannot guard against
 * @param cost in the money of the costs
 */
public record SearchRow(String order, int pulls, int warmUps, SizeAnswer seen, double linearDriftLeft, double quadraticDriftLeft,
        List<DayCaution> cautions, double cost) {
    /** A day that finds the gain asked for more seldom than this is hopeless; judgement, no source. */
    public static final double HOPELESS_POWER = 0.2;
    /** So is one whose smallest gain found is more than so many times the one asked for; judgement, no source. */
    public static final double HOPELESS_TIMES = 3;

    public SearchRow {
        cautions = List.copyOf(cautions);
    }

    /** {@return smallest gain found with the power wanted} */
    public double detectableGain() {
        return seen.detectableGain().orElseThrow();
    }

    /**
     * {@return the smallest p-value that a randomisation test could reach}
     *
     * @param space a part that cannot come off again leaves one order of these installs, so that there is nothing to draw: 1
     */
    public double leastRandomisationP(SearchSpace space) {
        return space.oneWay() ? 1 : seen.leastRandomisationP();
    }

    /** {@return whether nobody who looks for such a gain should book this day} */
    public boolean isHopeless(double gainAskedFor) {
        return seen.power().orElseThrow() < HOPELESS_POWER || detectableGain() > HOPELESS_TIMES * gainAskedFor;
    }
}
