package fairpull.engine.audit;

import fairpull.domain.audit.AuditCheck;
import fairpull.domain.audit.AuditCheck.Code;
import fairpull.domain.audit.CurvePair;
import fairpull.domain.audit.Found;
import fairpull.domain.audit.FoundFigure;
import fairpull.domain.audit.Publication;
import fairpull.domain.unit.Units;
import fairpull.engine.check.UnitMixUp;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Power against torque × engine speed along published curves: r = P ÷ (T·ω), 1 by the definition of power. Raised where the median of r is
 * off by more than 0.35 % beyond what reading allows, or r at any speed by more than 2 % beyond it (common practice, no source: the
 * limits for exports).
 */
final class CurvesIdentity implements Question {
    private static final double ROW_LIMIT = 0.02;
    private static final double NEAR = 0.002;

    @Override
    public AuditCheck put(Publication publication, List<CurvePair> curves) {
        List<PowerAndTorque> all = PowerAndTorque.of(curves);
        List<Found> found = new ArrayList<>();
        for (PowerAndTorque both : all) {
            PowerAndTorque.Point worst = both.points().stream().max(Comparator.comparingDouble(CurvesIdentity::beyond)).orElseThrow();
            boolean off = !both.agrees();
            if (off || beyond(worst) > ROW_LIMIT) {
                found.add(Found.of(both.names(), both.side(), Units.ONE).with(FoundFigure.RATIO, both.ratio())
                        .with(FoundFigure.RATIO_ALLOWED, both.allowance()).with(FoundFigure.WORST_BEYOND, beyond(worst))
                        .with(FoundFigure.WORST_AT, worst.speed()).saying(off ? mixUp(both) : ""));
            }
        }
        return AuditCheck.of(Code.CURVES_IDENTITY, !all.isEmpty(), found);
    }

    private static double beyond(PowerAndTorque.Point point) {
        return Math.abs(point.ratio() - 1) - point.allowance();
    }

    private static String mixUp(PowerAndTorque both) {
        double near = NEAR + both.allowance();
        return UnitMixUp.explaining(both.power().unit(), both.torque().unit(), both.ratio() * (1 - near), both.ratio() * (1 + near))
                .orElse("");
    }
}
