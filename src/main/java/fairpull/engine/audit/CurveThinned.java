package fairpull.engine.audit;

import fairpull.domain.audit.AuditCheck;
import fairpull.domain.audit.AuditCheck.Code;
import fairpull.domain.audit.AuditCheck.Side;
import fairpull.domain.audit.CurvePair;
import fairpull.domain.audit.CurveSeen;
import fairpull.domain.audit.Found;
import fairpull.domain.audit.FoundFigure;
import fairpull.domain.audit.Publication;
import java.util.ArrayList;
import java.util.List;

/** A curve so long that it was thinned before anything was held against it ({@link CurveSeen#thinned}). */
final class CurveThinned implements Question {
    @Override
    public AuditCheck put(Publication publication, List<CurvePair> curves) {
        List<Found> found = new ArrayList<>();
        for (CurvePair pair : curves) {
            look(pair.published().name(), pair.before(), Side.BEFORE, found);
            look(pair.published().name(), pair.after(), Side.AFTER, found);
        }
        return AuditCheck.of(Code.CURVE_THINNED, !curves.isEmpty(), found);
    }

    private static void look(String name, CurveSeen curve, Side side, List<Found> found) {
        if (curve.isThinned()) {
            found.add(Found.of(name, side, curve.unit()).with(FoundFigure.PUBLISHED_POINTS, curve.publishedPoints())
                    .with(FoundFigure.POINTS, curve.size()));
        }
    }
}
