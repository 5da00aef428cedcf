package fairpull.engine.check;

import fairpull.domain.pull.Channels;
import fairpull.domain.pull.PullTrace;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import fairpull.engine.curve.Sweep;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * One pull as the checks look at it. What several of them ask for (rows of the sweep, last digits, the identity of power, stretches) is
 * worked out when it is first asked for and kept: a long pull has ten thousand rows.
 */
final class Traced {
    private static final List<Quantity> COMPARED = List.of(Quantity.POWER, Quantity.TORQUE, Quantity.FORCE, Quantity.CURRENT);

    private final PullTrace pull;
    private final Map<Quantity, Double> digits = new EnumMap<>(Quantity.class);
    private Optional<Sweep> sweep;
    private Optional<PowerIdentity> identity;
    private Optional<StretchCopied.Compared> stretches;

    Traced(PullTrace pull) {
        this.pull = pull;
    }

    PullTrace pull() {
        return pull;
    }

    Channels channels() {
        return pull.channels();
    }

    Optional<Samples> find(Quantity quantity) {
        return pull.channels().find(quantity);
    }

    Unit unit(Quantity quantity) {
        return pull.units().get(quantity);
    }

    /** {@return the quantity by which the pull is compared with another, if it has one} */
    Optional<Quantity> compared() {
        return COMPARED.stream().filter(quantity -> find(quantity).isPresent()).findFirst();
    }

    /** {@return the rows of the sweep, between two engine speeds in rad/s, in which the speed is known} */
    int[] ofSweep(double lowRadPerS, double highRadPerS) {
        if (sweep == null) {
            sweep = Sweep.of(pull.sweepChannels());
        }
        if (sweep.isEmpty()) {
            return new int[0];
        }
        Samples speed = find(Quantity.ENGINE_SPEED).orElseThrow();
        return IntStream.rangeClosed(sweep.get().first(), sweep.get().last())
                .filter(row -> speed.at(row) >= lowRadPerS && speed.at(row) <= highRadPerS).toArray();
    }

    /** {@return one unit of the last digit that a channel was written with, in SI} */
    double lastDigit(Quantity quantity) {
        return digits.computeIfAbsent(quantity, asked -> unit(asked).factor()
                * LastDigit.of(find(asked).orElseThrow().map(unit(asked)::fromSi)));
    }

    /** {@return power against torque × engine speed; empty without all three channels in enough rows} */
    Optional<PowerIdentity> identity() {
        if (identity == null) {
            identity = PowerIdentity.of(this);
        }
        return identity;
    }

    /** {@return what of the pull may stand in another; empty where it is too coarse or too short} */
    Optional<StretchCopied.Compared> stretches() {
        if (stretches == null) {
            stretches = StretchCopied.compared(this);
        }
        return stretches;
    }
}
