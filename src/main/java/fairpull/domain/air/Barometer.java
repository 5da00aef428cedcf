package fairpull.domain.air;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * A pressure as it was read.
 *
 * @param kind whether it is the pressure at the rig or one reduced to sea level
 * @param pressurePa the reading
 * @param elevationM height of the rig above sea level, where it is known; a sea-level reading cannot do without
 */
public record Barometer(Kind kind, double pressurePa, OptionalDouble elevationM) {
    /** What a barometer shows. */
    public enum Kind {
        /** The pressure where it stands. */
        STATION,
        /** An altimeter setting: what weather services and airfields give. */
        SEA_LEVEL
    }

    public Barometer {
        Objects.requireNonNull(kind, "kind");
        if (!(pressurePa > 0) || Double.isInfinite(pressurePa)) {
            throw new IllegalArgumentException("a pressure must be above 0, was " + pressurePa);
        }
        if (kind == Kind.SEA_LEVEL && elevationM.isEmpty()) {
            throw new IllegalArgumentException("a sea-level pressure needs the elevation");
        }
    }

    /** {@return the pressure at the rig itself} */
    public static Barometer station(double pressurePa) {
        return new Barometer(Kind.STATION, pressurePa, OptionalDouble.empty());
    }

    /** {@return another reading of the same barometer} */
    public Barometer reading(double otherPa) {
        return new Barometer(kind, otherPa, elevationM);
    }
}
