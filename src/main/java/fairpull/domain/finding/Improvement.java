package fairpull.domain.finding;

/**
 * A change of a plan and what it would bring.
 *
 * @param kind what is changed
 * @param detectableGain the smallest gain found with the power wanted after it, in the unit of the question
 * @param before the same before it; infinity where the plan could not be judged
 * @param minutesMore how much longer the day takes
 */
public record Improvement(Kind kind, double detectableGain, double before, double minutesMore) {
    /** What can be changed. */
    public enum Kind {
        /** Two installs more at the end of the order, which goes on alternating. */
        TWO_INSTALLS,
        /** Two counted pulls more in each install. */
        TWO_PULLS,
        /** Six refits of an unchanged car put into a rig record. */
        SIX_REFITS_ON_RECORD
    }

    /** {@return by what share the detectable gain falls} */
    public double share() {
        return Double.isInfinite(before) ? 1 : 1 - detectableGain / before;
    }
}
