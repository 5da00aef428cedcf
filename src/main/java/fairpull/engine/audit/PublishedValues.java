package fairpull.engine.audit;

import fairpull.domain.audit.TTest;
import fairpull.domain.finding.Interval;
import fairpull.domain.pull.Samples;
import fairpull.engine.stats.StudentT;

/**
 * The difference of values that were published one by one: paired, d̄ ÷ (s_d/√n) with n − 1 degrees of freedom (Student 1908); unpaired,
 * by Welch (1947), with Satterthwaite's degrees of freedom.
 *
 * <p>Checked against: Student's sleep data, the boys' shoes of Box, Hunter and Hunter, the battery trial of 1953 (PublishedValuesTest).
 */
public final class PublishedValues {
    private static final double LEVEL = 0.95;

    private PublishedValues() {
    }

    /**
     * The paired test.
     *
     * @param before values before, two or more
     * @param after as many, each belonging to the one at its place
     * @return the test
     * @throws IllegalArgumentException if there are fewer than two pairs, or all differences are equal
     */
    public static TTest paired(Samples before, Samples after) {
        if (before.size() != after.size()) {
            throw new IllegalArgumentException("pairs need as many values after as before, were " + before.size() + " and " + after.size());
        }
        double[] differences = new double[before.size()];
        for (int i = 0; i < differences.length; i++) {
            differences[i] = after.at(i) - before.at(i);
        }
        Samples d = Samples.of(differences);
        return test(true, mean(d), Math.sqrt(variance(d) / d.size()), d.size() - 1);
    }

    /**
     * The unpaired test.
     *
     * @param before values before, two or more
     * @param after values after, two or more
     * @return the test
     * @throws IllegalArgumentException if a side has fewer than two values, or neither scatters
     */
    public static TTest unpaired(Samples before, Samples after) {
        double one = variance(before) / before.size();
        double other = variance(after) / after.size();
        double freedom = (one + other) * (one + other) / (one * one / (before.size() - 1) + other * other / (after.size() - 1));
        return test(false, mean(after) - mean(before), Math.sqrt(one + other), freedom);
    }

    /**
     * The unpaired test with one scatter for both sides, s² = (Σ(x − x̄)² + Σ(y − ȳ)²) ÷ (n + m − 2) (Student 1908).
     *
     * @param before values before, two or more
     * @param after values after, two or more
     * @return the test
     * @throws IllegalArgumentException if a side has fewer than two values, or neither scatters
     */
    public static TTest pooled(Samples before, Samples after) {
        int freedom = before.size() + after.size() - 2;
        double pooled = (variance(before) * (before.size() - 1) + variance(after) * (after.size() - 1)) / freedom;
        return test(false, mean(after) - mean(before), Math.sqrt(pooled * (1.0 / before.size() + 1.0 / after.size())), freedom);
    }

    private static TTest test(boolean paired, double difference, double standardError, double freedom) {
        if (!(standardError > 0)) {
            throw new IllegalArgumentException("values that do not scatter cannot be tested");
        }
        double t = difference / standardError;
        double reach = StudentT.upperQuantile((1 - LEVEL) / 2, freedom) * standardError;
        return new TTest(paired, difference, standardError, freedom, t, StudentT.bothTails(t, freedom),
                new Interval(LEVEL, difference - reach, difference + reach));
    }

    private static double mean(Samples values) {
        return values.stream().average().orElseThrow(() -> new IllegalArgumentException("no values"));
    }

    private static double variance(Samples values) {
        if (values.size() < 2) {
            throw new IllegalArgumentException("scatter needs two values or more, was " + values.size());
        }
        double mean = mean(values);
        return values.stream().map(value -> (value - mean) * (value - mean)).sum() / (values.size() - 1);
    }
}
