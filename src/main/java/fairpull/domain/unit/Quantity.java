package fairpull.domain.unit;

/** The kinds of physical quantity that a test meets, each with the SI unit in which it is stored. */
public enum Quantity {
    ENGINE_SPEED("engine speed", "rad/s"),
    POWER("power", "W"),
    TORQUE("torque", "N·m"),
    SPEED("speed", "m/s"),
    TIME("time", "s"),
    TEMPERATURE("temperature", "K"),
    PRESSURE("pressure", "Pa"),
    FRACTION("fraction", "1"),
    FORCE("force", "N"),
    LENGTH("length", "m"),
    MASS("mass", "kg"),
    MOMENT_OF_INERTIA("moment of inertia", "kg·m²"),
    MASS_FLOW("mass flow", "kg/s"),
    VOLUME("volume", "m³"),
    VOLTAGE("voltage", "V"),
    CURRENT("current", "A"),
    /** Anything else: the number stays as it was typed, in the unit that was typed with it. */
    OTHER("other", "");

    private final String words;
    private final String siSymbol;

    Quantity(String words, String siSymbol) {
        this.words = words;
        this.siSymbol = siSymbol;
    }

    /** {@return the quantity's name in running text} */
    public String words() {
        return words;
    }

    /** {@return the symbol of the SI unit in which values of this quantity are stored; empty for {@link #OTHER}} */
    public String siSymbol() {
        return siSymbol;
    }
}
