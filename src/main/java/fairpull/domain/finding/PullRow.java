package fairpull.domain.finding;

import fairpull.domain.plan.Part;
import java.util.List;
import java.util.Objects;

/**
 * One counted pull as the judge sees it.
 *
 * @param session the session it belongs to
 * @param install its install, unique over sessions
 * @param part what was fitted
 * @param pull its name within the install
 * @param minutes when it started; NaN where that is not known
 * @param value the value of the measure, in the table's unit
 * @param covariates in the order of the table's covariate names
 */
public record PullRow(String session, String install, Part part, String pull, double minutes, double value, List<Double> covariates) {
    public PullRow {
        Objects.requireNonNull(session, "session");
        Objects.requireNonNull(install, "install");
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(pull, "pull");
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("the value of pull " + pull + " of install " + install + " must be finite, was " + value);
        }
        covariates = List.copyOf(covariates);
    }
}
