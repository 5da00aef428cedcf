package fairpull.engine.check;

import java.util.BitSet;

/**
 * Tells of most hashes that they came once only, in two bits a place: of millions of stretches of rows those few are left that have to be
 * looked at closely. A hash that came twice is never missed; one that came once may be taken for one that did.
 */
final class SeenTwice {
    private static final int PLACES_A_HASH = 16;
    private static final long MOST_PLACES = 1L << 30;

    private final int mask;
    private final BitSet once;
    private final BitSet twice;

    /** Room for so many hashes. */
    SeenTwice(long hashes) {
        mask = (int) (Long.highestOneBit(Math.min(MOST_PLACES, Math.max(1, hashes) * PLACES_A_HASH)) - 1);
        once = new BitSet(mask + 1);
        twice = new BitSet(mask + 1);
    }

    void add(long hash) {
        int place = place(hash);
        if (once.get(place)) {
            twice.set(place);
        } else {
            once.set(place);
        }
    }

    /** {@return whether a hash may have come twice} */
    boolean mayHold(long hash) {
        return twice.get(place(hash));
    }

    private int place(long hash) {
        return (int) (hash ^ hash >>> 32) & mask;
    }
}
