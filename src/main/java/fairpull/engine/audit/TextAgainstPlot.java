package fairpull.engine.audit;

import fairpull.domain.audit.AuditCheck;
import fairpull.domain.audit.AuditCheck.Code;
import fairpull.domain.audit.AuditCheck.Side;
import fairpull.domain.audit.CurvePair;
import fairpull.domain.audit.CurveSeen;
import fairpull.domain.audit.Found;
import fairpull.domain.audit.FoundFigure;
import fairpull.domain.audit.Printed;
import fairpull.domain.audit.Publication;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Figures of the text against the curves of the same quantity. A figure at a named speed must be what the curve shows there; any other must
 * not lie above all of the curve, and one that is called a peak or maximum must be its highest value; all within reading and rounding of
 * both ({@link CurveReading}).
 */
final class TextAgainstPlot implements Question {
    private static final Pattern PEAK = Pattern.compile("\\b(peak|max|maximum|highest)\\b", Pattern.CASE_INSENSITIVE);

    @Override
    public AuditCheck put(Publication publication, List<CurvePair> curves) {
        List<Found> found = new ArrayList<>();
        boolean looked = false;
        for (Publication.Figure figure : publication.figures()) {
            for (CurvePair pair : curves) {
                if (pair.before().unit().quantity() == figure.before().unit().quantity()) {
                    looked |= look(figure, figure.before(), pair.before(), Side.BEFORE, found);
                    looked |= look(figure, figure.after(), pair.after(), Side.AFTER, found);
                }
            }
        }
        return AuditCheck.of(Code.TEXT_AGAINST_PLOT, looked, found);
    }

    private static boolean look(Publication.Figure figure, Printed printed, CurveSeen curve, Side side, List<Found> found) {
        CurveReading reading = new CurveReading(curve);
        Optional<Printed> at = figure.at();
        if (at.isPresent() && !reading.covers(at.get().si())) {
            return false;
        }
        CurveReading.Value shown = at.map(speed -> at(reading, speed)).orElseGet(reading::highest);
        double allowed = shown.allowance() + printed.halfDigitSi();
        double apart = printed.si() - shown.value();
        boolean bothWays = at.isPresent() || PEAK.matcher(figure.name()).find();
        if (bothWays ? Math.abs(apart) > allowed : apart > allowed) {
            found.add(Found.of(figure.name(), side, printed.unit()).with(FoundFigure.PRINTED, printed.si())
                    .with(FoundFigure.SHOWN, shown.value()).with(FoundFigure.ALLOWED, allowed));
        }
        return true;
    }

    /** The printed speed is rounded too: as far as the curve moves within that. */
    private static CurveReading.Value at(CurveReading reading, Printed speed) {
        CurveReading.Value middle = reading.at(speed.si());
        double moved = 0;
        for (double end : new double[] {speed.si() - speed.halfDigitSi(), speed.si() + speed.halfDigitSi()}) {
            moved = reading.covers(end) ? Math.max(moved, Math.abs(reading.at(end).value() - middle.value())) : moved;
        }
        return new CurveReading.Value(middle.speed(), middle.value(), middle.allowance() + moved);
    }
}
