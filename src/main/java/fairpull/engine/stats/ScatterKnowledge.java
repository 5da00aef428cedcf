package fairpull.engine.stats;

/**
 * What is known beforehand of the two variances: a scaled-inverse-χ² term each. A term of ν degrees of freedom at s₀² adds
 * ν·(ln s² + s₀²/s²) to −2·log-likelihood; ν = 0 is nothing known, ν = ∞ a known value.
 *
 * @param refitVariance s₀² of refitting; not looked at where its degrees of freedom are 0
 * @param refitDf degrees of freedom behind it, 0 … ∞
 * @param pullVariance s₀² of pulls; not looked at where its degrees of freedom are 0
 * @param pullDf degrees of freedom behind it, 0 … ∞
 */
public record ScatterKnowledge(double refitVariance, double refitDf, double pullVariance, double pullDf) {
    public ScatterKnowledge {
        requireSound("refit", refitVariance, refitDf);
        requireSound("pull", pullVariance, pullDf);
    }

    /** {@return nothing known: the data speak alone} */
    public static ScatterKnowledge none() {
        return new ScatterKnowledge(0, 0, 0, 0);
    }

    /**
     * A refit variance taken as known, pull variance left to the data.
     *
     * @param refitVariance above 0
     * @return that knowledge
     */
    public static ScatterKnowledge ofRefitKnown(double refitVariance) {
        return new ScatterKnowledge(refitVariance, Double.POSITIVE_INFINITY, 0, 0);
    }

    boolean refitKnown() {
        return Double.isInfinite(refitDf);
    }

    boolean pullKnown() {
        return Double.isInfinite(pullDf);
    }

    /** {@return whether there is no record at all} */
    public boolean isNone() {
        return refitDf == 0 && pullDf == 0;
    }

    private static void requireSound(String name, double variance, double df) {
        if (!(df >= 0) || df > 0 && !(variance > 0 && Double.isFinite(variance))) {
            throw new IllegalArgumentException(
                    "a record of " + name + " scatter needs a variance above 0 and degrees of freedom, were " + variance + ", " + df);
        }
    }
}
