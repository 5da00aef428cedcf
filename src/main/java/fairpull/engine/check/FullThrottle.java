package fairpull.engine.check;

import fairpull.domain.finding.Notice.Code;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import java.util.Arrays;
import java.util.Optional;

/**
 * The throttle stands at 98 % or more over the sweep that is scored (common practice, no source): the lowest share in it. Where the
 * throttle does not cut the sweep, as in tests whose mapping holds none, only the speeds that the value is made of are looked at.
 */
public final class FullThrottle extends EachPull {
    private static final double FULL = 0.98;

    private final double lowRadPerS;
    private final double highRadPerS;

    /** A check of the speeds that the value is made of, in rad/s. */
    public FullThrottle(double lowRadPerS, double highRadPerS) {
        super(Code.THROTTLE_NOT_FULL);
        this.lowRadPerS = lowRadPerS;
        this.highRadPerS = highRadPerS;
    }

    @Override
    Optional<Reading> read(Traced pull) {
        Optional<Samples> throttle = pull.find(Quantity.FRACTION);
        int[] rows = pull.pull().cutToFullThrottle() ? pull.ofSweep(0, Double.POSITIVE_INFINITY)
                : pull.ofSweep(lowRadPerS, highRadPerS);
        return throttle.map(samples -> Arrays.stream(Rows.values(samples, rows)).filter(Double::isFinite).min())
                .filter(lowest -> lowest.isPresent())
                .map(lowest -> Reading.of(lowest.getAsDouble() < FULL, -lowest.getAsDouble(), lowest.getAsDouble()));
    }
}
