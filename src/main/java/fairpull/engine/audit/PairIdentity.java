package fairpull.engine.audit;

import fairpull.domain.audit.IdentityOfFigures;
import fairpull.domain.audit.Printed;
import fairpull.engine.check.UnitMixUp;

/**
 * Printed power is printed torque × engine speed, within the rounding of all three: r = P ÷ (T·ω), its range from half a unit of each
 * last digit in the worst direction (definition of power). Where 1 lies outside, the mixed-up unit that brings it inside is looked for.
 */
public final class PairIdentity {
    private PairIdentity() {
    }

    /**
     * The identity of one pair.
     *
     * @param power printed, above 0
     * @param torque printed at the same speed, above 0
     * @param speed the engine speed of both, above 0
     * @return the ratio with its range, and what explains it
     * @throws IllegalArgumentException if a figure is not above what rounding may have taken from it
     */
    public static IdentityOfFigures of(Printed power, Printed torque, Printed speed) {
        double ratio = power.si() / (torque.si() * speed.si());
        double low = below(power) / (above(torque) * above(speed));
        double high = above(power) / (below(torque) * below(speed));
        boolean holds = low <= 1 && 1 <= high;
        return new IdentityOfFigures(ratio, low, high,
                holds ? "" : UnitMixUp.explaining(power.unit(), torque.unit(), low, high).orElse(""));
    }

    private static double below(Printed figure) {
        double below = figure.si() - figure.halfDigitSi();
        if (!(below > 0)) {
            throw new IllegalArgumentException("a figure of " + figure.value() + " " + figure.unit().symbol() + " says nothing");
        }
        return below;
    }

    private static double above(Printed figure) {
        return figure.si() + figure.halfDigitSi();
    }
}
