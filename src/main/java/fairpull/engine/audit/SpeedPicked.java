package fairpull.engine.audit;

import fairpull.domain.audit.AuditCheck;
import fairpull.domain.audit.AuditCheck.Code;
import fairpull.domain.audit.CurvePair;
import fairpull.domain.audit.Found;
import fairpull.domain.audit.FoundFigure;
import fairpull.domain.audit.Publication;
import fairpull.domain.curve.SpeedRange;
import fairpull.domain.unit.Units;
import java.util.List;
import java.util.Optional;

/** A figure, or its speed, picked after the test: the largest difference along a sweep passes more by chance ({@link PickedSpeed}). */
final class SpeedPicked implements Question {
    @Override
    public AuditCheck put(Publication publication, List<CurvePair> curves) {
        Optional<Boolean> named = publication.procedure().quoting().namedBefore();
        if (named.isEmpty() || named.get()) {
            return AuditCheck.of(Code.PICKED_SPEED, named.isPresent(), List.of());
        }
        SweptSpan span = SweptSpan.of(publication.procedure(), curves);
        return AuditCheck.of(Code.PICKED_SPEED, List.of(Found.of("", AuditCheck.Side.BOTH, Units.RPM)
                .with(FoundFigure.CRITICAL_VALUE, span.criticalValue()).with(FoundFigure.NAMED_BEFORE, Assumptions.oneFigure())
                .with(FoundFigure.FROM, span.range().map(SpeedRange::lowRadPerS).orElse(Double.NaN))
                .with(FoundFigure.TO, span.range().map(SpeedRange::highRadPerS).orElse(Double.NaN))));
    }
}
