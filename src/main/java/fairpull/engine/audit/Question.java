package fairpull.engine.audit;

import fairpull.domain.audit.AuditCheck;
import fairpull.domain.audit.CurvePair;
import fairpull.domain.audit.Publication;
import java.util.List;

/** One question put to a publication; one class a question. */
interface Question {
    /** {@return what came of it} */
    AuditCheck put(Publication publication, List<CurvePair> curves);
}
