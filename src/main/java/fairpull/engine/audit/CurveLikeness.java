package fairpull.engine.audit;

import fairpull.domain.audit.AuditCheck;
import fairpull.domain.audit.AuditCheck.Code;
import fairpull.domain.audit.AuditCheck.Side;
import fairpull.domain.audit.CurvePair;
import fairpull.domain.audit.CurveSeen;
import fairpull.domain.audit.Found;
import fairpull.domain.audit.FoundFigure;
import fairpull.domain.audit.Publication;
import fairpull.domain.finding.CheckOutcome;
import fairpull.domain.pull.Channels;
import fairpull.domain.pull.PullId;
import fairpull.domain.pull.PullTrace;
import fairpull.domain.unit.Quantity;
import fairpull.engine.check.Plateau;
import fairpull.engine.check.PullCheck;
import fairpull.engine.check.PullIsMultiple;
import fairpull.engine.check.StretchCopied;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * What real curves never share, looked for by the checks of exports ({@link Plateau}, {@link StretchCopied}, {@link PullIsMultiple}): a run
 * of equal values at the top, a stretch of one curve in the other to the last digit, one curve a multiple of the other. Only of tables and
 * typed points: what was read off a picture has no last digit.
 *
 * @param code which of the three
 */
record CurveLikeness(Code code) implements Question {
    private static final PullId BEFORE = new PullId("A1", false, 1);
    private static final PullId AFTER = new PullId("B1", false, 1);

    @Override
    public AuditCheck put(Publication publication, List<CurvePair> curves) {
        List<Found> found = new ArrayList<>();
        boolean looked = false;
        for (CurvePair pair : curves) {
            if (!pair.before().isTraced() && !pair.after().isTraced()) {
                looked |= code == Code.CURVE_PLATEAU ? look(pair, List.of(trace(BEFORE, pair.before())), Side.BEFORE, found)
                        | look(pair, List.of(trace(AFTER, pair.after())), Side.AFTER, found)
                        : look(pair, List.of(trace(BEFORE, pair.before()), trace(AFTER, pair.after())), Side.BOTH, found);
            }
        }
        return AuditCheck.of(code, looked, found);
    }

    private boolean look(CurvePair pair, List<PullTrace> traces, Side side, List<Found> found) {
        CheckOutcome outcome = check().check(traces);
        if (outcome.state() == CheckOutcome.State.RAISED) {
            found.add(found(Found.of(pair.published().name(), side, pair.before().unit()), outcome.figures()));
        }
        return outcome.state() != CheckOutcome.State.NOT_APPLICABLE;
    }

    private PullCheck check() {
        return switch (code) {
            case CURVE_PLATEAU -> new Plateau();
            case CURVE_STRETCH_COPIED -> new StretchCopied();
            case CURVE_IS_MULTIPLE -> new PullIsMultiple();
            default -> throw new IllegalArgumentException("no likeness of curves: " + code);
        };
    }

    /** The figures of the check; the value of a plateau comes in the unit of its channel. */
    private Found found(Found bare, List<Double> figures) {
        return switch (code) {
            case CURVE_PLATEAU -> bare.with(FoundFigure.POINTS, figures.get(0))
                    .with(FoundFigure.VALUE, bare.unit().toSi(figures.get(1)));
            case CURVE_STRETCH_COPIED -> bare.with(FoundFigure.POINTS, figures.get(0));
            default -> bare.with(FoundFigure.FACTOR, figures.get(0));
        };
    }

    private static PullTrace trace(PullId name, CurveSeen curve) {
        Quantity quantity = curve.unit().quantity();
        return new PullTrace(name, true, new Channels(Map.of(Quantity.ENGINE_SPEED, curve.speedsRadPerS(), quantity, curve.values())),
                false, Map.of(Quantity.ENGINE_SPEED, curve.speedUnit(), quantity, curve.unit()), OptionalDouble.empty(),
                OptionalDouble.empty());
    }
}
