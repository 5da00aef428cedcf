package fairpull.engine.curve;

import fairpull.domain.plan.MovingMass;
import fairpull.domain.plan.MovingMass.CoastDown;
import fairpull.domain.pull.Channels;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * Power at the wheels out of a log of speed: P = (m·a + F0 + F1·v + F2·v²)·v, the rate at which the wheels do work (Newton's second law and
 * the definition of power), on the level and without wind.
 *
 * <p>On a roller m = J/r², so that m·a·v is inertia × angular acceleration × angular speed. Acceleration a and speed v come from a local
 * quadratic over the declared window ({@link LocalQuadratic}), which smooths what changes within it. Uncertainty, to first order (JCGM
 * 100:2008, 5.1.2), with mass and coefficients taken as uncorrelated: u²(P) = v²·[(a·u(m))² + u²(F0) + (v·u(F1))² + (v²·u(F2))²]; slope,
 * wind and the scatter of a are not in it. All of it is common to every pull of a test, so it does not blur a difference by itself.
 */
public final class DrivenPower {
    private DrivenPower() {
    }

    /**
     * Adds the power to a log that has none.
     *
     * @param channels the channels of a pull in SI
     * @param mass what is accelerated and what holds it back
     * @return the channels with power; as they are where they hold power or torque, lack speed or time, or where time does not rise
     */
    public static Channels added(Channels channels, MovingMass mass) {
        if (!canAdd(channels)) {
            return channels;
        }
        Map<Quantity, Samples> with = new EnumMap<>(Quantity.class);
        with.putAll(channels.all());
        with.put(Quantity.POWER, each(channels, mass, DrivenPower::power));
        return new Channels(with);
    }

    /**
     * Computes the standard uncertainty of the power, relative to it, where the power is largest.
     *
     * @return the relative standard uncertainty; empty where no power is added, or none is positive
     */
    public static Optional<Double> relativeUncertainty(Channels channels, MovingMass mass) {
        if (!canAdd(channels)) {
            return Optional.empty();
        }
        Samples power = each(channels, mass, DrivenPower::power);
        Samples uncertainty = each(channels, mass, DrivenPower::uncertainty);
        int best = -1;
        for (int row = 0; row < power.size(); row++) {
            if (power.at(row) > 0 && (best < 0 || power.at(row) > power.at(best))) {
                best = row;
            }
        }
        return best < 0 ? Optional.empty() : Optional.of(uncertainty.at(best) / power.at(best));
    }

    private static boolean canAdd(Channels channels) {
        return channels.find(Quantity.POWER).isEmpty() && channels.find(Quantity.TORQUE).isEmpty()
                && channels.find(Quantity.SPEED).isPresent() && channels.find(Quantity.TIME).filter(ElapsedTime::isRising).isPresent();
    }

    private interface AtRow {
        double of(MovingMass mass, double speed, double acceleration);
    }

    private static Samples each(Channels channels, MovingMass mass, AtRow wanted) {
        LocalQuadratic speed = LocalQuadratic.of(channels.find(Quantity.TIME).orElseThrow(), channels.find(Quantity.SPEED).orElseThrow(),
                mass.windowS());
        double[] values = new double[channels.rows()];
        for (int row = 0; row < values.length; row++) {
            values[row] = wanted.of(mass, speed.value(row), speed.slope(row));
        }
        return Samples.of(values);
    }

    private static double power(MovingMass mass, double speed, double acceleration) {
        double held = mass.coastDown()
                .map(road -> road.f0N() + road.f1NsPerM() * speed + road.f2Ns2PerM2() * speed * speed).orElse(0.0);
        return (mass.massKg() * acceleration + held) * speed;
    }

    private static double uncertainty(MovingMass mass, double speed, double acceleration) {
        double squares = square(acceleration * mass.massUncertaintyKg());
        if (mass.coastDown().isPresent()) {
            CoastDown road = mass.coastDown().get();
            squares += square(road.uncertaintyF0N()) + square(speed * road.uncertaintyF1NsPerM())
                    + square(speed * speed * road.uncertaintyF2Ns2PerM2());
        }
        return Math.abs(speed) * Math.sqrt(squares);
    }

    private static double square(double value) {
        return value * value;
    }
}
