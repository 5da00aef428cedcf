package fairpull.engine.audit;

import fairpull.domain.audit.AuditCheck;
import fairpull.domain.audit.AuditCheck.Code;
import fairpull.domain.audit.BeforeAfter;
import fairpull.domain.audit.CurvePair;
import fairpull.domain.audit.Found;
import fairpull.domain.audit.Publication;
import java.util.List;

/** Smoothing that differs between both: it moves peaks and all that is read off a steep part of a curve. */
final class Smoothing implements Question {
    @Override
    public AuditCheck put(Publication publication, List<CurvePair> curves) {
        BeforeAfter<String> said = publication.procedure().sweeping().smoothing();
        if (!said.differs()) {
            return AuditCheck.of(Code.SMOOTHING, said.isKnown(), List.of());
        }
        return AuditCheck.of(Code.SMOOTHING, List.of(Found.ofAll()
                .saying(said.before().orElseThrow() + " → " + said.after().orElseThrow())));
    }
}
