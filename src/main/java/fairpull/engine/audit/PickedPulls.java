package fairpull.engine.audit;

import fairpull.domain.audit.Assumed;
import fairpull.domain.audit.AuditCheck;
import fairpull.domain.audit.AuditCheck.Code;
import fairpull.domain.audit.CurvePair;
import fairpull.domain.audit.Found;
import fairpull.domain.audit.FoundFigure;
import fairpull.domain.audit.Procedure;
import fairpull.domain.audit.Publication;
import fairpull.domain.audit.ScatterShares;
import java.util.ArrayList;
import java.util.List;

/**
 * The best of several pulls against more or fewer of them: without any change the figure after is higher by L·s_p·(e(m) − e(n)) on average,
 * lower where this is negative, e the expected maximum of so many standard normal values ({@link fairpull.engine.stats.ExpectedMaximum}).
 */
final class PickedPulls implements Question {
    /** What is smaller, as a share of the figure, is the noise of sums. */
    private static final double NOTHING = 1e-9;

    @Override
    public AuditCheck put(Publication publication, List<CurvePair> curves) {
        Procedure procedure = publication.procedure();
        List<Found> found = new ArrayList<>();
        boolean looked = procedure.quoting().before().isPresent() && procedure.quoting().after().isPresent();
        if (looked) {
            for (Publication.Figure figure : publication.figures()) {
                look(figure, procedure, found);
            }
        }
        return AuditCheck.of(Code.PICKED_PULLS, looked, found);
    }

    private static void look(Publication.Figure figure, Procedure procedure, List<Found> found) {
        ScatterShares scatter = PlausibleScatter.of(procedure.scatter(), figure.before()).ordinary();
        Assumed assumed = Assumptions.ordinary(procedure, scatter, Assumptions.oneFigure());
        double picked = new PublishedDifference(figure.gainSi(), figure.before().si(), figure.before().halfDigitSi(), assumed).pickedBest();
        if (Math.abs(picked) > NOTHING * figure.before().si()) {
            found.add(Found.of(figure.name(), AuditCheck.Side.BOTH, figure.before().unit()).with(FoundFigure.ADDS, picked)
                    .with(FoundFigure.PULLS_BEFORE, assumed.before().pulls()).with(FoundFigure.PULLS_AFTER, assumed.after().pulls()));
        }
    }
}
