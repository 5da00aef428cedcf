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

/**
 * Printed power against printed torque × engine speed, for every pair of figures at one named speed, before and after
 * ({@link PairIdentity}).
 */
final class FiguresIdentity implements Question {
    @Override
    public AuditCheck put(Publication publication, List<CurvePair> curves) {
        List<Found> found = new ArrayList<>();
        int looked = 0;
        for (Publication.Figure power : at(publication, Quantity.POWER)) {
            for (Publication.Figure torque : at(publication, Quantity.TORQUE)) {
                if (isOneSpeed(power.at().orElseThrow(), torque.at().orElseThrow())) {
                    looked += look(power, torque, Side.BEFORE, found) + look(power, torque, Side.AFTER, found);
                }
            }
        }
        return AuditCheck.of(Code.FIGURES_IDENTITY, looked > 0, found);
    }

    private static List<Publication.Figure> at(Publication publication, Quantity quantity) {
        return publication.figures().stream().filter(figure -> figure.before().unit().quantity() == quantity && figure.at().isPresent())
                .toList();
    }

    private static boolean isOneSpeed(Printed one, Printed other) {
        return Math.abs(one.si() - other.si()) <= Math.max(one.halfDigitSi(), other.halfDigitSi());
    }

    private static int look(Publication.Figure power, Publication.Figure torque, Side side, List<Found> found) {
        Printed ofPower = side == Side.BEFORE ? power.before() : power.after();
        Printed ofTorque = side == Side.BEFORE ? torque.before() : torque.after();
        Printed speed = finer(power.at().orElseThrow(), torque.at().orElseThrow());
        if (!(says(ofPower) && says(ofTorque) && says(speed))) {
            return 0;
        }
        IdentityOfFigures identity = PairIdentity.of(ofPower, ofTorque, speed);
        if (!identity.holds()) {
            found.add(Found.of(power.name() + ", " + torque.name(), side, Units.ONE).with(FoundFigure.RATIO, identity.ratio())
                    .with(FoundFigure.LEAST_RATIO, identity.low()).with(FoundFigure.MOST_RATIO, identity.high())
                    .with(FoundFigure.SPEED, speed.si()).saying(identity.mixUp()));
        }
        return 1;
    }

    private static boolean says(Printed figure) {
        return figure.si() > figure.halfDigitSi();
    }

    private static Printed finer(Printed one, Printed other) {
        return one.halfDigitSi() <= other.halfDigitSi() ? one : other;
    }
}
