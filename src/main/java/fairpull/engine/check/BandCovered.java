package fairpull.engine.check;

import fairpull.domain.finding.Notice.Code;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Units;
import java.util.Arrays;
import java.util.Optional;

/** The sweep reaches over a band of engine speed: how much is missing at both ends together; less than 1 rpm counts as nothing. */
public final class BandCovered extends EachPull {
    /** What rounding and the last sample may leave out: 1 rpm, a fiftieth of a usual step of the grid. */
    private static final double LEAST_RAD_PER_S = Units.RPM.toSi(1);

    private final double lowRadPerS;
    private final double highRadPerS;

    /** A check of one band, its ends in rad/s. */
    public BandCovered(double lowRadPerS, double highRadPerS) {
        super(Code.BAND_NOT_COVERED);
        this.lowRadPerS = lowRadPerS;
        this.highRadPerS = highRadPerS;
    }

    @Override
    Optional<Reading> read(Traced pull) {
        int[] rows = pull.ofSweep(0, Double.POSITIVE_INFINITY);
        if (rows.length == 0) {
            return Optional.empty();
        }
        Samples speed = pull.find(Quantity.ENGINE_SPEED).orElseThrow();
        double lowest = Arrays.stream(rows).mapToDouble(speed::at).min().orElseThrow();
        double highest = Arrays.stream(rows).mapToDouble(speed::at).max().orElseThrow();
        double missing = Math.max(0, lowest - lowRadPerS) + Math.max(0, highRadPerS - highest);
        return Optional.of(Reading.of(missing >= LEAST_RAD_PER_S, missing, missing, lowRadPerS, highRadPerS));
    }
}
