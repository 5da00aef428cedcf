package fairpull.engine.audit;

import fairpull.domain.audit.AuditCheck;
import fairpull.domain.audit.AuditCheck.Code;
import fairpull.domain.audit.AuditCheck.Side;
import fairpull.domain.audit.CurvePair;
import fairpull.domain.audit.Found;
import fairpull.domain.audit.FoundFigure;
import fairpull.domain.audit.Publication;
import java.util.ArrayList;
import java.util.List;

/** Values published one by one that all show one difference: no test can be made of them ({@link Publication.Values#scatter}). */
final class ValuesScatter implements Question {
    @Override
    public AuditCheck put(Publication publication, List<CurvePair> curves) {
        List<Found> found = new ArrayList<>();
        boolean looked = false;
        for (Publication.Figure figure : publication.figures()) {
            looked |= figure.values().isPresent();
            figure.values().filter(values -> !values.scatter()).ifPresent(values -> found.add(
                    Found.of(figure.name(), Side.BOTH, figure.before().unit())
                            .with(FoundFigure.DIFFERENCE, values.after().at(0) - values.before().at(0))));
        }
        return AuditCheck.of(Code.VALUES_DO_NOT_SCATTER, looked, found);
    }
}
