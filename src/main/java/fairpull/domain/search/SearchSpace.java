package fairpull.domain.search;

import java.util.OptionalInt;

/**
 * Which days may be tried: orders of one session, all installs filled alike.
 *
 * @param mostInstalls installs at most, 2 to {@value #MOST_INSTALLS}
 * @param mostExchanges how often, at most, one part is taken off and the other fitted; empty for as often as the order has it
 * @param firstA whether A is fitted first
 * @param counterbalanced whether A and B must stand equally late on average; where breaks part the installs, to within half an interval
 *     from pull to pull
 * @param oneWay whether B cannot come off again: A … A B … B
 * @param pulls counted pulls per install
 * @param warmUps warm-up pulls per install
 */
public record SearchSpace(int mostInstalls, OptionalInt mostExchanges, boolean firstA, boolean counterbalanced, boolean oneWay,
        Range pulls, Range warmUps) {
    /** All orders up to this length are tried. */
    public static final int MOST_INSTALLS = 10;

    public SearchSpace {
        if (mostInstalls < 2 || mostInstalls > MOST_INSTALLS) {
            throw new IllegalArgumentException("a search takes 2 to " + MOST_INSTALLS + " installs, was " + mostInstalls);
        }
        if (mostExchanges.isPresent() && mostExchanges.getAsInt() < 1) {
            throw new IllegalArgumentException("without a swap there is nothing to compare");
        }
        if (oneWay && counterbalanced) {
            throw new IllegalArgumentException("a part that cannot come off again cannot be counterbalanced: every B stands after every A");
        }
        if (oneWay && !firstA) {
            throw new IllegalArgumentException("a part that cannot come off again is never fitted first");
        }
        if (pulls.least() < 1) {
            throw new IllegalArgumentException("an install needs a counted pull");
        }
    }
}
