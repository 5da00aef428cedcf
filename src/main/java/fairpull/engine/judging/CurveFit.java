package fairpull.engine.judging;

import fairpull.domain.curve.CurveRow;
import fairpull.domain.curve.CurveTable;
import fairpull.domain.finding.CurveQuestion;
import fairpull.domain.finding.JudgeSettings;
import fairpull.domain.finding.PullRow;
import fairpull.domain.finding.PullTable;
import fairpull.domain.finding.ScatterRecord;
import fairpull.domain.plan.Part;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;

/** The model of a single measure, fitted to columns of a curve table: speed by speed, or to one number made of each curve. */
final class CurveFit {
    private final CurveTable table;
    private final CurveQuestion question;
    private final Map<String, Integer> installs = new HashMap<>();
    private final Map<BitSet, Optional<ModelTable>> layouts = new HashMap<>();

    CurveFit(CurveTable table, CurveQuestion question) {
        this.table = table;
        this.question = question;
        table.rows().forEach(row -> installs.putIfAbsent(row.install(), installs.size()));
    }

    /**
     * The fit of one column.
     *
     * @param meanA mean of the install means of A
     * @param meanB mean of the install means of B
     * @param change B − A
     * @param means the test on install means, where there are enough installs
     * @param equalPulls whether all installs have equally many pulls here
     * @param residuals what the model leaves over: an entry for each pull of the table, then one for each of its installs; scaled so that
     *     the squares of either kind add up to their degrees of freedom
     */
    record Column(double meanA, double meanB, TStatement change, Optional<TStatement> means, boolean equalPulls, double[] residuals) {
    }

    /** {@return the fit at one speed; empty where the pulls that cover it cannot be judged} */
    Optional<Column> at(int place) {
        double[] values = table.rows().stream().mapToDouble(row -> row.values().at(place)).toArray();
        return of(values, level -> settings(question.pullRecord().map(record -> record.at(level, place)),
                question.refitRecord().map(record -> record.at(level, place))));
    }

    /** {@return the fit of one number a pull, NaN where a pull has none; records count by their figure for the band} */
    Optional<Column> of(double[] values) {
        return of(values, level -> settings(question.pullRecord().map(record -> record.at(level)),
                question.refitRecord().map(record -> record.at(level))));
    }

    private JudgeSettings settings(Optional<ScatterRecord> pull, Optional<ScatterRecord> refit) {
        return question.settings().withRecords(pull, refit);
    }

    private Optional<Column> of(double[] values, DoubleFunction<JudgeSettings> settingsAt) {
        BitSet covered = new BitSet(values.length);
        for (int k = 0; k < values.length; k++) {
            covered.set(k, Double.isFinite(values[k]));
        }
        double[] present = covered.stream().mapToDouble(k -> values[k]).toArray();
        return layouts.computeIfAbsent(covered, this::layout).map(layout -> layout.withValues(present))
                .flatMap(model -> fit(model, covered, settingsAt));
    }

    /** The model of the pulls that cover a column; empty where they cannot tell B from A. */
    private Optional<ModelTable> layout(BitSet covered) {
        List<PullRow> rows = new ArrayList<>();
        for (int k = covered.nextSetBit(0); k >= 0; k = covered.nextSetBit(k + 1)) {
            CurveRow row = table.rows().get(k);
            rows.add(new PullRow(row.session(), row.install(), row.part(), row.pull(), row.minutes(), 0, row.covariates()));
        }
        boolean bothParts = rows.stream().map(PullRow::part).distinct().count() == Part.values().length;
        return bothParts ? Optional.of(ModelTable.of(new PullTable(table.unit().symbol(), table.covariateNames(), rows),
                question.settings())).filter(ModelTable::changeEstimable) : Optional.empty();
    }

    private Optional<Column> fit(ModelTable model, BitSet covered, DoubleFunction<JudgeSettings> settingsAt) {
        double meanA = meanOf(model, Part.A);
        boolean levelNeeded = question.pullRecord().isPresent() || question.refitRecord().isPresent();
        if (levelNeeded && meanA == 0) {
            return Optional.empty();
        }
        CoreFit fit = CoreFit.of(model, settingsAt.apply(meanA));
        return fit.change().filter(change -> change.standardError() > 0).map(change -> new Column(meanA, meanOf(model, Part.B), change,
                fit.installMeans(), model.equalPulls(), residuals(model, covered)));
    }

    private static double meanOf(ModelTable model, Part part) {
        double[] means = model.oneWay().means();
        boolean[] isB = model.installIsB();
        double sum = 0;
        int count = 0;
        for (int i = 0; i < means.length; i++) {
            if (isB[i] == (part == Part.B)) {
                sum += means[i];
                count++;
            }
        }
        return sum / count;
    }

    private double[] residuals(ModelTable model, BitSet covered) {
        int pulls = table.rows().size();
        double[] residuals = new double[pulls + installs.size()];
        double[] within = scaled(model.residualsWithin(), model.pullDegreesOfFreedom() - model.installDegreesOfFreedom());
        double[] between = scaled(model.residualsOfMeans(), model.installDegreesOfFreedom());
        int k = 0;
        for (int pull = covered.nextSetBit(0); pull >= 0; pull = covered.nextSetBit(pull + 1)) {
            residuals[pull] = within[k++];
        }
        for (int i = 0; i < between.length; i++) {
            residuals[pulls + installs.get(model.installs().get(i).install())] = between[i];
        }
        return residuals;
    }

    /** Without degrees of freedom what is left over is rounding, and counts for nothing. */
    private static double[] scaled(double[] residuals, int degreesOfFreedom) {
        double squares = 0;
        for (double residual : residuals) {
            squares += residual * residual;
        }
        double factor = degreesOfFreedom > 0 && squares > 0 ? Math.sqrt(degreesOfFreedom / squares) : 0;
        double[] scaled = new double[residuals.length];
        for (int k = 0; k < scaled.length; k++) {
            scaled[k] = factor * residuals[k];
        }
        return scaled;
    }
}
