package fairpull.domain.audit;

import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Something that each of both figures has. What is empty was not disclosed.
 *
 * @param before of the figure before
 * @param after of the figure after
 * @param <T> what it is
 */
public record BeforeAfter<T>(Optional<T> before, Optional<T> after) {
    public BeforeAfter {
        Objects.requireNonNull(before, "before");
        Objects.requireNonNull(after, "after");
    }

    /** {@return neither was disclosed} */
    public static <T> BeforeAfter<T> notDisclosed() {
        return new BeforeAfter<>(Optional.empty(), Optional.empty());
    }

    /** {@return both were disclosed} */
    public static <T> BeforeAfter<T> of(T before, T after) {
        return new BeforeAfter<>(Optional.of(before), Optional.of(after));
    }

    /** {@return whether both were disclosed} */
    public boolean isKnown() {
        return before.isPresent() && after.isPresent();
    }

    /** {@return whether both were disclosed, and differ} */
    public boolean differs() {
        return isKnown() && !before.equals(after);
    }

    /** {@return whether both were disclosed, and are one} */
    public boolean isSame() {
        return isKnown() && before.equals(after);
    }

    /** {@return whether what was disclosed leaves open, or says, that they were these two} */
    public boolean allows(T oneBefore, T oneAfter) {
        return before.map(oneBefore::equals).orElse(true) && after.map(oneAfter::equals).orElse(true);
    }

    /** {@return the same with another one before} */
    public BeforeAfter<T> withBefore(Optional<T> other) {
        return new BeforeAfter<>(other, after);
    }

    /** {@return the same with another one after} */
    public BeforeAfter<T> withAfter(Optional<T> other) {
        return new BeforeAfter<>(before, other);
    }

    /** {@return both changed alike, where they were disclosed} */
    public BeforeAfter<T> map(UnaryOperator<T> change) {
        return new BeforeAfter<>(before.map(change), after.map(change));
    }
}
