package fairpull.domain.plan;

import fairpull.domain.unit.Quantity;

/** What is read beside a pull and may be a gate or a covariate. */
public enum Condition {
    INTAKE_AIR("intake-air", "intake air at pull start", Quantity.TEMPERATURE),
    COOLANT("coolant", "coolant at pull start", Quantity.TEMPERATURE),
    OIL("oil", "oil at pull start", Quantity.TEMPERATURE),
    GEARBOX("gearbox", "gearbox oil", Quantity.TEMPERATURE),
    BAROMETER("barometer", "station pressure", Quantity.PRESSURE),
    HUMIDITY("humidity", "relative humidity", Quantity.FRACTION),
    TYRE_PRESSURE("tyre-pressure", "tyre pressure", Quantity.PRESSURE);

    private final String id;
    private final String words;
    private final Quantity quantity;

    Condition(String id, String words, Quantity quantity) {
        this.id = id;
        this.words = words;
        this.quantity = quantity;
    }

    /** {@return the name used in files and on the command line} */
    public String id() {
        return id;
    }

    /** {@return the name in running text} */
    public String words() {
        return words;
    }

    /** {@return the quantity that is read} */
    public Quantity quantity() {
        return quantity;
    }
}
