package fairpull.domain.plan;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * What the car is measured on, and what is known of its scatter.
 *
 * @param name which one, in the shop's own words
 * @param kind what kind of rig
 * @param sweepRateRadPerS2 how fast engine speed rises in a pull
 * @param gear the gear used, as written on the lever; empty where there is none
 * @param tyrePressurePa tyre pressure above ambient
 * @param sensors the sensors that matter, with their uncertainty
 * @param pullScatter scatter of pulls within one install
 * @param refitScatter scatter that a new strap-down and refit adds
 * @param movingMass what a pull accelerates, where power is to come from that; empty where it is measured, and then not written to a file
 */
public record Rig(String name, Kind kind, OptionalDouble sweepRateRadPerS2, String gear, OptionalDouble tyrePressurePa,
        List<Sensor> sensors, Optional<Scatter> pullScatter, Optional<Scatter> refitScatter, Optional<MovingMass> movingMass) {
    /** The kinds of rig. */
    public enum Kind {
        ROLLER_INERTIA, ROLLER_BRAKE, HUB, ENGINE_BENCH, ROAD, STRIP
    }

    public Rig {
        Checks.named("the rig", name);
        Objects.requireNonNull(kind, "the kind of rig");
        Objects.requireNonNull(gear, "gear");
        sensors = List.copyOf(sensors);
        Objects.requireNonNull(movingMass, "the moving mass");
        sweepRateRadPerS2.ifPresent(rate -> Checks.positive("the sweep rate", rate));
        tyrePressurePa.ifPresent(pressure -> Checks.positive("the tyre pressure", pressure));
    }

    /** A rig that measures power itself. */
    public Rig(String name, Kind kind, OptionalDouble sweepRateRadPerS2, String gear, OptionalDouble tyrePressurePa,
            List<Sensor> sensors, Optional<Scatter> pullScatter, Optional<Scatter> refitScatter) {
        this(name, kind, sweepRateRadPerS2, gear, tyrePressurePa, sensors, pullScatter, refitScatter, Optional.empty());
    }

    /** {@return whether a scatter that takes part in the judgement is a starting guess} */
    public boolean leansOnAGuess() {
        return Stream.of(pullScatter, refitScatter).flatMap(Optional::stream).anyMatch(scatter -> scatter.isRecord() && scatter.isGuess());
    }

    /** {@return the same rig under another name} */
    public Rig named(String other) {
        return new Rig(other, kind, sweepRateRadPerS2, gear, tyrePressurePa, sensors, pullScatter, refitScatter);
    }

    /** {@return the same rig of another kind} */
    public Rig of(Kind other) {
        return new Rig(name, other, sweepRateRadPerS2, gear, tyrePressurePa, sensors, pullScatter, refitScatter);
    }

    /** {@return the same rig with another sweep rate} */
    public Rig sweeping(OptionalDouble otherRateRadPerS2) {
        return new Rig(name, kind, otherRateRadPerS2, gear, tyrePressurePa, sensors, pullScatter, refitScatter);
    }

    /** {@return the same rig in another gear} */
    public Rig inGear(String other) {
        return new Rig(name, kind, sweepRateRadPerS2, other, tyrePressurePa, sensors, pullScatter, refitScatter);
    }

    /** {@return the same rig with another tyre pressure} */
    public Rig onTyresAt(OptionalDouble otherPa) {
        return new Rig(name, kind, sweepRateRadPerS2, gear, otherPa, sensors, pullScatter, refitScatter);
    }

    /** {@return the same rig with other sensors} */
    public Rig with(List<Sensor> others) {
        return new Rig(name, kind, sweepRateRadPerS2, gear, tyrePressurePa, others, pullScatter, refitScatter);
    }

    /** {@return the same rig with other scatter figures} */
    public Rig scattering(Optional<Scatter> pull, Optional<Scatter> refit) {
        return new Rig(name, kind, sweepRateRadPerS2, gear, tyrePressurePa, sensors, pull, refit);
    }
}
