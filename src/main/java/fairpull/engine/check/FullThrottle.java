package fairpull.engine.check;

import fairpull.domain.finding.Notice.Code;
import fairpull.domain.pull.PullTrace;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import java.util.Arrays;
import java.util.Optional;

/** The throttle stands at 98 % or more over the band (common practice, no source): the lowest share in it. */
public final class FullThrottle extends EachPull {
    private static final double FULL = 0.98;

    private final double lowRadPerS;
    private final double highRadPerS;

    /** A check over one band, its ends in rad/s. */
    public FullThrottle(double lowRadPerS, double highRadPerS) {
        super(Code.THROTTLE_NOT_FULL);
        this.lowRadPerS = lowRadPerS;
        this.highRadPerS = highRadPerS;
    }

    @Override
    Optional<Reading> read(PullTrace pull) {
        Optional<Samples> throttle = pull.channels().find(Quantity.FRACTION);
        int[] rows = Rows.ofSweep(pull.channels(), lowRadPerS, highRadPerS);
        return throttle.map(samples -> Arrays.stream(Rows.values(samples, rows)).filter(Double::isFinite).min())
                .filter(lowest -> lowest.isPresent())
                .map(lowest -> Reading.of(lowest.getAsDouble() < FULL, -lowest.getAsDouble(), lowest.getAsDouble()));
    }
}
