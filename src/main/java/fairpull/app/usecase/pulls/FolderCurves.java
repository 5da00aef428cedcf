package fairpull.app.usecase.pulls;

import fairpull.app.task.Chunks;
import fairpull.app.task.Progress;
import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.curve.CurveRow;
import fairpull.domain.curve.CurveTable;
import fairpull.domain.curve.PullOnGrid;
import fairpull.domain.curve.SpeedGrid;
import fairpull.domain.finding.Checks.InstallMean;
import fairpull.domain.finding.CurveFinding;
import fairpull.domain.finding.CurveQuestion;
import fairpull.domain.finding.Fate;
import fairpull.domain.finding.Finding;
import fairpull.domain.finding.JudgeSettings;
import fairpull.domain.finding.PullRow;
import fairpull.domain.finding.PullSeen;
import fairpull.domain.finding.RelativeScatter;
import fairpull.domain.finding.ScatterRecord;
import fairpull.domain.plan.CurveSettings;
import fairpull.domain.plan.Measure;
import fairpull.domain.plan.Part;
import fairpull.domain.plan.Plan;
import fairpull.domain.pull.PullId;
import fairpull.domain.pull.Samples;
import fairpull.engine.curve.CommonGrid;
import fairpull.engine.curve.Resampled;
import fairpull.engine.judging.CurveJudge;
import fairpull.io.folder.TestFolder;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The curves of the deciding measure in a test's folder, on one grid, and their difference. */
public final class FolderCurves {
    private final TestFolder test;
    private final TestFolder.Content content;
    private final Plan plan;
    private final Evidence evidence;
    private final Measure measure;
    private final Progress progress;

    private FolderCurves(TestFolder test, TestFolder.Content content, Evidence evidence, Progress progress) {
        this.progress = progress;
        this.test = test;
        this.content = content;
        this.plan = content.plan();
        this.evidence = evidence;
        this.measure = plan.question().deciding();
    }

    /**
     * The difference curve of the deciding measure.
     *
     * @param deciding the finding of the measure itself; its settings hold for the curve as well
     * @return the finding; empty where the measure is not read off a curve or the pulls used hold no curves that can be judged
     */
    public static Optional<CurveFinding> judge(TestFolder test, TestFolder.Content content, Evidence evidence, Finding deciding,
            Progress progress) {
        FolderCurves curves = new FolderCurves(test, content, evidence, progress);
        return curves.table().flatMap(table -> judge(table, curves.question(deciding)));
    }

    /** {@return the difference of some curves, the draws spread over all cores; empty where no speed can be judged} */
    public static Optional<CurveFinding> judge(CurveTable table, CurveQuestion question) {
        CurveJudge judge = CurveJudge.of(table, question);
        return judge.finding(Chunks.run(judge.chunks(), judge::draw, Chunks.cores(), Progress.none()));
    }

    private CurveQuestion question(Finding deciding) {
        JudgeSettings settings = deciding.settings();
        double level = level(plan, deciding);
        return new CurveQuestion(settings, plan.curve().flatMap(CurveSettings::grid).isPresent(), relative(settings.pullRecord(), level),
                relative(settings.refitRecord(), level));
    }

    /** {@return the level of which the scatter of a record is a share, in the unit of the deciding measure} */
    public static double level(Plan plan, Finding deciding) {
        return plan.question().expectedLevelSi().isPresent()
                ? plan.question().deciding().unit().fromSi(plan.question().expectedLevelSi().getAsDouble()) : meanOfA(deciding);
    }

    private static double meanOfA(Finding deciding) {
        return deciding.installs().stream().filter(install -> install.part() == Part.A).mapToDouble(InstallMean::mean).average()
                .orElseThrow();
    }

    private static Optional<RelativeScatter> relative(Optional<ScatterRecord> record, double level) {
        return record.map(known -> new RelativeScatter(known.standardDeviation() / Math.abs(level), known.degreesOfFreedom()));
    }

    private Optional<CurveTable> table() {
        if (!measure.definition().isReadOffCurve()) {
            return Optional.empty();
        }
        Map<PullRow, Resampled> curves = curves();
        boolean bothParts = curves.keySet().stream().map(PullRow::part).distinct().count() == Part.values().length;
        return bothParts ? grid(curves).map(grid -> table(curves, grid)) : Optional.empty();
    }

    /** The rows of the deciding measure's table know all about a pull but its curve; a pull typed in by hand has none. */
    private Map<PullRow, Resampled> curves() {
        Map<PullRow, Resampled> curves = new LinkedHashMap<>();
        List<PullRow> rows = evidence.table(measure, fate -> fate == Fate.USED).rows();
        List<Optional<Resampled>> read = Chunks.run(rows.size(), row -> curve(rows.get(row)), Chunks.cores(), progress);
        for (int row = 0; row < rows.size(); row++) {
            PullRow of = rows.get(row);
            read.get(row).ifPresent(curve -> curves.put(of, curve));
        }
        return curves;
    }

    private Optional<Resampled> curve(PullRow row) {
        return PullId.parse(row.pull()).map(content.log().pulls()::get).filter(pull -> !pull.file().isEmpty())
                .flatMap(pull -> Resampled.of(PullValues.driven(ReadPull.of(test, content.mappings(), pull).channels(), plan),
                        measure.unit().quantity(), plan.scoredWindow()));
    }

    private Optional<SpeedGrid> grid(Map<PullRow, Resampled> curves) {
        Optional<CurveSettings.Grid> declared = plan.curve().flatMap(CurveSettings::grid);
        try {
            return declared.isPresent() ? declared.map(CommonGrid::of) : CommonGrid.over(curves.values());
        } catch (IllegalArgumentException tooFine) {
            throw new InputException(Place.of("plan.json"), "the grid of curves cannot be used: " + tooFine.getMessage(),
                    "amend curve.grid with a wider step");
        }
    }

    private CurveTable table(Map<PullRow, Resampled> curves, SpeedGrid grid) {
        double bandwidth = plan.bandwidthRadPerS().orElse(CommonGrid.BANDWIDTH_RAD_PER_S);
        List<CurveRow> rows = new ArrayList<>();
        List<PullOnGrid> resampled = new ArrayList<>();
        curves.forEach((row, curve) -> {
            double multiplier = multiplier(row);
            Samples values = curve.on(grid, bandwidth).map(si -> measure.unit().fromSi(si * multiplier));
            rows.add(new CurveRow(row.session(), row.install(), row.part(), row.pull(), row.minutes(), values, row.covariates()));
            resampled.add(new PullOnGrid(row.install(), row.part(), row.pull(), curve.lowestRadPerS(), curve.highestRadPerS(),
                    measure.unit().fromSi(curve.peak() * multiplier),
                    values.stream().filter(Double::isFinite).max().orElse(Double.NaN), curve.interpolated(grid, bandwidth)));
        });
        return new CurveTable(measure.unit(), grid, bandwidth, plan.analysis().covariates().stream().map(one -> one.id()).toList(), rows,
                resampled);
    }

    /** What the pull's values were multiplied by to be brought to the plan's standard. */
    private double multiplier(PullRow row) {
        PullSeen seen = evidence.pulls().stream().filter(one -> one.pull().toString().equals(row.pull())).findFirst().orElseThrow();
        return seen.correction().flatMap(correction -> correction.multiplier().stream().boxed().findFirst()).orElse(1.0);
    }
}
