package fairpull.engine.stats;

/**
 * The two variances of the model, as a ratio so that either may vanish beside the other.
 *
 * @param pullVariance s_p², above 0
 * @param ratio s_r²/s_p², 0 or more
 */
public record VarianceComponents(double pullVariance, double ratio) {
    public VarianceComponents {
        if (!(pullVariance > 0 && ratio >= 0) || Double.isInfinite(ratio) || Double.isInfinite(pullVariance)) {
            throw new IllegalArgumentException("variances out of range: " + pullVariance + ", ratio " + ratio);
        }
    }

    /** {@return s_r²} */
    public double refitVariance() {
        return pullVariance * ratio;
    }
}
