package fairpull.domain.plan;

import fairpull.domain.unit.Quantity;

/** Which direction of a measure is a gain: more power, but less elapsed time. */
public enum Better {
    MORE, LESS;

    /** {@return what is a gain where nothing is said: of a time less, of anything else more} */
    public static Better usual(Quantity quantity) {
        return quantity == Quantity.TIME ? LESS : MORE;
    }

    /** {@return a difference B − A turned so that a positive number is a gain} */
    public double gainOf(double difference) {
        return this == MORE ? difference : -difference;
    }
}
