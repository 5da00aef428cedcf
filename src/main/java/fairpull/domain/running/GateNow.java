package fairpull.domain.running;

import fairpull.domain.plan.Gate;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A gate before the next pull.
 *
 * @param gate what must hold
 * @param readingSi what was read; empty where nothing was yet
 * @param referenceSi what was read at the reference pull; empty where it was not read, or where this is that pull
 * @param setsReference whether this is the reference pull itself
 * @param overridden why the pull is run although the gate does not hold; empty where nobody said
 */
public record GateNow(Gate gate, OptionalDouble readingSi, OptionalDouble referenceSi, boolean setsReference,
        Optional<String> overridden) {
    /** How a gate stands; open where it was read, and the reference to which it is held was not. */
    public enum State {
        NOT_READ, OPEN, HOLDS, BROKEN
    }

    /** {@return how it stands; at the reference pull itself every reading holds} */
    public State state() {
        if (readingSi.isEmpty()) {
            return State.NOT_READ;
        }
        if (lowSi().isEmpty() && !setsReference) {
            return State.OPEN;
        }
        return gate.holds(readingSi.getAsDouble(), referenceSi) ? State.HOLDS : State.BROKEN;
    }

    /** {@return the lower end of its band; empty where it has no reference yet} */
    public OptionalDouble lowSi() {
        return end(-1);
    }

    /** {@return the upper end of its band; empty where it has no reference yet} */
    public OptionalDouble highSi() {
        return end(1);
    }

    private OptionalDouble end(int side) {
        return gate.limit().match(new Gate.Limit.Cases<>() {
            @Override
            public OptionalDouble window(Gate.Window window) {
                return OptionalDouble.of(side < 0 ? window.lowSi() : window.highSi());
            }

            @Override
            public OptionalDouble nearReference(Gate.NearReference near) {
                return referenceSi.isEmpty() ? OptionalDouble.empty()
                        : OptionalDouble.of(referenceSi.getAsDouble() + side * near.toleranceSi());
            }
        });
    }
}
