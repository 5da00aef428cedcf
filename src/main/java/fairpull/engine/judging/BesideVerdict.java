package fairpull.engine.judging;

import fairpull.domain.finding.Checks.InstallMean;
import fairpull.domain.finding.Checks.Outlier;
import fairpull.domain.finding.Checks.RecordCheck;
import fairpull.domain.finding.Checks.ReturnCheck;
import fairpull.domain.finding.Interval;
import fairpull.domain.finding.JudgeSettings;
import fairpull.domain.finding.PullRow;
import fairpull.domain.finding.ScatterRecord;
import fairpull.domain.plan.Part;
import fairpull.engine.stats.ExtremeStudentizedDeviate;
import fairpull.engine.stats.FisherF;
import fairpull.engine.stats.LeastSquares;
import fairpull.engine.stats.OneWay;
import fairpull.engine.stats.Randomisation;
import fairpull.engine.stats.StudentT;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The checks that need no mixed model: return to A, the record, randomisation, outliers, install means. */
final class BesideVerdict {
    private static final double OUTLIER_ALPHA = 0.05;

    private BesideVerdict() {
    }

    /**
     * Last A less first A, of raw install means. The pull-only interval rests on pull scatter pooled within installs (on the record
     * where no install has two pulls); the other one adds the variance 2·s₀² of the refit record, with Satterthwaite's degrees of
     * freedom.
     *
     * @return empty with several sessions, a single A, or no pull scatter at all
     */
    static Optional<ReturnCheck> returnCheck(ModelTable table, JudgeSettings settings) {
        List<Integer> installsOfA = new ArrayList<>();
        for (int i = 0; i < table.installs().size(); i++) {
            if (table.installs().get(i).part() == Part.A) {
                installsOfA.add(i);
            }
        }
        Optional<PooledVariance> pulls = pullVariance(table.oneWay(), settings);
        if (table.sessions() > 1 || installsOfA.size() < 2 || pulls.isEmpty()) {
            return Optional.empty();
        }
        OneWay oneWay = table.oneWay();
        int first = installsOfA.get(0);
        int last = installsOfA.get(installsOfA.size() - 1);
        double difference = oneWay.means()[last] - oneWay.means()[first];
        PooledVariance ofDifference = pulls.get().times(1.0 / oneWay.sizes()[first] + 1.0 / oneWay.sizes()[last]);
        Interval pullOnly = interval(difference, ofDifference, settings);
        Interval withRefit = settings.refitRecord().map(PooledVariance::of)
                .map(refit -> interval(difference, ofDifference.plus(refit.times(2)), settings)).orElse(pullOnly);
        return Optional.of(new ReturnCheck(difference, pullOnly, withRefit, settings.refitRecord().isPresent()));
    }

    private static Interval interval(double difference, PooledVariance variance, JudgeSettings settings) {
        double reach = variance.variance() == 0 ? 0
                : StudentT.upperQuantile(settings.errorRate() / 2, variance.degreesOfFreedom()) * Math.sqrt(variance.variance());
        return new Interval(1 - settings.errorRate(), difference - reach, difference + reach);
    }

    private static Optional<PooledVariance> pullVariance(OneWay oneWay, JudgeSettings settings) {
        return oneWay.withinDegreesOfFreedom() > 0
                ? Optional.of(new PooledVariance(oneWay.withinMeanSquare(), oneWay.withinDegreesOfFreedom()))
                : settings.pullRecord().map(PooledVariance::of);
    }

    /**
     * F = residual mean square of the install-means regression / (s₀² + s_p²/ñ), ñ the harmonic mean of pulls per install.
     *
     * @return empty without a refit record, without install degrees of freedom or without any pull scatter
     */
    static Optional<RecordCheck> recordCheck(ModelTable table, JudgeSettings settings) {
        OneWay oneWay = table.oneWay();
        Optional<PooledVariance> pulls = pullVariance(oneWay, settings);
        if (settings.refitRecord().isEmpty() || pulls.isEmpty() || table.installDegreesOfFreedom() < 1
                || !table.changeEstimableOnMeans()) {
            return Optional.empty();
        }
        LeastSquares means = LeastSquares.of(table.sumsOfMeans(), table.partColumnOfMeans());
        PooledVariance predicted = PooledVariance.of(settings.refitRecord().get()).plus(pulls.get().times(1 / oneWay.harmonicMeanSize()));
        double f = means.meanSquare() / predicted.variance();
        return Optional.of(new RecordCheck(f, means.degreesOfFreedom(), predicted.degreesOfFreedom(),
                FisherF.upperTail(f, means.degreesOfFreedom(), predicted.degreesOfFreedom())));
    }

    static fairpull.domain.finding.Checks.Randomisation randomisation(ModelTable table) {
        Randomisation found = Randomisation.of(table.sessionOfInstall(), table.installIsB(), table.oneWay().means());
        return new fairpull.domain.finding.Checks.Randomisation(found.pValue(), found.orders(), found.exact());
    }

    /** Pulls far from their install's mean, at most a tenth of those that have companions and at least one, in the order of the day. */
    static List<Outlier> outliers(ModelTable table) {
        OneWay oneWay = table.oneWay();
        List<Integer> accompanied = new ArrayList<>();
        for (int k = 0; k < table.rows().size(); k++) {
            if (oneWay.sizes()[table.installOf(k)] > 1) {
                accompanied.add(k);
            }
        }
        if (table.pullsIdentical()) {
            return List.of();
        }
        double[] deviations = accompanied.stream().mapToDouble(k -> oneWay.deviations()[k]).toArray();
        return ExtremeStudentizedDeviate.outliers(deviations, Math.max(1, deviations.length / 10), OUTLIER_ALPHA).stream().sorted()
                .map(k -> outlier(table.rows().get(accompanied.get(k)), deviations[k])).toList();
    }

    private static Outlier outlier(PullRow row, double deviation) {
        return new Outlier(row.install(), row.pull(), deviation);
    }

    static List<InstallMean> installMeans(ModelTable table) {
        OneWay oneWay = table.oneWay();
        double[] squares = new double[table.installs().size()];
        for (int k = 0; k < table.rows().size(); k++) {
            squares[table.installOf(k)] += oneWay.deviations()[k] * oneWay.deviations()[k];
        }
        List<InstallMean> means = new ArrayList<>();
        for (int i = 0; i < squares.length; i++) {
            PullRow row = table.installs().get(i);
            int pulls = oneWay.sizes()[i];
            means.add(new InstallMean(row.session(), row.install(), row.part(), pulls, oneWay.means()[i],
                    pulls > 1 ? Math.sqrt(squares[i] / (pulls - 1)) : Double.NaN));
        }
        return means;
    }

    /**
     * A variance and the degrees of freedom behind it.
     *
     * @param variance 0 or more
     * @param degreesOfFreedom above 0, infinity where it is known
     */
    private record PooledVariance(double variance, double degreesOfFreedom) {
        static PooledVariance of(ScatterRecord record) {
            return new PooledVariance(record.standardDeviation() * record.standardDeviation(), record.degreesOfFreedom());
        }

        PooledVariance times(double factor) {
            return new PooledVariance(factor * variance, degreesOfFreedom);
        }

        /** The sum, with Satterthwaite's degrees of freedom: (a + b)²/(a²/ν_a + b²/ν_b). */
        PooledVariance plus(PooledVariance other) {
            double sum = variance + other.variance;
            double spread = variance * variance / degreesOfFreedom + other.variance * other.variance / other.degreesOfFreedom;
            return new PooledVariance(sum, sum * sum / spread);
        }
    }
}
