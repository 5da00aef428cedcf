package fairpull.domain.plan;

/** Which direction of a measure is a gain: more power, but less elapsed time. */
public enum Better {
    MORE, LESS;

    /** {@return a difference B − A turned so that a positive number is a gain} */
    public double gainOf(double difference) {
        return this == MORE ? difference : -difference;
    }
}
