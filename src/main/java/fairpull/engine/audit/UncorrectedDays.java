package fairpull.engine.audit;

import fairpull.domain.audit.AuditCheck;
import fairpull.domain.audit.AuditCheck.Code;
import fairpull.domain.audit.AuditAnswer;
import fairpull.domain.audit.CurvePair;
import fairpull.domain.audit.Found;
import fairpull.domain.audit.FoundFigure;
import fairpull.domain.audit.Procedure;
import fairpull.domain.audit.Publication;
import java.util.List;

/** Figures of two days, neither of them corrected: the gain that the air alone may make of an unchanged car ({@link RangeOfAir}). */
final class UncorrectedDays implements Question {
    @Override
    public AuditCheck put(Publication publication, List<CurvePair> curves) {
        Procedure procedure = publication.procedure();
        boolean said = procedure.correcting().corrections().isKnown() && procedure.keeping().day().isPresent();
        if (AuditAnswer.measured(publication).isEmpty() || !said) {
            return AuditCheck.notApplicable(Code.UNCORRECTED_DAYS);
        }
        double weather = Assumptions.isUncorrected(procedure) ? Assumptions.weather(procedure) : 0;
        return AuditCheck.of(Code.UNCORRECTED_DAYS, weather == 0 ? List.of()
                : List.of(Found.ofAll().with(FoundFigure.APPARENT_GAIN, weather)));
    }
}
