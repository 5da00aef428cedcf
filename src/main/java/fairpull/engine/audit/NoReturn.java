package fairpull.engine.audit;

import fairpull.domain.audit.AuditCheck;
import fairpull.domain.audit.AuditCheck.Code;
import fairpull.domain.audit.CurvePair;
import fairpull.domain.audit.Found;
import fairpull.domain.audit.Publication;
import fairpull.domain.audit.Returning;
import fairpull.domain.audit.RunOrder;
import java.util.List;
import java.util.Optional;

/** An order that does not return to the state before: what drifts with the clock is taken for the change. */
final class NoReturn implements Question {
    @Override
    public AuditCheck put(Publication publication, List<CurvePair> curves) {
        Returning said = publication.procedure().returning();
        Optional<Boolean> returned = said.returned();
        if (returned.isEmpty() || returned.get()) {
            return AuditCheck.of(Code.NO_RETURN, returned.isPresent(), List.of());
        }
        return AuditCheck.of(Code.NO_RETURN, List.of(Found.ofAll()
                .saying(said.order().map(RunOrder::letters).orElse(""))));
    }
}
