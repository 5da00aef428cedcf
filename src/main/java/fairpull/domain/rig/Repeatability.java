package fairpull.domain.rig;

/** The repeatability limit of ISO 5725. */
public final class Repeatability {
    /** 1.96·√2, rounded as ISO 5725-6 prints it: two single values lie within 2.77·s of each other 19 times in 20. */
    public static final double FACTOR = 2.77;

    private Repeatability() {
    }
}
