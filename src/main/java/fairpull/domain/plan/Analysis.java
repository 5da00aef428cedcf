package fairpull.domain.plan;

import java.util.List;
import java.util.Objects;

/**
 * The analysis named before the day; the judge obeys it.
 *
 * @param drift how what changes with the clock is modelled
 * @param covariates conditions whose slope is taken out
 */
public record Analysis(Drift drift, List<Condition> covariates) {
    public Analysis {
        Objects.requireNonNull(drift, "drift");
        covariates = List.copyOf(covariates);
        if (covariates.stream().distinct().count() < covariates.size()) {
            throw new IllegalArgumentException("a covariate is named twice");
        }
    }
}
