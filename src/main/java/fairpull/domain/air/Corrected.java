package fairpull.domain.air;

import java.util.List;
import java.util.Optional;

/**
 * A factor and what belongs to it.
 *
 * @param standard the correction
 * @param factor multiplies what was measured
 * @param from what the values are already corrected to, where they are, and its factor
 * @param air figures of the air
 * @param uncertainty what sensor errors do to the factor
 * @param notices what a reader must know
 */
public record Corrected(Standard standard, double factor, Optional<Undone> from, AirFigures air, FactorUncertainty uncertainty,
        List<AirNotice> notices) {
    /**
     * A correction that is undone first.
     *
     * @param standard which one
     * @param factor its factor in the same air
     */
    public record Undone(Standard standard, double factor) {
    }

    public Corrected {
        notices = List.copyOf(notices);
    }

    /** {@return what the values in hand are multiplied by: the factor, over the one that is undone} */
    public double multiplier() {
        return factor / from.map(Undone::factor).orElse(1.0);
    }
}
