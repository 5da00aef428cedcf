package fairpull.engine.stats;

import org.apache.commons.numbers.gamma.RegularizedBeta;
import org.apache.commons.numbers.gamma.RegularizedGamma;

/** The distribution of a ratio of mean squares. */
public final class FisherF {
    private FisherF() {
    }

    /**
     * P(F > f).
     *
     * @param f the ratio, 0 or more
     * @param df1 degrees of freedom of the numerator, above 0
     * @param df2 degrees of freedom of the denominator, above 0; infinity where it is known
     * @return the upper tail
     */
    public static double upperTail(double f, double df1, double df2) {
        if (Double.isInfinite(df2)) {
            return RegularizedGamma.Q.value(0.5 * df1, 0.5 * df1 * f);
        }
        double ratio = df1 * f / df2;
        return ratio < 1
                ? RegularizedBeta.complement(ratio / (1 + ratio), 0.5 * df1, 0.5 * df2)
                : RegularizedBeta.value(1 / (1 + ratio), 0.5 * df2, 0.5 * df1);
    }
}
