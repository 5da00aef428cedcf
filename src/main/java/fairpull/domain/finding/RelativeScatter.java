package fairpull.domain.finding;

import fairpull.domain.pull.Samples;
import java.util.Optional;

/**
 * A record of scatter as a share of the level, as it is applied to a curve.
 *
 * @param share standard deviation over level, for the band as a whole
 * @param eachSpeed the same for each speed of the grid, where the record has it
 * @param degreesOfFreedom above 0; infinity where the figure is taken as known
 */
public record RelativeScatter(double share, Optional<Samples> eachSpeed, double degreesOfFreedom) {
    public RelativeScatter {
        if (!(share > 0) || Double.isInfinite(share)) {
            throw new IllegalArgumentException("a share must be above 0, was " + share);
        }
        if (!(degreesOfFreedom > 0)) {
            throw new IllegalArgumentException("a record has degrees of freedom above 0, had " + degreesOfFreedom);
        }
        if (eachSpeed.isPresent() && eachSpeed.get().stream().anyMatch(one -> !(one > 0) || Double.isInfinite(one))) {
            throw new IllegalArgumentException("the share at every speed must be above 0");
        }
    }

    /** A record that holds one figure for the band. */
    public RelativeScatter(double share, double degreesOfFreedom) {
        this(share, Optional.empty(), degreesOfFreedom);
    }

    /** {@return the record in the unit of values of some level, for the band as a whole} */
    public ScatterRecord at(double level) {
        return new ScatterRecord(share * Math.abs(level), degreesOfFreedom);
    }

    /** {@return the record in the unit of values of some level, for one speed of the grid} */
    public ScatterRecord at(double level, int place) {
        return new ScatterRecord(eachSpeed.map(shares -> shares.at(place)).orElse(share) * Math.abs(level), degreesOfFreedom);
    }
}
