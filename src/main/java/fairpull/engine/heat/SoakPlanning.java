package fairpull.engine.heat;

import fairpull.domain.heat.Mode;
import fairpull.domain.heat.SoakPlan;
import fairpull.domain.heat.SoakPlan.Bias;
import fairpull.domain.heat.SoakPlan.Holding;
import fairpull.domain.heat.SoakPlan.OptionalEnds;
import fairpull.domain.heat.SoakPlan.PullStart;
import fairpull.domain.heat.SoakQuestion;
import fairpull.domain.plan.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What the heat asks of a day: interval, warm-ups, and the bias that is left on B − A as a plain difference of the means of the counted
 * pulls. A counted pull holds when it starts within the tolerance of the reference pull, the first counted one of the first install.
 */
public final class SoakPlanning {
    private static final int MOST_LISTED = 5;

    private final RepeatedPulls heat;
    private final SoakQuestion question;

    private SoakPlanning(RepeatedPulls heat, SoakQuestion question) {
        this.heat = heat;
        this.question = question;
    }

    /**
     * Plans a day.
     *
     * @param modes time constants with their shares of a pull's rise; the shares add up to 1
     * @param question rise, tolerance, order, clock, sensitivity
     * @param holdingInterval uncertainty of the interval that holds without warm-ups
     * @return what is needed, and what is left
     */
    public static SoakPlan plan(List<Mode> modes, SoakQuestion question, OptionalEnds holdingInterval) {
        return new SoakPlanning(new RepeatedPulls(modes, question.pullRiseK()), question).plan(holdingInterval);
    }

    private SoakPlan plan(OptionalEnds holdingInterval) {
        double tolerance = question.toleranceK();
        Optional<WarmUps> held = WarmUps.fewest(heat, question.day(), tolerance);
        List<PullStart> pulls = DayOfPulls.follow(heat, question.day(), held.map(WarmUps::first).orElse(0),
                held.map(WarmUps::later).orElse(0));
        List<PullStart> bare = DayOfPulls.follow(heat, question.day(), 0, 0);
        double reference = question.ambientK() + WarmUps.reference(pulls);
        OptionalInt first = held.map(WarmUps::first).map(OptionalInt::of)
                .orElseGet(() -> WarmUps.ofFirstInstall(heat, question.day(), tolerance));
        return new SoakPlan(heat.coolsWithin(tolerance), holding(), holdingInterval, heat.settledRise(question.day().intervalS()), first,
                held.map(WarmUps::later).map(OptionalInt::of).orElse(OptionalInt.empty()), pulls, bias(difference(pulls)),
                bias(difference(bare)), bias(question.sensitivity().relativeChange(reference, reference + tolerance)));
    }

    private List<Holding> holding() {
        List<Holding> holding = new ArrayList<>();
        for (int warmUps = 0; warmUps <= MOST_LISTED; warmUps++) {
            holding.add(new Holding(warmUps, heat.shortestInterval(warmUps, question.toleranceK())));
        }
        return holding;
    }

    /** Mean of the counted pulls with B less mean of those with A, relative to the level at ambient; 0 without both. */
    private double difference(List<PullStart> pulls) {
        OptionalDouble a = mean(pulls, Part.A);
        OptionalDouble b = mean(pulls, Part.B);
        return a.isPresent() && b.isPresent() ? b.getAsDouble() - a.getAsDouble() : 0;
    }

    private OptionalDouble mean(List<PullStart> pulls, Part part) {
        double ambient = question.ambientK();
        return pulls.stream().filter(pull -> !pull.warmUp() && pull.part() == part)
                .mapToDouble(pull -> question.sensitivity().relativeChange(ambient, ambient + pull.riseK())).average();
    }

    private Bias bias(double relative) {
        OptionalDouble level = question.measure().levelSi();
        OptionalDouble gain = question.measure().worthwhileSi();
        OptionalDouble si = level.isPresent() ? OptionalDouble.of(relative * level.getAsDouble()) : OptionalDouble.empty();
        OptionalDouble share = si.isPresent() && gain.isPresent()
                ? OptionalDouble.of(Math.abs(si.getAsDouble()) / gain.getAsDouble()) : OptionalDouble.empty();
        return new Bias(relative, si, share);
    }
}
