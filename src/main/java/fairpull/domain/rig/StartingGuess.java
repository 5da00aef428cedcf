package fairpull.domain.rig;

import fairpull.domain.plan.Rig;
import fairpull.domain.unit.Quantity;
import java.util.Optional;

/**
 * A guess to start from where a rig has no record: engineering judgement with no source, for power and torque on rollers, hubs and
 * engine benches. The shop's own record replaces it.
 *
 * @param pullShare pull scatter over level
 * @param refitShare refit scatter over level
 * @param degreesOfFreedom how much it is trusted
 */
public record StartingGuess(double pullShare, double refitShare, double degreesOfFreedom) {
    private static final double DEGREES_OF_FREEDOM = 4;
    private static final double REFIT = 0.010;
    private static final double PULL_ON_ROLLERS = 0.007;
    private static final double PULL_ON_BENCH = 0.005;

    /** {@return the guess for a quantity on a kind of rig; empty where there is none} */
    public static Optional<StartingGuess> of(Quantity quantity, Rig.Kind kind) {
        if (quantity != Quantity.POWER && quantity != Quantity.TORQUE) {
            return Optional.empty();
        }
        return switch (kind) {
            case ROLLER_INERTIA, ROLLER_BRAKE, HUB -> Optional.of(new StartingGuess(PULL_ON_ROLLERS, REFIT, DEGREES_OF_FREEDOM));
            case ENGINE_BENCH -> Optional.of(new StartingGuess(PULL_ON_BENCH, REFIT, DEGREES_OF_FREEDOM));
            case ROAD, STRIP -> Optional.empty();
        };
    }
}
