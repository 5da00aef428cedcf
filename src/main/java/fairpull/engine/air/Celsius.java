package fairpull.engine.air;

/** The two zeros of the Celsius scale in this field. */
final class Celsius {
    /** 0 °C in K. */
    static final double ZERO = 273.15;
    /** 0 °C as the standards print it: T = t + 273. */
    private static final double PRINTED_ZERO = 273;

    private Celsius() {
    }

    /** {@return the absolute temperature as the standards count it} */
    static double asPrinted(double temperatureK) {
        return temperatureK - ZERO + PRINTED_ZERO;
    }
}
