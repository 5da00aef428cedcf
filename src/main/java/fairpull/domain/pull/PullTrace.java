package fairpull.domain.pull;

import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * What one export shows, for the checks: more than a measure needs, and never what a value is made of.
 *
 * @param pull which one
 * @param used whether its value counts; the others are only compared with it
 * @param channels every channel that the export is read for, in SI; NaN where a cell is blank
 * @param cutToFullThrottle whether the value is read at full throttle alone, the throttle being among what its mapping uses
 * @param units the units that they were read in
 * @param correctedOverMeasured the median of corrected over uncorrected power (or torque) where the export has both
 * @param factor what the standard makes of the air noted at the pull; empty where too little is noted
 */
public record PullTrace(PullId pull, boolean used, Channels channels, boolean cutToFullThrottle, Map<Quantity, Unit> units,
        OptionalDouble correctedOverMeasured, OptionalDouble factor) {
    public PullTrace {
        units = Map.copyOf(units);
    }

    /** {@return the channels by which the sweep is found that the value is read off} */
    public Channels sweepChannels() {
        return cutToFullThrottle || channels.all().size() == 1 ? channels : channels.without(Quantity.FRACTION);
    }
}
