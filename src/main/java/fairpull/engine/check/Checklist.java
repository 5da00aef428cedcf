package fairpull.engine.check;

import fairpull.domain.finding.CheckOutcome;
import fairpull.domain.plan.Definition;
import fairpull.domain.plan.Question;
import fairpull.domain.pull.PullTrace;
import fairpull.domain.unit.Quantity;
import java.util.ArrayList;
import java.util.List;

/** Every check of the pulls of a test, in the order in which their outcomes are shown. */
public final class Checklist {
    private Checklist() {
    }

    /** {@return what came of the checks that look at one pull at a time} */
    public static List<CheckOutcome> ofEach(Question question, List<PullTrace> pulls) {
        List<PullCheck> checks = new ArrayList<>(List.of(new UnitMixUp(), new PowerAgainstTorque(), CorrectionRatio.twice(),
                CorrectionRatio.notApplied(), new Plateau(), new TimeRises()));
        if (question.deciding().definition() instanceof Definition.MeanOverBand band) {
            double low = band.lowRadPerS();
            double high = band.highRadPerS();
            checks.addAll(List.of(new BandCovered(low, high), new BandSampled(low, high), new FullThrottle(low, high),
                    new PowerCollapse(), new Spikes(low, high)));
        } else {
            if (question.deciding().definition().isReadOffCurve()) {
                checks.addAll(List.of(new FullThrottle(0, Double.POSITIVE_INFINITY), new PowerCollapse()));
            }
            checks.add(new Spikes(0, Double.POSITIVE_INFINITY));
        }
        return checks.stream().map(check -> check.check(pulls)).toList();
    }

    /** {@return what came of the checks that hold pulls against each other} */
    public static List<CheckOutcome> ofPairs(Question question, List<PullTrace> pulls) {
        List<PullCheck> checks = new ArrayList<>(List.of(new NumbersRepeated(), new PullIsMultiple(), new StretchCopied()));
        if (question.deciding().definition() instanceof Definition.MeanOverBand band
                && (band.quantity() == Quantity.POWER || band.quantity() == Quantity.TORQUE)) {
            checks.add(new CorrectionStep(band));
        }
        return checks.stream().map(check -> check.check(pulls)).toList();
    }
}
