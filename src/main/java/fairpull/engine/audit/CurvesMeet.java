package fairpull.engine.audit;

import fairpull.domain.audit.AuditCheck;
import fairpull.domain.audit.AuditCheck.Code;
import fairpull.domain.audit.CurvePair;
import fairpull.domain.audit.Found;
import fairpull.domain.audit.FoundFigure;
import fairpull.domain.audit.Publication;
import fairpull.domain.unit.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Where the numbers of a power and a torque curve meet. P = T·ω: printed in units of u watts and v newton metres, both numbers are equal at
 * ω = u ÷ v and nowhere else, 33 000 ÷ 2π = 5252.11 rpm for hp and lbf·ft (550 lbf·ft/s a horsepower). Curves that meet elsewhere, or do
 * not meet there, have an axis or a unit that is not what it says.
 */
final class CurvesMeet implements Question {
    @Override
    public AuditCheck put(Publication publication, List<CurvePair> curves) {
        List<Found> found = new ArrayList<>();
        boolean looked = false;
        for (PowerAndTorque both : PowerAndTorque.of(curves)) {
            double expected = both.power().unit().factor() / both.torque().unit().factor();
            OptionalDouble met = met(both, expected);
            double allowed = PowerAndTorque.LIMIT + both.allowance();
            boolean covered = both.points().get(0).speed() < expected * (1 - allowed)
                    && both.points().get(both.points().size() - 1).speed() > expected * (1 + allowed);
            looked |= covered || met.isPresent();
            if (met.isPresent() ? Math.abs(met.getAsDouble() / expected - 1) > allowed : covered) {
                found.add(Found.of(both.names(), both.side(), Units.RPM).with(FoundFigure.EXPECTED_SPEED, expected)
                        .with(FoundFigure.MET_SPEED, met.orElse(Double.NaN)).with(FoundFigure.SPEED_ALLOWED, expected * allowed)
                        .saying(both.power().unit().symbol() + ", " + both.torque().unit().symbol()));
            }
        }
        return AuditCheck.of(Code.CURVES_MEET, looked, found);
    }

    /** The meeting nearest to where it must be: the ratio of both numbers, r·ω ÷ (u ÷ v), passes 1 there. */
    private static OptionalDouble met(PowerAndTorque both, double expected) {
        OptionalDouble nearest = OptionalDouble.empty();
        List<PowerAndTorque.Point> points = both.points();
        for (int k = 1; k < points.size(); k++) {
            double left = points.get(k - 1).ratio() * points.get(k - 1).speed() / expected - 1;
            double right = points.get(k).ratio() * points.get(k).speed() / expected - 1;
            if (left <= 0 != right <= 0) {
                double speed = points.get(k - 1).speed() + left / (left - right) * (points.get(k).speed() - points.get(k - 1).speed());
                boolean nearer = nearest.isEmpty() || Math.abs(speed - expected) < Math.abs(nearest.getAsDouble() - expected);
                nearest = nearer ? OptionalDouble.of(speed) : nearest;
            }
        }
        return nearest;
    }
}
