package fairpull.demo;

import fairpull.domain.pull.PullId;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Draws a test day: when each pull starts, and by how much it lies off the curve. */
final class Day {
    /** Warm-up pulls read low while gearbox and tyres are cold: the first by 2.2 %, the second by 0.7 % (invented). */
    private static final double COLD = 0.022;
    private static final double COLD_LEFT_PER_PULL = 0.32;

    private final Scenario scenario;
    private final SplittableRandom scatter;
    private final SplittableRandom clock;
    private final List<Run> runs = new ArrayList<>();
    private int minute;

    private Day(Scenario scenario) {
        SplittableRandom root = new SplittableRandom(scenario.seed());
        this.scenario = scenario;
        this.scatter = root.split();
        this.clock = root.split();
    }

    /**
     * One pull as it was run.
     *
     * @param id its name
     * @param minute start, counted from the first pull of the day
     * @param factor torque over that of the curve
     * @param aborted whether the driver lifted off half-way
     */
    record Run(PullId id, int minute, double factor, boolean aborted) {
    }

    /** {@return the pulls of the day in the order they were run} */
    static List<Run> draw(Scenario scenario) {
        Day day = new Day(scenario);
        int as = 0;
        int bs = 0;
        for (char part : scenario.order().toCharArray()) {
            day.install(part + String.valueOf(part == 'A' ? ++as : ++bs));
        }
        return List.copyOf(day.runs);
    }

    private void install(String label) {
        double refit = scenario.scatter().refit() * scatter.nextGaussian();
        if (!runs.isEmpty()) {
            minute += scenario.clock().swap() + clock.nextInt(-3, 4);
        }
        for (int number = 1; number <= scenario.warmUps(); number++) {
            run(new PullId(label, true, number), refit - COLD * Math.pow(COLD_LEFT_PER_PULL, number - 1), false);
        }
        for (int number = 1; number <= scenario.pulls(); number++) {
            PullId id = new PullId(label, false, number);
            if (scenario.aborted().filter(id::equals).isPresent()) {
                run(id, refit, true);
            }
            run(id, refit, false);
        }
    }

    private void run(PullId id, double refit, boolean aborted) {
        int sinceFirstCounted = minute - scenario.warmUps() * scenario.clock().interval();
        double drift = scenario.scatter().driftPerMinute() * sinceFirstCounted;
        double factor = 1 + refit + drift + scenario.scatter().pull() * scatter.nextGaussian();
        runs.add(new Run(id, minute, factor, aborted));
        minute += scenario.clock().interval() + clock.nextInt(0, 2);
    }
}
