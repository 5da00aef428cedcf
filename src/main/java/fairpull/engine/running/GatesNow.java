package fairpull.engine.running;

import fairpull.domain.plan.Condition;
import fairpull.domain.plan.Install;
import fairpull.domain.plan.Plan;
import fairpull.domain.pull.DayLog;
import fairpull.domain.pull.PullId;
import fairpull.domain.running.GateNow;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The gates before a pull, held against the reference: the first counted pull of the first install. */
public final class GatesNow {
    private GatesNow() {
    }

    /** {@return every gate of a plan as it stands before {@code pull}, in the order of the plan} */
    public static List<GateNow> of(Plan plan, DayLog log, PullId pull) {
        Install first = plan.sequence().installs().findFirst().orElseThrow();
        PullId reference = new PullId(first.label(), false, 1);
        Map<Condition, Double> here = log.conditionsAt(pull);
        Map<Condition, Double> there = pull.equals(reference) ? Map.of() : log.conditionsAt(reference);
        Map<Condition, String> overridden = log.gatesOverridden().getOrDefault(pull, Map.of());
        boolean sets = pull.equals(reference) || pull.install().equals(first.label()) && pull.warmUp();
        return plan.gates().stream().map(gate -> new GateNow(gate, reading(here, gate.condition()), reading(there, gate.condition()), sets,
                Optional.ofNullable(overridden.get(gate.condition())))).toList();
    }

    private static OptionalDouble reading(Map<Condition, Double> readings, Condition condition) {
        Double reading = readings.get(condition);
        return reading == null ? OptionalDouble.empty() : OptionalDouble.of(reading);
    }
}
