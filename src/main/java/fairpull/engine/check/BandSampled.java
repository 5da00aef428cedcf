package fairpull.engine.check;

import fairpull.domain.finding.Notice.Code;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import java.util.Arrays;
import java.util.Optional;

/**
 * A mean over a band comes from enough samples: at least eight in it, and no gap longer than a quarter of it (common practice, no
 * source). The ends of the band count as samples when gaps are measured, as values there are interpolated.
 */
public final class BandSampled extends EachPull {
    private static final int FEWEST = 8;
    private static final double LONGEST_GAP = 0.25;

    private final double lowRadPerS;
    private final double highRadPerS;

    /** A check of one band, its ends in rad/s. */
    public BandSampled(double lowRadPerS, double highRadPerS) {
        super(Code.BAND_SPARSE);
        this.lowRadPerS = lowRadPerS;
        this.highRadPerS = highRadPerS;
    }

    @Override
    Optional<Reading> read(Traced pull) {
        Optional<Samples> speed = pull.find(Quantity.ENGINE_SPEED);
        int[] rows = pull.ofSweep(lowRadPerS, highRadPerS);
        if (speed.isEmpty() || pull.ofSweep(0, Double.POSITIVE_INFINITY).length == 0) {
            return Optional.empty();
        }
        double[] inBand = Arrays.stream(Rows.values(speed.get(), rows)).sorted().distinct().toArray();
        double gap = 0;
        double before = lowRadPerS;
        for (double now : inBand) {
            gap = Math.max(gap, now - before);
            before = now;
        }
        gap = Math.max(gap, highRadPerS - before);
        boolean sparse = inBand.length < FEWEST || gap > LONGEST_GAP * (highRadPerS - lowRadPerS);
        return Optional.of(Reading.of(sparse, gap, (double) inBand.length, gap));
    }
}
