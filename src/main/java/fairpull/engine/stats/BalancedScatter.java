package fairpull.engine.stats;

import java.util.function.DoubleUnaryOperator;

/**
 * Refit and pull variance of installs with n pulls each, by restricted maximum likelihood from two sums of squares: that of install means
 * about their model, times n, expected as a·λ with λ = s_p² + n·s_r², and that within installs, expected as b·s_p². Records add their
 * terms. With A, B, C the sums of squares between, within (with ν_p·s₀p²) and of the refit record (ν_r·s₀r²), b counting ν_p, c = ν_r:
 * −2·log-likelihood = a·ln λ + A/λ + b·ln s_p² + B/s_p² + c·ln s_r² + C/s_r².
 *
 * <p>Without a refit record λ = A/a and s_p² = B/b, both pooled (s_r² = 0) where λ would be the smaller. With one, s_p² is in closed form
 * given γ = s_r²/s_p², and the stationary points in γ are the positive roots of a cubic, found between its turning points.
 *
 * <p>Checked against: {@link Reml} with {@link ContrastFit} (RepeatedJudgeTest); single pulls by simulation (LookPowerTest).
 *
 * @see "Searle, Casella and McCulloch (1992), Variance Components, section 3.8"
 */
final class BalancedScatter {
    /** A known variance is a record of so many degrees of freedom that data do not move it within the digits of a double. */
    private static final double AS_GOOD_AS_KNOWN = 1e14;
    /** Bounds of ln γ: beyond them one scatter does not show beside the other. */
    private static final double WIDEST = 60;

    /** A double, as its square passes what an int holds. */
    private final double pulls;
    private final int betweenDf;
    private final double ownWithinDf;
    private final ScatterKnowledge known;
    private final double withinDf;
    private final double refitDf;

    /**
     * What install means scatter.
     *
     * @param variance of an install mean, s_r² + s_p²/n
     * @param degreesOfFreedom 2·λ²/(gᵀI⁻¹g), g = (n, 1) the slopes of λ in (s_r², s_p²), I their expected information
     */
    record OfMeans(double variance, double degreesOfFreedom) {
    }

    /**
     * A layout.
     *
     * @param pulls of each install, 1 or more
     * @param betweenDf a: installs less the rank of their mean design
     * @param ownWithinDf pulls less installs
     * @param known what is known beforehand
     */
    BalancedScatter(int pulls, int betweenDf, double ownWithinDf, ScatterKnowledge known) {
        this.pulls = pulls;
        this.betweenDf = betweenDf;
        this.ownWithinDf = ownWithinDf;
        this.known = known;
        withinDf = ownWithinDf + Math.min(known.pullDf(), AS_GOOD_AS_KNOWN);
        refitDf = Math.min(known.refitDf(), AS_GOOD_AS_KNOWN);
    }

    /** Whether there is anything to estimate both scatters from, or their sum where each install has a single pull. */
    boolean canBeJudged() {
        return (betweenDf > 0 || refitDf > 0) && (withinDf > 0 || pulls == 1 && betweenDf > 0);
    }

    /**
     * The scatter found.
     *
     * @param betweenSquares of install means about their model, not times n
     * @param withinSquares of pulls about their install's mean
     * @return the scatter of install means
     */
    OfMeans of(double betweenSquares, double withinSquares) {
        double between = pulls * betweenSquares;
        double within = withinSquares + (known.pullDf() > 0 ? (withinDf - ownWithinDf) * known.pullVariance() : 0);
        if (known.refitKnown() && known.pullKnown()) {
            return new OfMeans(known.refitVariance() + known.pullVariance() / pulls, Double.POSITIVE_INFINITY);
        }
        if (refitDf == 0) {
            return withoutRefitRecord(between, within);
        }
        if (withinDf == 0) {
            return onSinglePulls(between);
        }
        double ratio = ratio(between, within);
        double pull = squares(ratio, between, within) / (betweenDf + withinDf + refitDf);
        return new OfMeans(pull * (ratio + 1.0 / pulls), degreesOfFreedom(ratio * pull, pull));
    }

    private OfMeans withoutRefitRecord(double between, double within) {
        boolean refitSeen = withinDf == 0 || between / betweenDf > within / withinDf;
        double sum = refitSeen ? between / betweenDf : (between + within) / (betweenDf + withinDf);
        return new OfMeans(sum / pulls, betweenDf);
    }

