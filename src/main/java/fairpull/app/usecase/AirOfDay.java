package fairpull.app.usecase;

import fairpull.domain.air.StandardLimits;
import fairpull.domain.finding.Notice;
import fairpull.domain.finding.Notice.Code;
import fairpull.domain.plan.Correction;
import fairpull.domain.plan.Measure;
import fairpull.domain.pull.PullId;
import fairpull.engine.air.Factor;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** How the air went over the used pulls of a test, by the factor of the deciding measure's standard. */
final class AirOfDay {
    /** A larger step of the factor between neighbouring pulls is asked about; common practice, no source. */
    private static final double STEP = 0.005;

    private final Measure deciding;
    private final Map<PullId, Double> multipliers = new LinkedHashMap<>();
    private final List<String> steps = new ArrayList<>();
    private final List<String> outside = new ArrayList<>();
    private double largestStep;
    private String session = "";
    private double before = Double.NaN;

    AirOfDay(Measure deciding) {
        this.deciding = deciding;
    }

    /** Takes note of what the deciding measure of a pull was multiplied by. */
    void brought(PullId pull, double multiplier) {
        multipliers.put(pull, multiplier);
    }

    /** Takes the next used pull, in the order in which they were run. */
    void next(String ofSession, PulledAir air) {
        OptionalDouble factor = isCorrected() ? air.multiplierIfKnown(Correction.NONE, deciding.correction()) : OptionalDouble.empty();
        if (factor.isEmpty()) {
            return;
        }
        double now = factor.getAsDouble();
        double step = ofSession.equals(session) ? Math.abs(now / before - 1) : 0;
        if (step > STEP) {
            steps.add(air.pull().toString());
            largestStep = Math.max(largestStep, step);
        }
        if (!Factor.limits(deciding.correction()).holdsFactor(now)) {
            outside.add(air.pull().toString());
        }
        session = ofSession;
        before = now;
    }

    private boolean isCorrected() {
        return PulledAir.concerns(deciding) && deciding.correction() != Correction.NONE;
    }

    /** {@return what a reader must know about it} */
    List<Notice> notices() {
        List<Notice> notices = new ArrayList<>();
        if (!multipliers.isEmpty()) {
            notices.add(new Notice(Code.CORRECTED_HERE, List.of(multipliers.values().stream().min(Double::compare).orElseThrow(),
                    multipliers.values().stream().max(Double::compare).orElseThrow()),
                    multipliers.keySet().stream().map(PullId::toString).toList()));
        }
        if (!steps.isEmpty()) {
            notices.add(new Notice(Code.FACTOR_STEP, List.of(largestStep), steps));
        }
        if (!outside.isEmpty()) {
            StandardLimits limits = Factor.limits(deciding.correction());
            notices.add(new Notice(Code.FACTOR_OUTSIDE, List.of(limits.lowFactor(), limits.highFactor()), outside));
        }
        return notices;
    }
}
