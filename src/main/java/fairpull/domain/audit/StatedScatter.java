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
     * @param degreesOfFreedom behind it, above 0; empty where they were not stated
     */
    public record Layer(Printed deviation, OptionalDouble degreesOfFreedom) {
        public Layer {
            if (!(deviation.value() >= 0)) {
                throw new IllegalArgumentException("a scatter is a standard deviation of 0 or more, was " + deviation.value());
            }
            degreesOfFreedom.ifPresent(number -> {
                if (!(number > 0 && number < 1e6)) {
                    throw new IllegalArgumentException("degrees of freedom must be above 0, were " + number);
                }
            });
        }

        /** {@return the scatter as a share of the level of a figure; empty where it was stated for another quantity} */
        public Optional<Double> share(Printed level) {
            if (deviation.unit().quantity() == Quantity.FRACTION) {
                return Optional.of(deviation.si());
            }
            boolean fits = deviation.unit().quantity() == level.unit().quantity()
                    && (level.unit().quantity() != Quantity.OTHER || deviation.unit().equals(level.unit()));
            return fits ? Optional.of(deviation.unit().differenceToSi(deviation.value()) / level.si()) : Optional.empty();
        }
    }

    public StatedScatter {
        if (!(pull.deviation().value() > 0)) {
            throw new IllegalArgumentException("pulls scatter by more than 0; leave out what was not stated");
        }
    }
}
