package fairpull.engine.heat;

import fairpull.domain.heat.Mode;
import fairpull.domain.heat.SoakPlan.PullStart;
import fairpull.domain.heat.SoakQuestion;
import fairpull.domain.plan.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/** The start temperature of every pull of a day, followed from pull to pull through warm-ups and swaps. */
final class DayOfPulls {
    private final RepeatedPulls heat;
    private final SoakQuestion.Day day;
    private final double[] left;
    private double timeS;

    private DayOfPulls(RepeatedPulls heat, SoakQuestion.Day day) {
        this.heat = heat;
        this.day = day;
        this.left = new double[heat.modes().size()];
    }

    /**
     * Follows a day that begins at ambient.
     *
     * @param first warm-ups of the first install
     * @param later warm-ups of each later install
     */
    static List<PullStart> follow(RepeatedPulls heat, SoakQuestion.Day day, int first, int later) {
        return new DayOfPulls(heat, day).run(first, later);
    }

    private List<PullStart> run(int first, int later) {
        List<PullStart> starts = new ArrayList<>();
        for (int install = 0; install < day.letters().length(); install++) {
            Part part = Part.valueOf(String.valueOf(day.letters().charAt(install)));
            int warmUps = install == 0 ? first : later;
            if (install > 0) {
                coolFor(day.swapS());
            }
            for (int pull = 0; pull < warmUps + day.pulls(); pull++) {
                starts.add(new PullStart(install, part, pull < warmUps, timeS, DoubleStream.of(left).sum()));
                heatUp();
                coolFor(day.intervalS());
            }
        }
        return starts;
    }

    private void heatUp() {
        for (int k = 0; k < left.length; k++) {
            left[k] += heat.riseK() * heat.modes().get(k).share();
        }
    }

    private void coolFor(double seconds) {
        timeS += seconds;
        for (int k = 0; k < left.length; k++) {
            Mode mode = heat.modes().get(k);
            left[k] *= Math.exp(-seconds / mode.timeConstantS());
        }
    }
}
