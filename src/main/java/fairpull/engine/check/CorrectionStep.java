package fairpull.engine.check;

import fairpull.domain.finding.CheckOutcome;
import fairpull.domain.finding.Notice.Code;
import fairpull.domain.plan.Definition;
import fairpull.domain.pull.PullTrace;
import fairpull.engine.curve.MeasureValue;
import java.util.ArrayList;
import java.util.List;

/**
 * Between two pulls that follow each other in one install the whole curve steps by the correction factor f of the air: one of them was
 * exported corrected and the other not. Each fifth of the band must step by f or 1 ÷ f within a fifth of |f − 1|, and |f − 1| must be 2 %
 * or more, above what pulls of one install usually differ by (common practice, no source).
 */
public final class CorrectionStep implements PullCheck {
    private static final double SMALLEST = 0.02;
    private static final double NEAR = 0.2;
    private static final int PARTS = 5;

    private final Definition.MeanOverBand band;

    /** A check of one band of power or torque. */
    public CorrectionStep(Definition.MeanOverBand band) {
        this.band = band;
    }

    @Override
    public CheckOutcome of(List<Traced> pulls) {
        List<PullTrace> used = pulls.stream().map(Traced::pull).filter(PullTrace::used).toList();
        List<String> names = new ArrayList<>();
        double figure = Double.NaN;
        boolean any = false;
        for (int i = 1; i < used.size(); i++) {
            PullTrace before = used.get(i - 1);
            PullTrace now = used.get(i);
            double factor = now.factor().orElse(1);
            if (before.pull().install().equals(now.pull().install()) && Math.abs(factor - 1) >= SMALLEST) {
                any = true;
                if (steps(before, now, factor) || steps(before, now, 1 / factor)) {
                    names.add(before.pull() + "/" + now.pull());
                    figure = factor;
                }
            }
        }
        return any ? CheckOutcome.naming(Code.CORRECTION_STEP, List.of(figure), names) : CheckOutcome.notApplicable(Code.CORRECTION_STEP);
    }

    private boolean steps(PullTrace before, PullTrace now, double factor) {
        double width = (band.highRadPerS() - band.lowRadPerS()) / PARTS;
        for (int part = 0; part < PARTS; part++) {
            double low = band.lowRadPerS() + part * width;
            Definition fifth = new Definition.MeanOverBand(band.quantity(), low, low + width);
            if (!(Math.abs(value(now, fifth) / value(before, fifth) - factor) <= NEAR * Math.abs(factor - 1))) {
                return false;
            }
        }
        return true;
    }

    private static double value(PullTrace pull, Definition measure) {
        return MeasureValue.of(pull.channels(), measure).match(found -> found.si(), missing -> Double.NaN);
    }
}
