package fairpull.report;

import fairpull.domain.heat.CoolDownFit;
import fairpull.domain.heat.CoolDownLog;
import fairpull.domain.heat.FittedMode;
import fairpull.domain.heat.HeatNotice;
import fairpull.domain.heat.ModeChoice;
import fairpull.domain.heat.Sensitivity;
import fairpull.domain.heat.SoakAnswer;
import fairpull.domain.heat.SoakPlan;
import fairpull.domain.heat.SoakPlan.Bias;
import fairpull.domain.heat.SoakPlan.Holding;
import fairpull.domain.heat.SoakPlan.PullStart;
import fairpull.domain.heat.SoakQuestion;
import fairpull.domain.plan.Part;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/** Answers about heat to write of. All figures are invented; they only have to look like answers. */
public final class HeatExamples {
    private HeatExamples() {
    }

    /** An answer to an order of installs, every column named as given, times and rises stretched by a factor. */
    public static SoakAnswer of(String letters, int warmUps, String column, double stretch) {
        double[] times = IntStream.range(0, 60).mapToDouble(i -> i * 20 * stretch).toArray();
        double[] temperatures = IntStream.range(0, 60)
                .mapToDouble(i -> 295 + 30 * stretch * Math.exp(-i / 20.0) + 0.1 * (i % 3 - 1)).toArray();
        CoolDownLog log = new CoolDownLog(Samples.of(times), Samples.of(temperatures), column, 1);
        CoolDownFit fit = new CoolDownFit(List.of(new FittedMode(400 * stretch, 8, 384 * stretch, 416 * stretch, 30 * stretch, 0.2)), 295,
                0.1, false, 0.08, 57, 0.02, 0.95, true, Samples.of(IntStream.range(0, 60).mapToDouble(i -> 0.1 * (i % 3 - 1)).toArray()),
                Samples.of(new double[9]));
        SoakQuestion question = new SoakQuestion(6, 2, new SoakQuestion.Day(letters, 5, 300, 1200), 295, new Sensitivity.InletRule(),
                new SoakQuestion.Measure(Units.HORSEPOWER, OptionalDouble.of(142000), OptionalDouble.of(2237)));
        SoakPlan plan = new SoakPlan(590, List.of(new Holding(0, 748), new Holding(1, 0)), SoakPlan.OptionalEnds.none(), 8 * stretch,
                OptionalInt.of(warmUps), OptionalInt.of(1), pulls(letters, warmUps, stretch), bias(0.0003), bias(-0.0003), bias(-0.0033));
        return new SoakAnswer(Optional.of(log), Optional.of(new ModeChoice(ModeChoice.Reason.NO_BETTER_THAN_CHANCE,
                OptionalDouble.of(0.31), OptionalDouble.of(-1.2), fit)), fit.shares(), question, plan,
                List.of(HeatNotice.of(HeatNotice.Code.RISE_TAKEN_FROM_LOG, 30.0)));
    }

    private static List<PullStart> pulls(String letters, int warmUps, double stretch) {
        List<PullStart> pulls = new ArrayList<>();
        double time = 0;
        for (int install = 0; install < letters.length(); install++) {
            for (int pull = 0; pull < warmUps + 5; pull++) {
                pulls.add(new PullStart(install, Part.valueOf(letters.substring(install, install + 1)), pull < warmUps, time,
                        8 * stretch * (1 - Math.exp(-pull / 2.0))));
                time += 300;
            }
            time += 1200;
        }
        return pulls;
    }

    private static Bias bias(double relative) {
        return new Bias(relative, OptionalDouble.of(142000 * relative), OptionalDouble.of(Math.abs(142000 * relative) / 2237));
    }
}
