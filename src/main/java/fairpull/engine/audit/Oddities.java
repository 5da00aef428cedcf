package fairpull.engine.audit;

import fairpull.domain.audit.AuditCheck;
import fairpull.domain.audit.AuditCheck.Code;
import fairpull.domain.audit.AuditCheck.Side;
import fairpull.domain.audit.BeforeAfter;
import fairpull.domain.audit.CurvePair;
import fairpull.domain.audit.Found;
import fairpull.domain.audit.Keeping;
import fairpull.domain.audit.Oddity;
import fairpull.domain.audit.Procedure;
import fairpull.domain.audit.Publication;
import fairpull.domain.audit.Quote;
import fairpull.domain.audit.Quoting;
import fairpull.domain.audit.RunOrder;
import fairpull.domain.audit.Sameness;
import fairpull.domain.curve.SpeedRange;
import fairpull.domain.plan.Correction;
import fairpull.domain.plan.Part;
import fairpull.domain.unit.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What was said of the procedure that can be, but hardly goes together ({@link Oddity}); what cannot be is no {@link Procedure}. */
final class Oddities implements Question {
    private static final BeforeAfter<Correction> UNCORRECTED = BeforeAfter.of(Correction.NONE, Correction.NONE);
    /** A speed typed in rpm may fall beside the end of a sweep by the noise of its conversion. */
    private static final double NOISE = 1e-9;

    @Override
    public AuditCheck put(Publication publication, List<CurvePair> curves) {
        Procedure procedure = publication.procedure();
        List<Found> found = new ArrayList<>();
        days(procedure, found);
        pulls(procedure.quoting(), procedure.returning().order(), found);
        procedure.sweeping().speeds().ifPresent(swept -> publication.figures().stream().filter(figure -> isOutside(figure, swept))
                .forEach(figure -> found.add(odd(Oddity.SPEED_NOT_SWEPT, figure.name(), Side.BOTH))));
        BeforeAfter<?> barometers = procedure.correcting().barometers();
        boolean named = barometers.before().isPresent() || barometers.after().isPresent();
        if (named && procedure.correcting().corrections().equals(UNCORRECTED)) {
            found.add(odd(Oddity.BAROMETER_WITHOUT_CORRECTION, "", Side.BOTH));
        }
        return AuditCheck.of(Code.ODDITIES, !procedure.equals(Procedure.notDisclosed()), found);
    }

    private static void days(Procedure procedure, List<Found> found) {
        Keeping kept = procedure.keeping();
        if (kept.day().filter(Sameness.DIFFERENT::equals).isEmpty()) {
            return;
        }
        if (kept.strapDown().filter(Sameness.SAME::equals).isPresent()) {
            found.add(odd(Oddity.STRAPPED_OVERNIGHT, "", Side.BOTH));
        }
        if (procedure.returning().order().filter(Oddities::leavesTheDayOpen).isPresent()) {
            found.add(odd(Oddity.ORDER_OF_ONE_DAY, "", Side.BOTH));
        }
    }

    /** Between a single A and a single B there is but one place for the day to change. */
    private static boolean leavesTheDayOpen(RunOrder order) {
        return order.numberOfDays() == 1 && order.letters().length() > 2;
    }

    private static void pulls(Quoting quoting, Optional<RunOrder> order, List<Found> found) {
        side(quoting.before(), order.map(known -> known.installs(Part.A)), Side.BEFORE, found);
        side(quoting.after(), order.map(known -> known.installs(Part.B)), Side.AFTER, found);
    }

    private static void side(Optional<Quote> quote, Optional<Integer> installs, Side side, List<Found> found) {
        quote.ifPresent(quoted -> {
            if (quoted.kind() == Quote.Kind.BEST && quoted.pulls() == 1) {
                found.add(odd(Oddity.BEST_OF_ONE, "", side));
            }
            if (quoted.kind() == Quote.Kind.SINGLE && installs.filter(number -> number > 1).isPresent()) {
                found.add(odd(Oddity.SINGLE_OF_SEVERAL_INSTALLS, "", side));
            }
        });
    }

    private static boolean isOutside(Publication.Figure figure, SpeedRange swept) {
        return figure.at().filter(speed -> speed.si() < swept.lowRadPerS() * (1 - NOISE) || speed.si() > swept.highRadPerS() * (1 + NOISE))
                .isPresent();
    }

    private static Found odd(Oddity oddity, String about, Side side) {
        return Found.of(about, side, Units.ONE).saying(oddity.id());
    }
}
