package fairpull.domain.proof;

import java.util.ArrayList;
import java.util.List;

/**
 * How simulated campaigns ended, counted.
 *
 * @param gain announced as a gain
 * @param loss announced as a loss
 * @param noDifference announced as no difference that matters
 * @param undecided with nothing decided
 * @param notJudged that could not be judged
 * @param covered whose last interval holds the true change
 * @param stoppedAt that ended at each look
 */
public record Tally(long gain, long loss, long noDifference, long undecided, long notJudged, long covered, List<Long> stoppedAt) {
    public Tally {
        stoppedAt = List.copyOf(stoppedAt);
    }

    /** {@return how many campaigns there were} */
    public long campaigns() {
        return gain + loss + noDifference + undecided + notJudged;
    }

    /** {@return both together} */
    public Tally plus(Tally other) {
        List<Long> stopped = new ArrayList<>();
        for (int k = 0; k < stoppedAt.size(); k++) {
            stopped.add(stoppedAt.get(k) + other.stoppedAt.get(k));
        }
        return new Tally(gain + other.gain, loss + other.loss, noDifference + other.noDifference, undecided + other.undecided,
                notJudged + other.notJudged, covered + other.covered, stopped);
    }

    /** {@return a count as a share of the campaigns} */
    public Share share(long count) {
        return Share.of(count, campaigns());
    }
}
