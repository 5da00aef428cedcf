package fairpull.domain.air;

import fairpull.domain.plan.Correction;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A correction with all that it needs beside the air.
 *
 * @param correction which one
 * @param efficiency mechanical efficiency, for SAE J1349 alone; empty: the form as printed
 * @param fuel for compression ignition, and only there
 */
public record Standard(Correction correction, OptionalDouble efficiency, Optional<FuelDelivery> fuel) {
    public Standard {
        Objects.requireNonNull(correction, "correction");
        if (efficiency.isPresent() && correction != Correction.SAE_J1349) {
            throw new IllegalArgumentException("only sae-j1349 knows a mechanical efficiency");
        }
        efficiency.ifPresent(share -> {
            if (!(share > 0 && share <= 1)) {
                throw new IllegalArgumentException("an efficiency must lie between 0 and 1, was " + share);
            }
        });
        if (fuel.isPresent() != (correction == Correction.ISO_1585_CI)) {
            throw new IllegalArgumentException("iso-1585-ci, and no other, needs the fuel delivery");
        }
    }

    /** {@return the correction as it is printed, for one that needs nothing beside the air} */
    public static Standard plain(Correction correction) {
        return new Standard(correction, OptionalDouble.empty(), Optional.empty());
    }
}
