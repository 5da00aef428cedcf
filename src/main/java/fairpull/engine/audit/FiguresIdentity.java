package fairpull.engine.audit;

import fairpull.domain.audit.AuditCheck;
import fairpull.domain.audit.AuditCheck.Code;
import fairpull.domain.audit.AuditCheck.Side;
import fairpull.domain.audit.CurvePair;
import fairpull.domain.audit.Found;
import fairpull.domain.audit.FoundFigure;
import fairpull.domain.audit.IdentityOfFigures;
import fairpull.domain.audit.Printed;
import fairpull.domain.audit.Publication;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Printed power against printed torque × engine speed, for every pair of figures at one named speed, before and after
 * ({@link PairIdentity}). Where several stand at one speed, as at the wheels and at the engine, two that do not come to each other count
 * only if neither comes to another one.
 */
final class FiguresIdentity implements Question {
    @Override
    public AuditCheck put(Publication publication, List<CurvePair> curves) {
        List<Both> all = new ArrayList<>();
        for (Publication.Figure power : at(publication, Quantity.POWER)) {
            for (Publication.Figure torque : at(publication, Quantity.TORQUE)) {
                if (isOneSpeed(power.at().orElseThrow(), torque.at().orElseThrow())) {
                    look(power, torque, Side.BEFORE).ifPresent(all::add);
                    look(power, torque, Side.AFTER).ifPresent(all::add);
                }
            }
        }
        List<Both> agreeing = all.stream().filter(both -> both.identity().holds()).toList();
        List<Found> found = all.stream().filter(both -> !both.identity().holds())
                .filter(both -> agreeing.stream().noneMatch(both::shares)).map(Both::found).toList();
        return AuditCheck.of(Code.FIGURES_IDENTITY, !all.isEmpty(), found);
    }

    /** Power beside torque of one side at one speed. */
    private record Both(Publication.Figure power, Publication.Figure torque, Side side, Printed speed, IdentityOfFigures identity) {
        boolean shares(Both other) {
            return side == other.side && (power.equals(other.power) || torque.equals(other.torque));
        }

        Found found() {
            return Found.of(List.of(power.name(), torque.name()), side, Units.ONE).with(FoundFigure.RATIO, identity.ratio())
                    .with(FoundFigure.LEAST_RATIO, identity.low()).with(FoundFigure.MOST_RATIO, identity.high())
                    .with(FoundFigure.SPEED, speed.si()).saying(identity.mixUp());
        }
    }

    private static List<Publication.Figure> at(Publication publication, Quantity quantity) {
        return publication.figures().stream().filter(figure -> figure.before().unit().quantity() == quantity && figure.at().isPresent())
                .toList();
    }

    private static boolean isOneSpeed(Printed one, Printed other) {
        return Math.abs(one.si() - other.si()) <= Math.max(one.halfDigitSi(), other.halfDigitSi());
    }

    private static Optional<Both> look(Publication.Figure power, Publication.Figure torque, Side side) {
        Printed ofPower = side == Side.BEFORE ? power.before() : power.after();
        Printed ofTorque = side == Side.BEFORE ? torque.before() : torque.after();
        Printed speed = finer(power.at().orElseThrow(), torque.at().orElseThrow());
        return says(ofPower) && says(ofTorque) && says(speed)
                ? Optional.of(new Both(power, torque, side, speed, PairIdentity.of(ofPower, ofTorque, speed))) : Optional.empty();
    }

    private static boolean says(Printed figure) {
        return figure.si() > figure.halfDigitSi();
    }

    private static Printed finer(Printed one, Printed other) {
        return one.halfDigitSi() <= other.halfDigitSi() ? one : other;
    }
}
