package fairpull.app.usecase.pulls;

import fairpull.domain.finding.Notice;
import fairpull.domain.plan.MovingMass;
import fairpull.domain.plan.Plan;
import fairpull.domain.pull.PullTrace;
import fairpull.domain.unit.Quantity;
import fairpull.engine.curve.DrivenPower;
import fairpull.engine.curve.SweepCheck;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What is doubtful about the sweeps of a test, and what its power was computed from. */
public final class SweepDoubts {
    private SweepDoubts() {
    }

    /** {@return the notices about the pulls whose values count; the first of them is what the others are held against} */
    public static List<Notice> of(Plan plan, List<PullTrace> traces) {
        List<PullTrace> used = traces.stream().filter(PullTrace::used).toList();
        List<Notice> notices = new ArrayList<>();
        if (isSwept(plan)) {
            notices.addAll(SweepCheck.of(used.stream().filter(trace -> trace.channels().find(Quantity.ENGINE_SPEED).isPresent())
                    .map(trace -> new SweepCheck.Pull(trace.pull().toString(), trace.channels())).toList()));
        }
        plan.rig().movingMass().flatMap(mass -> fromMotion(mass, used)).ifPresent(notices::add);
        return notices;
    }

    /** Times between two speeds are taken from logs in which the engine may do what it likes. */
    private static boolean isSwept(Plan plan) {
        return plan.question().measures().stream().map(measure -> measure.definition().channels())
                .anyMatch(channels -> channels.contains(Quantity.ENGINE_SPEED) && !channels.contains(Quantity.TIME));
    }

    private static Optional<Notice> fromMotion(MovingMass mass, List<PullTrace> pulls) {
        Map<String, Double> uncertainties = new LinkedHashMap<>();
        pulls.forEach(trace -> DrivenPower.relativeUncertainty(trace.channels(), mass)
                .ifPresent(own -> uncertainties.put(trace.pull().toString(), own)));
        return uncertainties.values().stream().max(Double::compare).map(largest -> new Notice(Notice.Code.POWER_FROM_MOTION,
                List.of(mass.massKg(), mass.windowS(), largest), List.copyOf(uncertainties.keySet())));
    }
}