    /** Single pulls and no record of their scatter: λ from the data, s_r² from the record, one figure for both where they contradict. */
    private OfMeans onSinglePulls(double between) {
        boolean apart = between / betweenDf > known.refitVariance();
        double sum = apart ? between / betweenDf
                : (between + refitDf * known.refitVariance()) / (betweenDf + refitDf);
        return new OfMeans(sum, betweenDf);
    }

    /** A/(1 + nγ) + B + C/γ, all over s_p². */
    private double squares(double ratio, double between, double within) {
        return between / (1 + pulls * ratio) + within + refitDf * known.refitVariance() / ratio;
    }

    private double ratio(double between, double within) {
        DoubleUnaryOperator slope = logRatio -> slope(Math.exp(logRatio), between, within);
        double best = Double.NaN;
        double least = Double.POSITIVE_INFINITY;
        double[] ends = turningPoints(between, within);
        for (int i = 0; i + 1 < ends.length; i++) {
            if (slope.applyAsDouble(ends[i]) < 0 && slope.applyAsDouble(ends[i + 1]) >= 0) {
                double ratio = Math.exp(Roots.between(slope, ends[i], ends[i + 1], 1e-13));
                double criterion = criterion(ratio, between, within);
                if (criterion < least) {
                    least = criterion;
                    best = ratio;
                }
            }
        }
        return best;
    }

    /**
     * Of −2·log-likelihood along the best s_p², in ln γ: from −(a + b) far left to a + c far right. It is written so that the large
     * numbers of a long record are not taken from one another.
     */
    private double slope(double ratio, double between, double within) {
        double share = pulls * ratio / (1 + pulls * ratio);
        double record = refitDf * known.refitVariance() / ratio;
        double data = between / (1 + pulls * ratio) + within;
        double moved = between * share / (1 + pulls * ratio);
        return betweenDf * share
                + (refitDf * (data - moved) - (betweenDf + withinDf) * (record + moved)) / (data + record);
    }

    private double criterion(double ratio, double between, double within) {
        double all = betweenDf + withinDf + refitDf;
        return all * Math.log(squares(ratio, between, within)) + betweenDf * Math.log1p(pulls * ratio) + refitDf * Math.log(ratio);
    }

    /**
     * Logarithms that part the roots of the slope times γ(1 + nγ)²·squares, a cubic k₃γ³ + k₂γ² + k₁γ + k₀ that begins below 0 and ends
     * above: the widest bounds and the turning points between them.
     */
    private double[] turningPoints(double between, double within) {
        double a = betweenDf;
        double c = refitDf;
        double all = a + withinDf + c;
        double record = c * known.refitVariance();
        double n = pulls;
        double k3 = (a + c) * n * n * within;
        double k2 = c * n * within + (a + c) * n * (between + within + n * record) - all * n * (between + n * record);
        double k1 = c * (between + within + n * record) + (a + c) * n * record - 2 * all * n * record;
        double discriminant = k2 * k2 - 3 * k3 * k1;
        if (discriminant <= 0 || k2 >= 0) {
            return aroundTheOnly(between, within);
        }
        double far = -k2 + Math.sqrt(discriminant);
        return k1 <= 0 ? aroundTheOnly(between, within)
                : new double[] {-WIDEST, Math.log(k1 / far), Math.log(far / (3 * k3)), WIDEST};
    }

    /** Where there is one root only, a bracket about what record and pulls alone would say. */
    private double[] aroundTheOnly(double between, double within) {
        double low = Math.max(-WIDEST, Math.min(WIDEST, Math.log(known.refitVariance() * withinDf / within) - 0.5));
        double high = low + 1;
        while (low > -WIDEST && slope(Math.exp(low), between, within) >= 0) {
            high = low;
            low -= 1;
        }
        while (high < WIDEST && slope(Math.exp(high), between, within) < 0) {
            low = high;
            high += 1;
        }
        return new double[] {low, high};
    }

    private double degreesOfFreedom(double refit, double pull) {
        double sum = pull + pulls * refit;
        double both = betweenDf / (2 * sum * sum);
        double ofRefit = pulls * pulls * both + refitDf / (2 * refit * refit);
        double ofPull = both + withinDf / (2 * pull * pull);
        double crossed = pulls * both;
        double spread = (pulls * pulls * ofPull - 2 * pulls * crossed + ofRefit) / (ofRefit * ofPull - crossed * crossed);
        return 2 * sum * sum / spread;
    }
}
