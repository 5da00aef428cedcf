package fairpull.app.usecase.planning;

import fairpull.app.usecase.typing.MeasureText;
import fairpull.app.usecase.typing.Order;
import fairpull.app.usecase.typing.StandardGates;
import fairpull.domain.plan.Analysis;
import fairpull.domain.plan.Correction;
import fairpull.domain.plan.Drift;
import fairpull.domain.plan.Hours;
import fairpull.domain.plan.Install;
import fairpull.domain.plan.Measure;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Question;
import fairpull.domain.plan.Rig;
import fairpull.domain.plan.Sequence;
import fairpull.domain.plan.Session;
import fairpull.domain.plan.Sides;
import fairpull.domain.unit.UnitSystem;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/** What a new test begins with in the window: a plan that stands, with everything open that only its owner knows. */
public final class StartingPlan {
    /** Common practice, no source: a pull every five minutes, twenty minutes for a swap, half an hour for strapping down. */
    private static final Order.Times TIMES = new Order.Times(5 * 60, 20 * 60, 30 * 60);
    private static final Order.Filling FILLING = new Order.Filling(5, 2, true);

    /**
     * The orders that are offered by name, from the shortest: every day ends with the part that it began with, so that a return shows, and
     * both parts stand at the same time on average, so that a steady drift leaves the change alone.
     */
    public static final List<String> TEMPLATES = List.of("ABA", "ABBA", "ABABA", "ABABABA", "ABBAABBA", "ABA|BAB");

    private StartingPlan() {
    }

    /** {@return a plan to begin with} */
    public static Plan in(UnitSystem system) {
        String unit = system == UnitSystem.US ? "hp" : "kW";
        Measure deciding = MeasureText.parse("mean power 3000-6500 rpm in " + unit, Correction.NONE);
        Question question = new Question("as it is", "with the part fitted", deciding, List.of(), OptionalDouble.empty(),
                OptionalDouble.empty(), Sides.TWO, 0.05, 0.8, List.of());
        Rig rig = new Rig("our rig", Rig.Kind.ROLLER_BRAKE, OptionalDouble.empty(), "", OptionalDouble.empty(), List.of(),
                Optional.empty(), Optional.empty());
        return new Plan("Untitled test", "", question, new Analysis(Drift.NONE, List.of()), rig,
                Order.sequence("ABABA", OptionalLong.empty(), FILLING, TIMES), StandardGates.of(rig.kind()), StandardGates.checklist());
    }

    /** {@return the sequence of a plan in another order, filled and timed as its first install is; with a seed the order is drawn} */
    public static Sequence reordered(Sequence old, String letters, OptionalLong seed) {
        Install first = old.installs().findFirst().orElseThrow();
        return made(old, letters, seed, first.countedPulls(), first.warmUpPulls());
    }

    /** {@return a sequence with the times and hours of another, such as a day that was searched for} */
    public static Sequence refilled(Sequence old, String letters, int pulls, int warmUps) {
        return made(old, letters, OptionalLong.empty(), pulls, warmUps);
    }

    private static Sequence made(Sequence old, String letters, OptionalLong seed, int pulls, int warmUps) {
        boolean unstrapped = old.installs().skip(1).allMatch(Install::unstrapped);
        Sequence made = Order.sequence(letters, seed, new Order.Filling(pulls, warmUps, unstrapped),
                new Order.Times(old.pullIntervalS(), old.swapS(), old.setUpS()));
        Optional<Hours> hours = old.sessions().get(0).hours();
        return made.withLabelled(made.sessions().stream()
                .map(session -> new Session(session.name(), session.installs(), hours)).toList());
    }
}
