package fairpull.engine.check;

import java.util.Arrays;

/**
 * Where stretches of rows were seen first, found by their hash: an open table of primitives, since a long test has millions of stretches.
 */
final class FirstPlaces {
    private static final int NOTHING = -1;

    private long[] hashes = new long[1 << 12];
    private int[] pulls = filled(1 << 12);
    private int[] rows = new int[1 << 12];
    private int count;

    /** Whether the stretch that begins at a row of a pull is the one that is looked for. */
    interface Same {
        boolean at(int pull, int row);
    }

    /** {@return the pull in which an equal stretch was seen first; itself where there was none, and it is remembered} */
    int firstOf(long hash, int pull, int row, Same same) {
        int slot = slot(hash);
        while (pulls[slot] != NOTHING) {
            if (hashes[slot] == hash && same.at(pulls[slot], rows[slot])) {
                return pulls[slot];
            }
            slot = slot + 1 & pulls.length - 1;
        }
        put(slot, hash, pull, row);
        count++;
        if (count > pulls.length / 2) {
            grow();
        }
        return pull;
    }

    private int slot(long hash) {
        return (int) (hash ^ hash >>> 32) & pulls.length - 1;
    }

    private void put(int slot, long hash, int pull, int row) {
        hashes[slot] = hash;
        pulls[slot] = pull;
        rows[slot] = row;
    }

    private void grow() {
        long[] oldHashes = hashes;
        int[] oldPulls = pulls;
        int[] oldRows = rows;
        hashes = new long[2 * oldPulls.length];
        pulls = filled(hashes.length);
        rows = new int[hashes.length];
        for (int old = 0; old < oldPulls.length; old++) {
            if (oldPulls[old] != NOTHING) {
                int slot = slot(oldHashes[old]);
                while (pulls[slot] != NOTHING) {
                    slot = slot + 1 & pulls.length - 1;
                }
                put(slot, oldHashes[old], oldPulls[old], oldRows[old]);
            }
        }
    }

    private static int[] filled(int length) {
        int[] empty = new int[length];
        Arrays.fill(empty, NOTHING);
        return empty;
    }
}
