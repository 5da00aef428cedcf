package fairpull.domain.audit;

import fairpull.domain.unit.Quantity;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Scatter that was stated with a publication, or is known of its rig, layer by layer. What is empty was not stated.
 *
 * @param pull of pulls within one install
 * @param refit that strapping down anew adds
 * @param day that another day adds
 */
public record StatedScatter(Layer pull, Optional<Layer> refit, Optional<Layer> day) {
    /**
     * One layer.
     *
     * @param deviation standard deviation, in percent or in the unit of a figure
     * @param degreesOfFreedom behind it, 0.1 or more; empty where they were not stated
     */
    public record Layer(Printed deviation, OptionalDouble degreesOfFreedom) {
        /** With fewer degrees of freedom no interval ends. */
        public static final double FEWEST = 0.1;

        public Layer {
            if (!(deviation.value() >= 0)) {
                throw new IllegalArgumentException("a scatter is a standard deviation of 0 or more, was " + deviation.value());
            }
            degreesOfFreedom.ifPresent(number -> {
                if (!(number >= FEWEST && number < 1e6)) {
                    throw new IllegalArgumentException("degrees of freedom lie between " + FEWEST + " and a million, were " + number);
                }
            });
        }

        /** {@return the scatter as a share of the level of a figure; empty where it was stated for another quantity} */
        public Optional<Double> share(Printed level) {
            if (deviation.unit().quantity() == Quantity.FRACTION) {
                return Optional.of(deviation.si());
            }
            return deviation.isLike(level) ? Optional.of(deviation.unit().differenceToSi(deviation.value()) / level.si())
                    : Optional.empty();
        }
    }

    public StatedScatter {
        if (!(pull.deviation().value() > 0)) {
            throw new IllegalArgumentException("pulls scatter by more than 0; leave out what was not stated");
        }
    }
}
