package fairpull.domain.audit;

/** What was disclosed of a procedure that can be, but hardly goes together: it is asked about. */
public enum Oddity {
    /** The figures are of different days, and the car stayed strapped down. */
    STRAPPED_OVERNIGHT("strapped-overnight"),
    /** The figures are of different days, and the order does not tell where the day changed. */
    ORDER_OF_ONE_DAY("order-of-one-day"),
    /** A single pull is quoted of a state that the order has several installs of. */
    SINGLE_OF_SEVERAL_INSTALLS("single-of-several-installs"),
    /** The best of one pull is quoted. */
    BEST_OF_ONE("best-of-one"),
    /** A figure stands at a speed that was not swept through. */
    SPEED_NOT_SWEPT("speed-not-swept"),
    /** Nothing was corrected for air, and a barometer is named. */
    BAROMETER_WITHOUT_CORRECTION("barometer-without-correction");

    private final String id;

    Oddity(String id) {
        this.id = id;
    }

    /** {@return how it is called in files} */
    public String id() {
        return id;
    }
}
