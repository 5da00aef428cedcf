package fairpull.engine.check;

import fairpull.domain.finding.Notice.Code;
import fairpull.domain.pull.PullTrace;
import java.util.Optional;

/**
 * An export with corrected and uncorrected columns shows what was done between them: their ratio is the factor f of the air noted if the
 * correction was applied once, f² if twice, 1 if not at all. Told apart where f is at least 1 % from 1 and the ratio lies within a quarter
 * of |f − 1| of one of the three (common practice, no source).
 */
public final class CorrectionRatio extends EachPull {
    private static final double SMALLEST = 0.01;
    private static final double NEAR = 0.25;

    private final int times;

    private CorrectionRatio(Code code, int times) {
        super(code);
        this.times = times;
    }

    /** {@return the check that it was not applied twice} */
    public static CorrectionRatio twice() {
        return new CorrectionRatio(Code.CORRECTION_TWICE, 2);
    }

    /** {@return the check that it was applied at all} */
    public static CorrectionRatio notApplied() {
        return new CorrectionRatio(Code.CORRECTION_NOT_APPLIED, 0);
    }

    @Override
    Optional<Reading> read(Traced traced) {
        PullTrace pull = traced.pull();
        double factor = pull.factor().orElse(1);
        if (pull.correctedOverMeasured().isEmpty() || Math.abs(factor - 1) < SMALLEST) {
            return Optional.empty();
        }
        double ratio = pull.correctedOverMeasured().getAsDouble();
        boolean raised = Math.abs(ratio - Math.pow(factor, times)) <= NEAR * Math.abs(factor - 1);
        return Optional.of(Reading.of(raised, Math.abs(ratio - factor), ratio, factor));
    }
}
