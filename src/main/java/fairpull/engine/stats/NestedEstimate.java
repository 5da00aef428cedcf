package fairpull.engine.stats;

import java.util.Optional;

/**
 * Variances of a nested model by restricted maximum likelihood. What a layer holds depends on what the table repeats: without repeated
 * pulls the lowest layer is pull and refit together, and so on; {@link NestedSums} says what is repeated.
 *
 * @param lowest the variance of single values within the layer above
 * @param betweenInstalls between installs of one session; empty where it is not in the model
 * @param betweenSessions between sessions; empty where it is not in the model
 * @param mean the generalised least-squares mean
 * @param standardError of the mean
 * @param criterion −2·log of the restricted likelihood, with its constants, as lme4 prints it
 */
public record NestedEstimate(Component lowest, Optional<Component> betweenInstalls, Optional<Component> betweenSessions, double mean,
        double standardError, double criterion) {
    /**
     * One variance.
     *
     * @param variance the estimate, 0 where the likelihood falls from 0 on
     * @param standardError of the variance, from the inverse of the expected information on all variances of the model
     */
    public record Component(double variance, double standardError) {
        /** {@return the square root of the variance} */
        public double standardDeviation() {
            return Math.sqrt(variance);
        }

        /** {@return Satterthwaite's degrees of freedom 2·s⁴/var(s²); 0 for a variance that is estimated as 0} */
        public double degreesOfFreedom() {
            return 2 * variance * variance / (standardError * standardError);
        }
    }
}
