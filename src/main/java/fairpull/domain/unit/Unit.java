package fairpull.domain.unit;

import java.util.Objects;

/**
 * A unit of one quantity: SI value = (value + zero) × factor.
 *
 * @param symbol how the unit is printed, such as {@code hp} or {@code °C}
 * @param quantity what it measures
 * @param factor SI units in one of this unit, positive
 * @param zero what is added to a reading before scaling; 0 for all but temperatures
 */
public record Unit(String symbol, Quantity quantity, double factor, double zero) {
    public Unit {
        Objects.requireNonNull(symbol, "symbol");
        Objects.requireNonNull(quantity, "quantity");
        if (!(factor > 0) || Double.isInfinite(factor)) {
            throw new IllegalArgumentException("unit " + symbol + ": factor must be positive and finite, was " + factor);
        }
    }

    /** {@return a unit of {@link Quantity#OTHER} that is kept as typed} */
    public static Unit asTyped(String symbol) {
        return new Unit(symbol, Quantity.OTHER, 1, 0);
    }

    /** {@return the SI value of a reading in this unit} */
    public double toSi(double reading) {
        return (reading + zero) * factor;
    }

    /** {@return the reading in this unit of an SI value} */
    public double fromSi(double si) {
        return si / factor - zero;
    }

    /** {@return the SI size of a difference given in this unit: the zero does not count} */
    public double differenceToSi(double difference) {
        return difference * factor;
    }

    /** {@return a difference given in SI, in this unit: the zero does not count} */
    public double differenceFromSi(double si) {
        return si / factor;
    }
}
