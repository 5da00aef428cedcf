package fairpull.io.table;

import fairpull.domain.plan.Drift;
import fairpull.domain.pull.DecimalMark;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What is wanted of a plain table of pulls.
 *
 * @param covariates the names of the columns wanted as covariates
 * @param drift the drift that will be modelled; any but {@link Drift#NONE} needs the column of minutes
 * @param unit the unit of the values; empty where none is known
 * @param decimalMark the decimal mark, where whoever asks has said so
 */
public record TableOptions(List<String> covariates, Drift drift, String unit, Optional<DecimalMark> decimalMark) {
    public TableOptions {
        covariates = List.copyOf(covariates);
        Objects.requireNonNull(drift, "drift");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(decimalMark, "decimalMark");
    }

    /** Options without a word on the decimal mark. */
    public TableOptions(List<String> covariates, Drift drift, String unit) {
        this(covariates, drift, unit, Optional.empty());
    }

    /** {@return no covariates, no drift, no unit} */
    public static TableOptions plain() {
        return new TableOptions(List.of(), Drift.NONE, "");
    }
}
