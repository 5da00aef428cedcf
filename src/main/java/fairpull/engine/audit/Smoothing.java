package fairpull.engine.audit;

import fairpull.domain.audit.AuditCheck;
import fairpull.domain.audit.AuditCheck.Code;
import fairpull.domain.audit.AuditCheck.Found;
import fairpull.domain.audit.BeforeAfter;
import fairpull.domain.audit.CurvePair;
import fairpull.domain.audit.Publication;
import fairpull.domain.unit.Units;
import java.util.List;

/** Smoothing that differs between both: it moves peaks and all that is read off a steep part of a curve. */
final class Smoothing implements Question {
    @Override
    public AuditCheck put(Publication publication, List<CurvePair> curves) {
        BeforeAfter<String> said = publication.procedure().sweeping().smoothing();
        if (!said.differs()) {
            return AuditCheck.of(Code.SMOOTHING, said.isKnown(), List.of());
        }
        return AuditCheck.of(Code.SMOOTHING, List.of(new Found("", AuditCheck.Side.BOTH, Units.ONE, List.of(),
                said.before().orElseThrow() + " → " + said.after().orElseThrow())));
    }
}
