package fairpull.domain.search;

import fairpull.domain.finding.SizeAnswer;

/**
 * A day worth choosing: no other one within the limits is as short and finds a smaller gain.
 *
 * @param order installs in letters
 * @param pulls counted pulls per install
 * @param warmUps warm-up pulls per install
 * @param seen what it can see, as {@code size} has it, without what it would take to reach the power wanted
 * @param linearDriftLeft what a drift of 1 per hour passes for in the change; 0 where it is modelled or the order cancels it
 * @param quadraticDriftLeft likewise for a drift of 1 per hour², from the middle of the day
 * @param cost in the money of the costs
 */
public record SearchRow(String order, int pulls, int warmUps, SizeAnswer seen, double linearDriftLeft, double quadraticDriftLeft,
        double cost) {

    /** {@return smallest gain found with the power wanted} */
    public double detectableGain() {
        return seen.detectableGain().orElseThrow();
    }
}
