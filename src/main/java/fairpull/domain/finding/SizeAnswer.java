package fairpull.domain.finding;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What a sequence can see. A figure is empty where the sequence cannot be judged or the wanted power is out of reach.
 *
 * @param power chance of finding the gain asked for
 * @param detectableGain smallest gain found with the power wanted
 * @param standardError expected standard error
 * @param degreesOfFreedom expected degrees of freedom
 * @param minutes length of the day
 * @param limit detectable gain once pull scatter is gone: what more pulls cannot pass
 * @param leastRandomisationP smallest p-value a randomisation test could reach
 * @param pullsNeeded fewest counted pulls per install that reach the power wanted, up to 100
 * @param installsNeeded fewest installs A B A … that reach it, up to 30
 * @param looks where planned looks fall and what they cost; empty where none are planned
 */
public record SizeAnswer(OptionalDouble power, OptionalDouble detectableGain, OptionalDouble standardError,
        OptionalDouble degreesOfFreedom, double minutes, OptionalDouble limit, double leastRandomisationP, OptionalInt pullsNeeded,
        OptionalInt installsNeeded, Optional<SizeLooks> looks) {
    /** What a sequence can see that is looked at once, at the end. */
    public SizeAnswer(OptionalDouble power, OptionalDouble detectableGain, OptionalDouble standardError, OptionalDouble degreesOfFreedom,
            double minutes, OptionalDouble limit, double leastRandomisationP, OptionalInt pullsNeeded, OptionalInt installsNeeded) {
        this(power, detectableGain, standardError, degreesOfFreedom, minutes, limit, leastRandomisationP, pullsNeeded, installsNeeded,
                Optional.empty());
    }

    /** {@return the same figures with what it would take to reach the power wanted} */
    public SizeAnswer withNeeds(OptionalInt pulls, OptionalInt installs) {
        return new SizeAnswer(power, detectableGain, standardError, degreesOfFreedom, minutes, limit, leastRandomisationP, pulls, installs,
                looks);
    }
}
