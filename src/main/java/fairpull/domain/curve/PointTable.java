package fairpull.domain.curve;

import fairpull.domain.plan.Part;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Unit;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Curves as points, each pull at speeds of its own.
 *
 * @param unit the unit of the values
 * @param covariateNames the names of the pulls' covariates
 * @param bandwidthRadPerS the bandwidth of the fits that made the values, where they stand on a common grid already; empty where they are
 *     as recorded
 * @param pulls in the order in which they were run
 */
public record PointTable(Unit unit, List<String> covariateNames, OptionalDouble bandwidthRadPerS, List<Pull> pulls) {
    /**
     * One pull.
     *
     * @param session the session it belongs to
     * @param install its install, unique over sessions
     * @param part what was fitted
     * @param pull its name within the install
     * @param minutes when it started; NaN where that is not known
     * @param covariates in the order of the table's covariate names
     * @param speedsRadPerS its speeds, in the order of the table
     * @param values one a speed
     */
    public record Pull(String session, String install, Part part, String pull, double minutes, List<Double> covariates,
            Samples speedsRadPerS, Samples values) {
        public Pull {
            covariates = List.copyOf(covariates);
            if (speedsRadPerS.size() != values.size()) {
                throw new IllegalArgumentException("a pull needs a value for each speed");
            }
        }
    }

    public PointTable {
        covariateNames = List.copyOf(covariateNames);
        pulls = List.copyOf(pulls);
    }
}
