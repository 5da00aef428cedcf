package fairpull.engine.judging;

import fairpull.domain.curve.CurveTable;
import fairpull.domain.finding.CurveFinding;
import fairpull.domain.finding.CurveFinding.RecordUse;
import fairpull.domain.finding.CurvePoint;
import fairpull.domain.finding.CurveQuestion;
import fairpull.domain.finding.Interval;
import fairpull.domain.finding.JudgeSettings;
import fairpull.domain.plan.Better;
import fairpull.domain.plan.Sides;
import fairpull.engine.stats.MaximumT;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * Judges the difference B − A at every engine speed, and makes a band that holds for all speeds at once.
 *
 * <p>At each speed the model of {@link Judge} is fitted to the pulls that cover it. The band reaches c standard errors to either side,
 * P(max |T| &gt; c) = error rate for a multivariate t: its correlation that of the residual curves (within installs and between them, each
 * standardised at every speed and weighted by their degrees of freedom), its degrees of freedom the median over the speeds. Where the
 * interval of a speed alone reaches further than c, the band reaches as far as that. With unequal pulls and no record of refit scatter a
 * speed counts as shown only where the test on install means, with its own band, says so too.
 *
 * <p>The work falls into chunks that may run side by side: {@link #of}, {@link #draw} for each of {@link #chunks}, {@link #finding}.
 *
 * <p>Checked against: {@link Judge} at each speed (CurveJudgeTest), simulated coverage (BandCoverageTest).
 */
public final class CurveJudge {
    private static final int DIRECTIONS_A_CHUNK = 1000;

    private final CurveTable table;
    private final CurveQuestion question;
    private final CurveFit fit;
    private final int[] places;
    private final List<CurveFit.Column> columns;
    private final Optional<MaximumT> maximum;

    private CurveJudge(CurveTable table, CurveQuestion question) {
        this.table = table;
        this.question = question;
        fit = new CurveFit(table, question);
        columns = new ArrayList<>();
        int[] judged = new int[table.grid().size()];
        for (int place = 0; place < table.grid().size(); place++) {
            Optional<CurveFit.Column> column = fit.at(place);
            if (column.isPresent()) {
                judged[columns.size()] = place;
                columns.add(column.get());
            }
        }
        places = Arrays.copyOf(judged, columns.size());
        maximum = columns.isEmpty() ? Optional.empty() : Optional.of(MaximumT.of(vectors(columns)));
    }

    /** Where a speed leaves nothing over (a single pull an install, no spare install), nothing ties it to its neighbours. */
    private static List<double[]> vectors(List<CurveFit.Column> columns) {
        int[] free = IntStream.range(0, columns.size())
                .filter(j -> Arrays.stream(columns.get(j).residuals()).allMatch(entry -> entry == 0)).toArray();
        List<double[]> vectors = new ArrayList<>();
        for (int j = 0; j < columns.size(); j++) {
            double[] residuals = columns.get(j).residuals();
            double[] vector = Arrays.copyOf(residuals, residuals.length + free.length);
            int alone = Arrays.binarySearch(free, j);
            if (alone >= 0) {
                vector[residuals.length + alone] = 1;
            }
            vectors.add(vector);
        }
        return vectors;
    }

    /**
     * Fits every speed.
     *
     * @param table counted pulls in the order in which they were run
     * @param question how they are judged
     * @return the judge, ready to draw
     * @throws IllegalArgumentException if the settings ask for minutes or a covariate that the table lacks
     */
    public static CurveJudge of(CurveTable table, CurveQuestion question) {
        return new CurveJudge(table, question);
    }

    /** {@return the finding, all of it done one after the other; empty where no speed can be judged} */
    public static Optional<CurveFinding> judge(CurveTable table, CurveQuestion question) {
        CurveJudge judge = of(table, question);
        return judge.finding(IntStream.range(0, judge.chunks()).mapToObj(judge::draw).toList());
    }

    /** {@return how many chunks have to be drawn} */
    public int chunks() {
        return maximum.isEmpty() ? 0 : (question.draws() + DIRECTIONS_A_CHUNK - 1) / DIRECTIONS_A_CHUNK;
    }

    /** {@return one chunk of draws, its seed its own; may be called from several threads at once} */
    public double[] draw(int chunk) {
        int directions = Math.min(DIRECTIONS_A_CHUNK, question.draws() - chunk * DIRECTIONS_A_CHUNK);
        return maximum.orElseThrow().draw(question.seed() * 1_000_003 + chunk, directions, bothSides());
    }

    /**
     * The finding.
     *
     * @param drawn the chunks, in their order
     * @return the finding, in the table's unit; empty where no speed can be judged
     */
    public Optional<CurveFinding> finding(List<double[]> drawn) {
        if (maximum.isEmpty()) {
            return Optional.empty();
        }
        double[] all = drawn.stream().flatMapToDouble(Arrays::stream).toArray();
        double degreesOfFreedom = median(columns.stream().mapToDouble(column -> column.change().degreesOfFreedom()));
        double critical = critical(all, degreesOfFreedom);
        List<CurvePoint> points = new ArrayList<>();
        for (int j = 0; j < places.length; j++) {
            points.add(point(j, critical));
        }
        CurveRanges ranges = new CurveRanges(table.grid(), places, shown(points, all));
        return Optional.of(new CurveFinding(table.unit(), table.bandwidthRadPerS(), question.declared(), level(), critical,
                degreesOfFreedom, question.draws(), recordUse(), points, ranges.gains(), ranges.losses(), ranges.shareOfGain(),
                CurveFigures.of(table, fit, settings()), ranges.transientGain(), table));
    }

    private RecordUse recordUse() {
        return question.refitRecord().map(record -> record.eachSpeed().isPresent() ? RecordUse.EACH_SPEED : RecordUse.BAND_FIGURE)
                .orElse(RecordUse.OWN_DATA);
    }

    private JudgeSettings settings() {
        return question.settings();
    }

    private boolean bothSides() {
        return settings().sides() == Sides.TWO;
    }

    private double level() {
        return 1 - settings().errorRate();
    }

    private double critical(double[] drawn, double degreesOfFreedom) {
        return maximum.orElseThrow().criticalValue(drawn, degreesOfFreedom, settings().errorRate(), bothSides());
    }

    private static double median(DoubleStream values) {
        double[] sorted = values.sorted().toArray();
        int half = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }

    private CurvePoint point(int j, double critical) {
        CurveFit.Column column = columns.get(j);
        TStatement change = column.change();
        double reach = Math.max(critical * change.standardError(), change.reach(settings()));
        return new CurvePoint(table.grid().at(places[j]), column.meanA(), column.meanB(), change.estimate(settings()),
                change.interval(settings()), around(change.change(), reach));
    }

    private Interval around(double change, double reach) {
        boolean openAbove = !bothSides() && settings().better() == Better.MORE;
        boolean openBelow = !bothSides() && settings().better() == Better.LESS;
        return new Interval(level(), openBelow ? Double.NEGATIVE_INFINITY : change - reach,
                openAbove ? Double.POSITIVE_INFINITY : change + reach);
    }

    /** What is shown at each judged speed: 1 a gain, −1 a loss, 0 neither. */
    private int[] shown(List<CurvePoint> points, double[] drawn) {
        int[] shown = points.stream().mapToInt(point -> side(point.band())).toArray();
        boolean ownData = question.refitRecord().isEmpty();
        if (ownData && columns.stream().anyMatch(column -> !column.equalPulls())) {
            double critical = criticalOfMeans(drawn);
            for (int j = 0; j < shown.length; j++) {
                boolean agrees = columns.get(j).equalPulls() || shown[j] == sideByMeans(columns.get(j), critical);
                shown[j] = agrees ? shown[j] : 0;
            }
        }
        return shown;
    }

    private double criticalOfMeans(double[] drawn) {
        double[] df = columns.stream().flatMap(column -> column.means().stream()).mapToDouble(TStatement::degreesOfFreedom).toArray();
        return df.length == 0 ? Double.POSITIVE_INFINITY : critical(drawn, median(Arrays.stream(df)));
    }

    private int sideByMeans(CurveFit.Column column, double critical) {
        return column.means().map(means -> side(around(means.change(),
                Math.max(critical * means.standardError(), means.reach(settings()))))).orElse(0);
    }

    private int side(Interval interval) {
        VerdictRule.GainInterval ends = VerdictRule.GainInterval.of(interval, settings().better());
        if (ends.near() > 0) {
            return 1;
        }
        return ends.far() < 0 ? -1 : 0;
    }
}
