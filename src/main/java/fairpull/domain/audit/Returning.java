package fairpull.domain.audit;

import java.util.Optional;

/**
 * Whether the state before was run again after the change. What is empty was not disclosed.
 *
 * @param order in which the states were run
 * @param said whether it was said to have been run again
 */
public record Returning(Optional<RunOrder> order, Optional<Boolean> said) {
    /** Nothing was disclosed. */
    public static final Returning NOT_DISCLOSED = new Returning(Optional.empty(), Optional.empty());

    public Returning {
        if (order.isPresent() && said.isPresent() && order.get().returns() != said.get()) {
            throw new Contradiction(Contradiction.Item.RETURNED, "the order " + order.get().letters() + (order.get().returns() ? " returns"
                    : " does not return") + " to the state before, against what is said of it");
        }
    }

    /** {@return whether the state before was run again after the change, by the order where it is known ({@link RunOrder#returns})} */
    public Optional<Boolean> returned() {
        return order.map(RunOrder::returns).or(() -> said);
    }

    /** {@return the same with another order} */
    public Returning withOrder(Optional<RunOrder> other) {
        return new Returning(other, said);
    }

    /** {@return the same with another word of whether it returned} */
    public Returning withSaid(Optional<Boolean> other) {
        return new Returning(order, other);
    }
}
