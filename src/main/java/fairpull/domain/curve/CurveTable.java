package fairpull.domain.curve;

import fairpull.domain.unit.Unit;
import java.util.List;

/**
 * The curves of all counted pulls on one grid, in the order in which they were run.
 *
 * @param unit the unit of the values, which also says the quantity
 * @param grid the speeds
 * @param bandwidthRadPerS half the width of the window of the local linear fit by which every pull was brought onto the grid
 * @param covariateNames the names of the rows' covariates
 * @param rows the pulls
 */
public record CurveTable(Unit unit, SpeedGrid grid, double bandwidthRadPerS, List<String> covariateNames, List<CurveRow> rows) {
    public CurveTable {
        covariateNames = List.copyOf(covariateNames);
        rows = List.copyOf(rows);
        for (CurveRow row : rows) {
            if (row.values().size() != grid.size()) {
                throw new IllegalArgumentException("the curve of pull " + row.pull() + " of install " + row.install() + " has "
                        + row.values().size() + " values for a grid of " + grid.size() + " speeds");
            }
            if (row.covariates().size() != covariateNames.size()) {
                throw new IllegalArgumentException("pull " + row.pull() + " of install " + row.install() + " has "
                        + row.covariates().size() + " covariates, the table has " + covariateNames.size());
            }
        }
    }
}
