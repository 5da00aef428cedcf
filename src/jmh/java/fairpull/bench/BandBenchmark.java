package fairpull.bench;

import fairpull.app.task.Chunks;
import fairpull.app.task.Progress;
import fairpull.domain.curve.CurveRow;
import fairpull.domain.curve.CurveTable;
import fairpull.domain.curve.SpeedGrid;
import fairpull.domain.finding.CurveFinding;
import fairpull.domain.finding.CurveQuestion;
import fairpull.domain.finding.JudgeSettings;
import fairpull.domain.finding.RelativeScatter;
import fairpull.domain.plan.Part;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Units;
import fairpull.engine.judging.CurveJudge;
import fairpull.engine.stats.Deviates;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * A difference curve with its band, from the curves on their grid to the finding: 200 speeds, 40 pulls (eight installs of five), 10,000
 * directions on all cores. There is a target for it: 100 ms on two cores. Every value scatters by itself, the roughest case.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class BandBenchmark {
    private static final int SPEEDS = 200;
    private static final int PULLS = 5;

    /** Degrees of freedom of the record of refit scatter; 0 for own data. */
    @Param({"0", "11"})
    public int recordDf;

    private final CurveTable table = table();

    /** The whole judgement. */
    @Benchmark
    public CurveFinding judged() {
        CurveJudge judge = CurveJudge.of(table, new CurveQuestion(JudgeSettings.plain(), true, Optional.empty(),
                recordDf == 0 ? Optional.empty() : Optional.of(new RelativeScatter(0.01, recordDf))));
        return judge.finding(Chunks.run(judge.chunks(), judge::draw, Chunks.cores(), Progress.none())).orElseThrow();
    }

    /** The models at all speeds alone, without a draw. */
    @Benchmark
    public CurveJudge fitted() {
        return CurveJudge.of(table, new CurveQuestion(JudgeSettings.plain(), true, Optional.empty(),
                recordDf == 0 ? Optional.empty() : Optional.of(new RelativeScatter(0.01, recordDf))));
    }

    private static CurveTable table() {
        Deviates deviates = new Deviates(1);
        List<CurveRow> rows = new ArrayList<>();
        for (int install = 0; install < 8; install++) {
            Part part = "ABBABAAB".charAt(install) == 'A' ? Part.A : Part.B;
            double refit = deviates.normal();
            for (int pull = 1; pull <= PULLS; pull++) {
                double[] values = new double[SPEEDS];
                for (int j = 0; j < SPEEDS; j++) {
                    values[j] = 150 + refit + deviates.normal();
                }
                rows.add(new CurveRow("1", "I" + install, part, "" + pull, Double.NaN, Samples.of(values), List.of()));
            }
        }
        return new CurveTable(Units.HORSEPOWER, new SpeedGrid(Units.RPM.toSi(2000), Units.RPM.toSi(25), SPEEDS), Units.RPM.toSi(100),
                List.of(), rows);
    }
}
