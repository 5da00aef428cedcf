package fairpull.domain.audit;

import fairpull.domain.air.Barometer;
import fairpull.domain.plan.Correction;
import fairpull.domain.unit.Quantity;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How the figures were brought to reference air. What is empty was not disclosed.
 *
 * @param corrections the correction of each figure
 * @param barometers whether the pressure behind each correction is that at the rig, or one reduced to sea level
 * @param elevation height of the rig above sea level, −500 m to 6000 m
 */
public record Correcting(BeforeAfter<Correction> corrections, BeforeAfter<Barometer.Kind> barometers, Optional<Printed> elevation) {
    /** Nothing was disclosed. */
    public static final Correcting NOT_DISCLOSED = new Correcting(BeforeAfter.notDisclosed(), BeforeAfter.notDisclosed(),
            Optional.empty());

    public Correcting {
        elevation.ifPresent(height -> {
            if (height.unit().quantity() != Quantity.LENGTH || !(height.si() >= -500 && height.si() <= 6000)) {
                throw new IllegalArgumentException("an elevation is a height from −500 m to 6000 m, such as 300 m or 1000 ft");
            }
        });
    }

    /** {@return whether a pressure can stand behind both figures: neither is said to be as it was measured} */
    public boolean restsOnBarometers() {
        return Stream.of(corrections.before(), corrections.after()).flatMap(Optional::stream).noneMatch(Correction.NONE::equals);
    }

    /** {@return whether a pressure stands behind both figures, and one of them is that at the rig, the other reduced to sea level} */
    public boolean barometersDiffer() {
        return restsOnBarometers() && barometers.differs();
    }

    /** {@return whether what was disclosed leaves open that the corrections of both figures differ} */
    public boolean mayMixStandards() {
        return !corrections.isSame();
    }

    /** {@return the same with other corrections} */
    public Correcting withCorrections(BeforeAfter<Correction> other) {
        return new Correcting(other, barometers, elevation);
    }

    /** {@return the same with other barometers} */
    public Correcting withBarometers(BeforeAfter<Barometer.Kind> other) {
        return new Correcting(corrections, other, elevation);
    }

    /** {@return the same with another elevation} */
    public Correcting withElevation(Optional<Printed> other) {
        return new Correcting(corrections, barometers, other);
    }
}
