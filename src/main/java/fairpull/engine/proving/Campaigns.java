package fairpull.engine.proving;

import fairpull.domain.finding.Verdict;
import fairpull.domain.proof.Tally;
import fairpull.engine.judging.RepeatedJudge.Standing;
import java.util.Arrays;
import java.util.stream.Collectors;

/** Follows campaigns with one true change through their looks and counts how they end. */
final class Campaigns {
    private final double change;
    private final long[] ends = new long[End.values().length];
    private final long[] stoppedAt;
    private long covered;
    private boolean open;

    private enum End {
        GAIN, LOSS, NO_DIFFERENCE, UNDECIDED, NOT_JUDGED
    }

    Campaigns(int looks, double change) {
        this.change = change;
        stoppedAt = new long[looks];
    }

    void start() {
        open = true;
    }

    boolean isOpen() {
        return open;
    }

    /** A campaign ends at the first look that decides something, and at the last one whatever it says. */
    void look(int look, Standing standing) {
        if (!open) {
            return;
        }
        End end = end(standing.verdict(change));
        if (end == End.UNDECIDED || end == End.NOT_JUDGED) {
            if (look + 1 < stoppedAt.length) {
                return;
            }
        }
        open = false;
        ends[end.ordinal()]++;
        stoppedAt[look]++;
        covered += standing.covers(0) ? 1 : 0;
    }

    Tally tally() {
        return new Tally(ends[0], ends[1], ends[2], ends[3], ends[4], covered,
                Arrays.stream(stoppedAt).boxed().collect(Collectors.toList()));
    }

    private static End end(Verdict verdict) {
        return verdict.match(KINDS);
    }

    private static final Verdict.Cases<End> KINDS = new Verdict.Cases<>() {
        @Override
        public End gain() {
            return End.GAIN;
        }

        @Override
        public End loss() {
            return End.LOSS;
        }

        @Override
        public End noDifferenceThatMatters() {
            return End.NO_DIFFERENCE;
        }

        @Override
        public End undecided(Verdict.WhyUndecided why) {
            return End.UNDECIDED;
        }

        @Override
        public End cannotBeJudged(Verdict.WhyNotJudged why) {
            return End.NOT_JUDGED;
        }
    };
}
