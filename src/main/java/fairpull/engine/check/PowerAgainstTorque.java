package fairpull.engine.check;

import fairpull.domain.finding.Notice.Code;
import java.util.Optional;

/**
 * Power is not torque × engine speed, and no mixed-up unit explains it: says whether one factor or one amount does, and how far it goes
 * where. Figures as {@link Code#POWER_NOT_TORQUE_TIMES_SPEED}.
 */
public final class PowerAgainstTorque extends EachPull {
    public PowerAgainstTorque() {
        super(Code.POWER_NOT_TORQUE_TIMES_SPEED);
    }

    @Override
    Optional<Reading> read(Traced pull) {
        return pull.identity().filter(identity -> UnitMixUp.explanation(pull, identity).isEmpty())
                .map(identity -> Reading.of(!identity.holds(), identity.worst(),
                        identity.isOneRatio() ? identity.ratio() : Double.NaN, identity.isOneOffset() ? identity.offsetW() : Double.NaN,
                        identity.worst(), identity.worstRadPerS()));
    }
}
