package fairpull.domain.curve;

import fairpull.domain.plan.Part;
import fairpull.domain.pull.Samples;
import java.util.List;
import java.util.Objects;

/**
 * The curve of one counted pull on the grid of its table.
 *
 * @param session the session it belongs to
 * @param install its install, unique over sessions
 * @param part what was fitted
 * @param pull its name within the install
 * @param minutes when it started; NaN where that is not known
 * @param values one a speed of the grid, in the table's unit; NaN where the pull does not cover the speed
 * @param covariates in the order of the table's covariate names
 */
public record CurveRow(String session, String install, Part part, String pull, double minutes, Samples values,
        List<Double> covariates) {
    public CurveRow {
        Objects.requireNonNull(session, "session");
        Objects.requireNonNull(install, "install");
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(pull, "pull");
        covariates = List.copyOf(covariates);
    }

    /** {@return the name of the pull within the test: {@code A1-2}} */
    public String name() {
        return pull.startsWith(install + "-") ? pull : install + "-" + pull;
    }
}
