package fairpull.engine.check;

import fairpull.domain.finding.Notice.Code;
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
    Optional<Reading> read(Traced pull) {
        Optional<Quantity> compared = pull.compared();
        if (compared.isEmpty()) {
            return Optional.empty();
        }
        Samples values = pull.find(compared.get()).orElseThrow();
        int[] rows = Arrays.stream(pull.ofSweep(lowRadPerS, highRadPerS))
                .filter(row -> Double.isFinite(values.at(row))).toArray();
        if (rows.length < FEWEST) {
            return Optional.empty();
        }
        double[] level = Rows.values(values, rows);
        double[] around = new Neighbours(level).say();
        double[] residuals = new double[level.length];
        for (int i = 0; i < level.length; i++) {
            residuals[i] = level[i] - around[i];
        }
        double scale = Math.max(Rows.robustDeviation(residuals, 0), pull.lastDigit(compared.get()) / 2);
        int worst = 0;
        int spikes = 0;
        for (int i = 0; i < level.length; i++) {
            worst = Math.abs(residuals[i]) > Math.abs(residuals[worst]) ? i : worst;
            spikes += Math.abs(residuals[i]) > FAR * scale && Math.abs(residuals[i]) > SHARE * Math.abs(level[i]) ? 1 : 0;
        }
        double share = Math.abs(residuals[worst] / around[worst]);
        return Optional.of(Reading.of(spikes > 0, share, (double) spikes, share,
                pull.find(Quantity.ENGINE_SPEED).orElseThrow().at(rows[worst])));
    }

    /** What the neighbours of each row say about it. */
    private static final class Neighbours {
        private final double[] level;
        /** Slopes from each row to those behind it, by how far behind less one. */
        private final double[][] slopes = new double[2 * REACH][];
        private final double[] window = new double[PAIRS];

        Neighbours(double[] level) {
            this.level = level;
            for (int apart = 1; apart <= 2 * REACH; apart++) {
                double[] each = new double[Math.max(0, level.length - apart)];
                for (int i = 0; i < each.length; i++) {
                    each[i] = (level[i + apart] - level[i]) / apart;
                }
                slopes[apart - 1] = each;
            }
        }

        double[] say() {
            double[] around = new double[level.length];
            for (int i = 0; i < level.length; i++) {
                around[i] = of(i);
            }
            return around;
        }

        private double of(int centre) {
            int first = Math.max(0, centre - REACH);
            int last = Math.min(level.length - 1, centre + REACH);
            int count = 0;
            for (int apart = 1; apart <= last - first; apart++) {
                double[] each = slopes[apart - 1];
                for (int i = first; i + apart <= last; i++) {
                    window[count] = each[i];
                    count += i == centre || i + apart == centre ? 0 : 1;
                }
            }
            double rise = Selection.median(window, count);
            count = 0;
            for (int i = first; i <= last; i++) {
                window[count] = level[i] - rise * (i - centre);
                count += i == centre ? 0 : 1;
            }
            return Selection.median(window, count);
        }
    }
}
