package fairpull.engine.audit;

import fairpull.domain.audit.AuditCheck;
import fairpull.domain.audit.AuditCheck.Code;
import fairpull.domain.audit.AuditCheck.Side;
import fairpull.domain.audit.CurvePair;
import fairpull.domain.audit.Found;
import fairpull.domain.audit.FoundFigure;
import fairpull.domain.audit.Printed;
import fairpull.domain.audit.Publication;
import fairpull.domain.audit.Quote;
import fairpull.domain.plan.Better;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;

/**
 * A printed figure against the values behind it: their average, or the best of them where that is what was said to be quoted. They may be
 * apart by half a unit of the last digit of the figure and of the values. A single pull is held against nothing.
 */
final class ValuesAgainstFigures implements Question {
    /** So small a share of a number is lost in reckoning. */
    private static final double NOISE = 1e-9;

    @Override
    public AuditCheck put(Publication publication, List<CurvePair> curves) {
        List<Found> found = new ArrayList<>();
        boolean looked = false;
        for (Publication.Figure figure : publication.figures()) {
            if (figure.values().isPresent()) {
                looked |= look(figure, Side.BEFORE, publication.procedure().quoting().kinds().before(), found);
                looked |= look(figure, Side.AFTER, publication.procedure().quoting().kinds().after(), found);
            }
        }
        return AuditCheck.of(Code.VALUES_AGAINST_FIGURES, looked, found);
    }

    private static boolean look(Publication.Figure figure, Side side, Optional<Quote.Kind> quoted, List<Found> found) {
        if (quoted.equals(Optional.of(Quote.Kind.SINGLE))) {
            return false;
        }
        Publication.Values values = figure.values().orElseThrow();
        Printed printed = side == Side.BEFORE ? figure.before() : figure.after();
        List<Printed> behind = side == Side.BEFORE ? values.printedBefore() : values.printedAfter();
        boolean best = quoted.equals(Optional.of(Quote.Kind.BEST));
        DoubleSummaryStatistics all = behind.stream().mapToDouble(Printed::si).summaryStatistics();
        double shown = !best ? all.getAverage() : figure.better() == Better.MORE ? all.getMax() : all.getMin();
        double allowed = printed.halfDigitSi() + behind.stream().mapToDouble(Printed::halfDigitSi).max().orElseThrow();
        if (Math.abs(printed.si() - shown) > allowed + NOISE * Math.abs(printed.si())) {
            found.add(Found.of(figure.name(), side, printed.unit()).with(FoundFigure.PRINTED, printed.si())
                    .with(FoundFigure.OF_VALUES, shown).with(FoundFigure.ALLOWED, allowed).saying(best ? "best" : "mean"));
        }
        return true;
    }
}
