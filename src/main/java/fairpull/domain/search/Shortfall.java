package fairpull.domain.search;

import java.util.EnumSet;
import java.util.Set;

/**
 * Why no day within the limits finds the gain asked for.
 *
 * @param binding the limits that bind: each, moved alone, would let a day find a gain smaller by {@link #WORTH_NAMING} or more
 * @param outOfReachBelow what no session of {@value SearchSpace#MOST_INSTALLS} installs can find less than at this scatter, with pulls
 *     without end and the scatter known
 */
public record Shortfall(Set<Limit> binding, double outOfReachBelow) {
    /** A limit that lowers the gain by a smaller share does not bind; judgement, no source. */
    public static final double WORTH_NAMING = 0.05;

    /** What may hold a search back. */
    public enum Limit {
        /** How long the day may last. */
        HOURS,
        /** What it may cost. */
        MONEY,
        /** How many installs it may have. */
        INSTALLS,
        /** How often the parts may be exchanged. */
        SWAPS,
        /** How many counted pulls an install may have. */
        PULLS,
        /** That refit scatter is not known from a long record. */
        RECORD
    }

    public Shortfall {
        binding = binding.isEmpty() ? Set.of() : Set.copyOf(EnumSet.copyOf(binding));
    }

    /** {@return whether a limit binds} */
    public boolean binds(Limit limit) {
        return binding.contains(limit);
    }
}
