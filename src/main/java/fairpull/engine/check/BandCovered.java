package fairpull.engine.check;

import fairpull.domain.finding.Notice.Code;
import fairpull.domain.pull.PullTrace;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import java.util.Arrays;
import java.util.Optional;

/** The sweep reaches over a band of engine speed: how much of the band is missing at both ends together. */
public final class BandCovered extends EachPull {
    private final double lowRadPerS;
    private final double highRadPerS;

    /** A check of one band, its ends in rad/s. */
    public BandCovered(double lowRadPerS, double highRadPerS) {
        super(Code.BAND_NOT_COVERED);
        this.lowRadPerS = lowRadPerS;
        this.highRadPerS = highRadPerS;
    }

    @Override
    Optional<Reading> read(PullTrace pull) {
        int[] rows = Rows.ofSweep(pull, 0, Double.POSITIVE_INFINITY);
        if (rows.length == 0) {
            return Optional.empty();
        }
        Samples speed = pull.channels().find(Quantity.ENGINE_SPEED).orElseThrow();
        double lowest = Arrays.stream(rows).mapToDouble(speed::at).min().orElseThrow();
        double highest = Arrays.stream(rows).mapToDouble(speed::at).max().orElseThrow();
        double missing = Math.max(0, lowest - lowRadPerS) + Math.max(0, highRadPerS - highest);
        return Optional.of(Reading.of(missing > 0, missing, missing, lowRadPerS, highRadPerS));
    }
}
