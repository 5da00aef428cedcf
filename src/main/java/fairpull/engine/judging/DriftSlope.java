package fairpull.engine.judging;

import fairpull.domain.finding.Checks.DriftFound;
import fairpull.domain.finding.JudgeSettings;
import fairpull.engine.stats.ContrastFit;
import fairpull.engine.stats.LeastSquares;
import fairpull.engine.stats.Reml;
import fairpull.engine.stats.ResponseSums;
import fairpull.engine.stats.ScatterKnowledge;
import java.util.Optional;

/** How fast the values drift: the slope in the middle of the session. */
final class DriftSlope {
    private static final double MINUTES_AN_HOUR = 60;

    private DriftSlope() {
    }

    /** The slope of a table that can be judged; empty where no drift is modelled, or pulls do not scatter at all. */
    static Optional<DriftFound> of(ModelTable table, JudgeSettings settings) {
        ScatterKnowledge known = CoreFit.knowledge(settings);
        if (table.driftColumn().isEmpty() || known.pullDf() == 0 && table.pullsIdentical()) {
            return Optional.empty();
        }
        int column = table.driftColumn().getAsInt();
        ResponseSums sums = table.sums();
        TStatement slope = known.isNone() && table.onePullPerInstall() ? CoreFit.statement(LeastSquares.of(sums, column))
                : CoreFit.statement(ContrastFit.of(sums, Reml.estimate(sums, known), known, column), known);
        return Optional.of(new DriftFound(MINUTES_AN_HOUR * slope.change(), MINUTES_AN_HOUR * slope.standardError()));
    }
}
