package fairpull.engine.audit;

import fairpull.domain.audit.AuditCheck;
import fairpull.domain.audit.AuditCheck.Code;
import fairpull.domain.audit.AuditCheck.Side;
import fairpull.domain.audit.CurvePair;
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
 * both ({@link CurveReading}). Where several pairs of curves of a quantity were published, as of two gears, it is enough that one shows it.
 */
final class TextAgainstPlot implements Question {
    private static final Pattern PEAK = Pattern.compile("\\b(peak|max|maximum|highest)\\b", Pattern.CASE_INSENSITIVE);

    @Override
    public AuditCheck put(Publication publication, List<CurvePair> curves) {
        List<Found> found = new ArrayList<>();
        boolean looked = false;
        List<Read> all = curves.stream().map(Read::of).toList();
        for (Publication.Figure figure : publication.figures()) {
            List<List<Found>> against = all.stream().filter(read -> read.isOf(figure)).map(read -> look(figure, read)).toList();
            looked |= !against.isEmpty();
            if (against.stream().noneMatch(List::isEmpty)) {
                against.forEach(found::addAll);
            }
        }
        return AuditCheck.of(Code.TEXT_AGAINST_PLOT, looked, found);
    }

    /** A pair of curves to be read off, made once for all figures. */
    private record Read(CurvePair pair, CurveReading before, CurveReading after) {
        static Read of(CurvePair pair) {
            return new Read(pair, new CurveReading(pair.before()), new CurveReading(pair.after()));
        }

        boolean isOf(Publication.Figure figure) {
            return pair.before().unit().quantity() == figure.before().unit().quantity()
                    && figure.at().map(speed -> before.covers(speed.si()) || after.covers(speed.si())).orElse(true);
        }
    }

    private static List<Found> look(Publication.Figure figure, Read read) {
        List<Found> found = new ArrayList<>();
        look(figure, figure.before(), read.before(), Side.BEFORE).ifPresent(found::add);
        look(figure, figure.after(), read.after(), Side.AFTER).ifPresent(found::add);
        return found.stream().map(one -> one.saying(read.pair().published().name())).toList();
    }

    private static Optional<Found> look(Publication.Figure figure, Printed printed, CurveReading reading, Side side) {
        Optional<Printed> at = figure.at();
        if (at.isPresent() && !reading.covers(at.get().si())) {
            return Optional.empty();
        }
        CurveReading.Value shown = at.map(speed -> at(reading, speed)).orElseGet(reading::highest);
        double allowed = shown.allowance() + printed.halfDigitSi();
        double apart = printed.si() - shown.value();
        boolean bothWays = at.isPresent() || PEAK.matcher(figure.name()).find();
        return (bothWays ? Math.abs(apart) : apart) <= allowed ? Optional.empty()
                : Optional.of(Found.of(figure.name(), side, printed.unit()).with(FoundFigure.PRINTED, printed.si())
                        .with(FoundFigure.SHOWN, shown.value()).with(FoundFigure.ALLOWED, allowed));
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
