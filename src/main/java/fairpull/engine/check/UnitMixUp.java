package fairpull.engine.check;

import fairpull.domain.finding.Notice.Code;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.Units;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Power is a constant multiple of torque × engine speed, and a unit mixed up explains which.
 *
 * <p>A power written in the unit u' and read in u, a torque written in v' and read in v, and a point d places off give
 * r = (u ÷ u')·(v' ÷ v)·10^d. Every combination of the units of power and torque and of one misplaced digit in either direction is
 * tried; the simplest near the median of r is named, and of several as simple the nearest. Near is within 0.2 % or 2 %
 * of the logarithm of the mix-up's own ratio, whichever is more: what is off by a thousand is known where r varies by a few percent.
 */
public final class UnitMixUp extends EachPull {
    private static final double NEAR = 0.002;
    private static final double NEAR_SHARE = 0.02;

    public UnitMixUp() {
        super(Code.UNITS_MIXED_UP);
    }

    @Override
    Optional<Reading> read(Traced pull) {
        return pull.identity().map(identity -> explanation(pull, identity)
                .map(found -> new Reading(true, Math.abs(Math.log(identity.ratio())), List.of(identity.ratio()), found.symbols()))
                .orElse(Reading.of(false, Math.abs(Math.log(identity.ratio())), identity.ratio())));
    }

    /** {@return the mix-up that explains a pull's constant ratio, if one does} */
    static Optional<MixUp> explanation(Traced pull, PowerIdentity identity) {
        if (identity.isNearOne()) {
            return Optional.empty();
        }
        return mixUps(pull.unit(Quantity.POWER), pull.unit(Quantity.TORQUE)).stream()
                .filter(mixUp -> mixUp.explains(identity))
                .min(Comparator.comparingInt(MixUp::steps).thenComparingDouble(mixUp -> mixUp.distance(identity.ratio())));
    }

    /**
     * {@return the simplest mix-up whose ratio lies between two, symbols only}
     *
     * @param power unit of the power as read
     * @param torque unit of the torque as read
     * @param low smallest power ÷ (torque × engine speed) that rounding allows
     * @param high largest one
     */
    public static Optional<String> explaining(Unit power, Unit torque, double low, double high) {
        return mixUps(power, torque).stream().filter(mixUp -> mixUp.ratio() >= low && mixUp.ratio() <= high)
                .min(Comparator.comparingInt(MixUp::steps).thenComparingDouble(mixUp -> mixUp.distance(Math.sqrt(low * high))))
                .map(MixUp::symbols);
    }

    private static List<MixUp> mixUps(Unit power, Unit torque) {
        List<MixUp> all = new ArrayList<>();
        for (Unit ofPower : Units.of(Quantity.POWER)) {
            for (Unit ofTorque : Units.of(Quantity.TORQUE)) {
                for (int places = -1; places <= 1; places++) {
                    all.add(new MixUp(power, ofPower, torque, ofTorque, places));
                }
            }
        }
        all.removeIf(mixUp -> mixUp.steps() == 0);
        return all;
    }

    /** Units as read and as written, and by how many places the point is off. */
    record MixUp(Unit power, Unit powerWritten, Unit torque, Unit torqueWritten, int places) {
        double ratio() {
            return power.factor() / powerWritten.factor() * torqueWritten.factor() / torque.factor() * Math.pow(10, places);
        }

        double distance(double found) {
            return Math.abs(Math.log(found / ratio()));
        }

        boolean explains(PowerIdentity identity) {
            double share = NEAR_SHARE * Math.abs(Math.log(ratio()));
            return distance(identity.ratio()) <= Math.max(NEAR, share) && identity.variesLessThan(share);
        }

        int steps() {
            return (power.equals(powerWritten) ? 0 : 1) + (torque.equals(torqueWritten) ? 0 : 1) + Math.abs(places);
        }

        /** {@return read as → likely is, symbols only} */
        String symbols() {
            List<String> parts = new ArrayList<>();
            if (!power.equals(powerWritten)) {
                parts.add(power.symbol() + " → " + powerWritten.symbol());
            }
            if (!torque.equals(torqueWritten)) {
                parts.add(torque.symbol() + " → " + torqueWritten.symbol());
            }
            if (places != 0) {
                parts.add(places > 0 ? "×10" : "÷10");
            }
            return String.join(", ", parts);
        }
    }
}
