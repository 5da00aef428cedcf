package fairpull.app.usecase.judging;

import fairpull.app.usecase.UsageException;
import fairpull.app.usecase.pulls.FolderCurves;
import fairpull.app.usecase.typing.Typed;
import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.curve.CurveRow;
import fairpull.domain.curve.CurveTable;
import fairpull.domain.curve.PointTable;
import fairpull.domain.curve.PullOnGrid;
import fairpull.domain.curve.SpeedGrid;
import fairpull.domain.finding.CurveFinding;
import fairpull.domain.finding.CurveQuestion;
import fairpull.domain.finding.JudgeSettings;
import fairpull.domain.finding.RelativeScatter;
import fairpull.domain.finding.ScatterRecord;
import fairpull.domain.plan.Part;
import fairpull.domain.pull.DecimalMark;
import fairpull.domain.pull.Samples;
import fairpull.engine.curve.CommonGrid;
import fairpull.engine.curve.Resampled;
import fairpull.io.table.PointTableReader;
import fairpull.io.table.TableOptions;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Judges curves out of a plain long table, brought onto one grid. */
public final class JudgeCurves {
    private JudgeCurves() {
    }

    /**
     * {@return the difference of the curves in a table}
     *
     * @param settings how they are judged; a record is a scatter at a level, taken as a share of it
     * @param bandwidth how far the window of the local linear fits reaches, as typed; null for the usual one
     * @param recordLevel the level of a record; empty for the mean of A over the grid
     */
    public static CurveFinding judge(Path file, JudgeSettings settings, String unit, Optional<DecimalMark> decimalMark, String bandwidth,
            OptionalDouble recordLevel) {
        OptionalDouble reach = Typed.bandwidth("--bandwidth", bandwidth);
        PointTable points = PointTableReader.read(file, new TableOptions(settings.covariates(), settings.drift(), unit, decimalMark));
        if (reach.isPresent() && points.bandwidthRadPerS().isPresent()) {
            throw new UsageException("--bandwidth", "the values of this table are smoothed already, as its column bandwidth says");
        }
        CurveTable table = points.bandwidthRadPerS().isPresent() ? given(file, points)
                : table(file, points, reach.orElse(CommonGrid.BANDWIDTH_RAD_PER_S));
        double level = recordLevel.orElseGet(() -> levelOfA(table));
        try {
            return FolderCurves.judge(table, new CurveQuestion(settings, false, relative(settings.pullRecord(), level),
                    relative(settings.refitRecord(), level))).orElseThrow(() -> new InputException(Place.of(file.toString()),
                    "no speed can be judged", "it takes more installs than two, or --refit-scatter with --refit-df"));
        } catch (IllegalArgumentException notEstimable) {
            throw new InputException(Place.of(file.toString()), notEstimable.getMessage(),
                    "judge it with fewer terms, or with pulls that tell them apart");
        }
    }

    private static Optional<RelativeScatter> relative(Optional<ScatterRecord> record, double level) {
        return record.map(known -> new RelativeScatter(known.standardDeviation() / Math.abs(level), known.degreesOfFreedom()));
    }

    private static double levelOfA(CurveTable table) {
        return table.rows().stream().filter(row -> row.part() == Part.A).flatMapToDouble(row -> row.values().stream())
                .filter(Double::isFinite).average().orElseThrow();
    }

    /** Curves that stand on a grid already are judged as they are. */
    private static CurveTable given(Path file, PointTable points) {
        double[] speeds = points.pulls().stream().flatMapToDouble(pull -> pull.speedsRadPerS().stream()).sorted().toArray();
        SpeedGrid grid = CommonGrid.ofPoints(speeds).orElseThrow(() -> new InputException(Place.of(file.toString()),
                "its column bandwidth says that the values stand on a common grid, but the speeds are not equally spaced",
                "leave the column out if the values are as recorded"));
        List<CurveRow> rows = new ArrayList<>();
        for (PointTable.Pull pull : points.pulls()) {
            double[] values = new double[grid.size()];
            Arrays.fill(values, Double.NaN);
            for (int k = 0; k < pull.speedsRadPerS().size(); k++) {
                values[grid.nearest(pull.speedsRadPerS().at(k))] = pull.values().at(k);
            }
            rows.add(new CurveRow(pull.session(), pull.install(), pull.part(), pull.pull(), pull.minutes(), Samples.of(values),
                    pull.covariates()));
        }
        return new CurveTable(points.unit(), grid, points.bandwidthRadPerS().getAsDouble(), points.covariateNames(), rows);
    }

    private static CurveTable table(Path file, PointTable points, double bandwidth) {
        List<Resampled> curves = new ArrayList<>();
        for (PointTable.Pull pull : points.pulls()) {
            curves.add(Resampled.ofPoints(pull.speedsRadPerS().stream().toArray(), pull.values().stream().toArray())
                    .orElseThrow(() -> new InputException(Place.of(file.toString()), "pull " + pull.pull() + " of install "
                            + pull.install() + " has fewer than two speeds", "a curve needs several; leave the pull out")));
        }
        SpeedGrid grid = CommonGrid.over(curves).orElseThrow(() -> new InputException(Place.of(file.toString()),
                "there are no speeds that all pulls cover", "leave out the pulls that fall short"));
        List<CurveRow> rows = new ArrayList<>();
        List<PullOnGrid> resampled = new ArrayList<>();
        for (int k = 0; k < curves.size(); k++) {
            PointTable.Pull pull = points.pulls().get(k);
            Resampled curve = curves.get(k);
            Samples values = curve.on(grid, bandwidth);
            rows.add(new CurveRow(pull.session(), pull.install(), pull.part(), pull.pull(), pull.minutes(), values, pull.covariates()));
            resampled.add(new PullOnGrid(pull.install(), pull.part(), pull.pull(), curve.lowestRadPerS(), curve.highestRadPerS(),
                    curve.peak(), values.stream().max().orElseThrow(), curve.interpolated(grid, bandwidth)));
        }
        return new CurveTable(points.unit(), grid, bandwidth, points.covariateNames(), rows, resampled);
    }
}
