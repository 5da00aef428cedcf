package fairpull.engine.judging;

import fairpull.domain.finding.Checks.ScatterFound;
import fairpull.domain.finding.JudgeSettings;
import fairpull.domain.finding.ScatterRecord;
import fairpull.domain.finding.Verdict.WhyNotJudged;
import fairpull.engine.stats.ContrastFit;
import fairpull.engine.stats.LeastSquares;
import fairpull.engine.stats.Reml;
import fairpull.engine.stats.ResponseSums;
import fairpull.engine.stats.ScatterKnowledge;
import fairpull.engine.stats.VarianceComponents;
import java.util.Optional;

/**
 * The model fitted to a table: what the verdict rests on. The change is given unless there is a reason why nothing can be judged.
 *
 * @param why the reason why nothing can be judged
 * @param change the change B − A
 * @param scatter the two scatters, where they can be told apart
 * @param installMeans the test on install means, where there are enough installs
 */
record CoreFit(Optional<WhyNotJudged> why, Optional<TStatement> change, Optional<ScatterFound> scatter,
        Optional<TStatement> installMeans) {

    /**
     * Fits a table.
     *
     * @throws IllegalArgumentException if B − A cannot be told apart from sessions, drift or covariates
     */
    static CoreFit of(ModelTable table, JudgeSettings settings) {
        table.requireChangeEstimable();
        Optional<WhyNotJudged> why = whyNot(table, settings);
        if (why.isPresent()) {
            return notJudged(why.get());
        }
        ScatterKnowledge known = knowledge(settings);
        if (known.pullDf() == 0 && table.pullsIdentical()) {
            return withoutPullScatter(table, known);
        }
        if (known.isNone() && table.onePullPerInstall()) {
            return onSinglePulls(table);
        }
        return mixed(table, known);
    }

    /** A fit of which only the change is known. */
    static CoreFit ofChange(TStatement change) {
        return new CoreFit(Optional.empty(), Optional.of(change), Optional.empty(), Optional.empty());
    }

    /** The fit if every pull of B were higher by so much: only the changes move. */
    CoreFit plus(double added) {
        return new CoreFit(why, change.map(statement -> statement.plus(added)), scatter,
                installMeans.map(statement -> statement.plus(added)));
    }

    private static Optional<WhyNotJudged> whyNot(ModelTable table, JudgeSettings settings) {
        if (settings.refitRecord().isEmpty() && table.installDegreesOfFreedom() < 1) {
            return Optional.of(WhyNotJudged.TOO_FEW_INSTALLS);
        }
        boolean identical = table.pullsIdentical();
        if (settings.pullRecord().isEmpty() && table.pullDegreesOfFreedom() < 1 && !identical) {
            return Optional.of(WhyNotJudged.TOO_FEW_PULLS);
        }
        return Optional.empty();
    }

    static ScatterKnowledge knowledge(JudgeSettings settings) {
        double refit = settings.refitRecord().map(ScatterRecord::standardDeviation).orElse(0.0);
        double pull = settings.pullRecord().map(ScatterRecord::standardDeviation).orElse(0.0);
        return new ScatterKnowledge(refit * refit, settings.refitRecord().map(ScatterRecord::degreesOfFreedom).orElse(0.0),
                pull * pull, settings.pullRecord().map(ScatterRecord::degreesOfFreedom).orElse(0.0));
    }

    private static CoreFit mixed(ModelTable table, ScatterKnowledge known) {
        ResponseSums sums = table.sums();
        VarianceComponents components = Reml.estimate(sums, known);
        TStatement change = statement(ContrastFit.of(sums, components, known, table.partColumn()), known);
        return new CoreFit(Optional.empty(), Optional.of(change),
                Optional.of(new ScatterFound(Math.sqrt(components.pullVariance()), components.refitVariance())),
                installMeans(table));
    }

    /** The small-sample adjustment belongs to data that speak alone; a record is information enough. */
    static TStatement statement(ContrastFit fit, ScatterKnowledge known) {
        return new TStatement(fit.estimate(), known.isNone() ? fit.adjustedStandardError() : fit.standardError(),
                fit.degreesOfFreedom());
    }

    /** With one pull per install the two scatters act as one, and the model is a plain regression. */
    private static CoreFit onSinglePulls(ModelTable table) {
        return new CoreFit(Optional.empty(), Optional.of(statement(LeastSquares.of(table.sums(), table.partColumn()))), Optional.empty(),
                installMeans(table));
    }

    /** With no scatter within installs their means are the data; a record of refit scatter is pooled with what they show. */
    private static CoreFit withoutPullScatter(ModelTable table, ScatterKnowledge known) {
        ResponseSums means = table.sumsOfMeansWithCovariates();
        if (!means.design().estimable(table.partColumn())) {
            return notJudged(WhyNotJudged.TOO_FEW_PULLS);
        }
        LeastSquares fit = LeastSquares.of(means, table.partColumn());
        double df = fit.degreesOfFreedom() + known.refitDf();
        if (df <= 0) {
            return notJudged(WhyNotJudged.TOO_FEW_INSTALLS);
        }
        double refitVariance = Double.isInfinite(df) ? known.refitVariance()
                : (fit.residualSumOfSquares() + known.refitDf() * known.refitVariance()) / df;
        TStatement change = new TStatement(fit.estimate(), Math.sqrt(refitVariance * fit.unitVariance()), df);
        return new CoreFit(Optional.empty(), Optional.of(change), Optional.of(new ScatterFound(0, refitVariance)),
                installMeans(table));
    }

    private static CoreFit notJudged(WhyNotJudged why) {
        return new CoreFit(Optional.of(why), Optional.empty(), Optional.empty(), Optional.empty());
    }

    private static Optional<TStatement> installMeans(ModelTable table) {
        return table.installDegreesOfFreedom() < 1 || !table.changeEstimableOnMeans() ? Optional.empty()
                : Optional.of(statement(LeastSquares.of(table.sumsOfMeans(), table.partColumnOfMeans())));
    }

    static TStatement statement(LeastSquares fit) {
        return new TStatement(fit.estimate(), fit.standardError(), fit.degreesOfFreedom());
    }
}
