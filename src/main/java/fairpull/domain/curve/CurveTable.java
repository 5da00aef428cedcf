package fairpull.domain.curve;

import fairpull.domain.unit.Unit;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * The curves of all counted pulls on one grid, in the order in which they were run.
 *
 * @param unit the unit of the values, which also says the quantity
 * @param grid the speeds
 * @param bandwidthRadPerS half the width of the window of the local linear fit by which every pull was brought onto the grid; 0 where
 *     the curves were given on it
 * @param covariateNames the names of the rows' covariates
 * @param rows the pulls
 * @param resampled what bringing each pull onto the grid did to it; empty where the curves were given on it
 */
public record CurveTable(Unit unit, SpeedGrid grid, double bandwidthRadPerS, List<String> covariateNames, List<CurveRow> rows,
        List<PullOnGrid> resampled) {
    /** Curves that were given on their grid. */
    public CurveTable(Unit unit, SpeedGrid grid, double bandwidthRadPerS, List<String> covariateNames, List<CurveRow> rows) {
        this(unit, grid, bandwidthRadPerS, covariateNames, rows, List.of());
    }

    public CurveTable {
        covariateNames = List.copyOf(covariateNames);
        rows = List.copyOf(rows);
        resampled = List.copyOf(resampled);
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

    /** {@return the same curves, sessions under other names} */
    public CurveTable mapSessions(UnaryOperator<String> name) {
        List<CurveRow> renamed = rows.stream().map(row -> new CurveRow(name.apply(row.session()), row.install(), row.part(), row.pull(),
                row.minutes(), row.values(), row.covariates())).toList();
        return new CurveTable(unit, grid, bandwidthRadPerS, covariateNames, renamed, resampled);
    }
}
