package fairpull.engine.check;

import fairpull.domain.finding.Notice.Code;
import fairpull.domain.pull.PullTrace;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import java.util.Arrays;
import java.util.Optional;

/**
 * Single values far from their neighbours within the band: residuals of a local line through the five rows on either side, its slope the
 * median of all pairwise slopes and its level the median of what that leaves (Theil 1950, Sen 1968), held against 1.4826 × the median of
 * their sizes (the Hampel identifier). Raised beyond ten of those and 1 % of the value, so that a bump of the curve, which spreads over
 * rows, is none; the numbers ten and 1 % are common practice, no source.
 */
public final class Spikes extends EachPull {
    private static final int REACH = 5;
    private static final int PAIRS = REACH * (2 * REACH + 1);
    private static final int FEWEST = 12;
    private static final double FAR = 10;
    private static final double SHARE = 0.01;

    private final double lowRadPerS;
    private final double highRadPerS;

    /** A check over one band, its ends in rad/s. */
    public Spikes(double lowRadPerS, double highRadPerS) {
        super(Code.SPIKES);
        this.lowRadPerS = lowRadPerS;
        this.highRadPerS = highRadPerS;
    }

    @Override
    Optional<Reading> read(PullTrace pull) {
        Optional<Quantity> compared = Rows.compared(pull);
        if (compared.isEmpty()) {
            return Optional.empty();
        }
        Samples values = pull.channels().find(compared.get()).orElseThrow();
        int[] rows = Arrays.stream(Rows.ofSweep(pull, lowRadPerS, highRadPerS))
                .filter(row -> Double.isFinite(values.at(row))).toArray();
        if (rows.length < FEWEST) {
            return Optional.empty();
        }
        double[] level = Rows.values(values, rows);
        double[] residuals = new double[level.length];
        for (int i = 0; i < level.length; i++) {
            residuals[i] = level[i] - around(level, i);
        }
        double scale = Math.max(Rows.robustDeviation(residuals, 0), Rows.lastDigit(pull, compared.get()) / 2);
        int worst = 0;
        int spikes = 0;
        for (int i = 0; i < level.length; i++) {
            worst = Math.abs(residuals[i]) > Math.abs(residuals[worst]) ? i : worst;
            spikes += Math.abs(residuals[i]) > FAR * scale && Math.abs(residuals[i]) > SHARE * Math.abs(level[i]) ? 1 : 0;
        }
        double share = Math.abs(residuals[worst] / around(level, worst));
        return Optional.of(Reading.of(spikes > 0, share, (double) spikes, share,
                pull.channels().find(Quantity.ENGINE_SPEED).orElseThrow().at(rows[worst])));
    }

    /** {@return what the neighbours of a row say about it} */
    private static double around(double[] level, int centre) {
        int first = Math.max(0, centre - REACH);
        int last = Math.min(level.length - 1, centre + REACH);
        double[] neighbours = new double[PAIRS];
        int count = 0;
        for (int i = first; i <= last; i++) {
            for (int j = i + 1; j <= last; j++) {
                if (i != centre && j != centre) {
                    neighbours[count++] = (level[j] - level[i]) / (j - i);
                }
            }
        }
        double slope = Selection.median(neighbours, count);
        count = 0;
        for (int i = first; i <= last; i++) {
            if (i != centre) {
                neighbours[count++] = level[i] - slope * (i - centre);
            }
        }
        return Selection.median(neighbours, count);
    }
}
