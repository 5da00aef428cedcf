package fairpull.domain.audit;

import fairpull.domain.plan.Better;
import java.util.Optional;

/**
 * A published figure while it is typed.
 *
 * @param name what it is
 * @param before the figure before; empty until it is typed
 * @param after the figure after; empty until it is typed
 * @param better which direction is a gain
 * @param at the engine speed of both; empty where none was named
 * @param values the values behind it, where they were published one by one
 */
public record FigureDraft(String name, Optional<Printed> before, Optional<Printed> after, Better better,
        Optional<Printed> at, ValuesDraft values) {
    /** @throws IllegalArgumentException if there is no such figure, in words for people */
    public FigureDraft {
        if (before.isPresent() || after.isPresent()) {
            Printed first = before.or(() -> after).get();
            Publication.Values.requireLike(name, first, values.all());
            new Publication.Figure(name, first, after.orElse(first), better, at, values.values());
        }
    }

    /** {@return a figure of which nothing but the name is known} */
    public static FigureDraft named(String name) {
        return new FigureDraft(name, Optional.empty(), Optional.empty(), Better.MORE, Optional.empty(), ValuesDraft.NONE);
    }

    /** {@return a published figure as a draft} */
    public static FigureDraft of(Publication.Figure figure) {
        return new FigureDraft(figure.name(), Optional.of(figure.before()), Optional.of(figure.after()), figure.better(),
                figure.at(), figure.values().map(ValuesDraft::of).orElse(ValuesDraft.NONE));
    }

    /** {@return the same under another name} */
    public FigureDraft renamed(String other) {
        return new FigureDraft(other, before, after, better, at, values);
    }

    /** {@return the same with another figure before; the first one of a quantity says which direction is usually a gain} */
    public FigureDraft withBefore(Optional<Printed> other) {
        Better direction = before.isPresent() || other.isEmpty() ? better : Better.usual(other.get().unit().quantity());
        return new FigureDraft(name, other, after, direction, at, values);
    }

    /** {@return the same with another figure after} */
    public FigureDraft withAfter(Optional<Printed> other) {
        return new FigureDraft(name, before, other, better, at, values);
    }

    /** {@return the same with a gain in another direction} */
    public FigureDraft with(Better other) {
        return new FigureDraft(name, before, after, other, at, values);
    }

    /** {@return the same at another engine speed} */
    public FigureDraft at(Optional<Printed> other) {
        return new FigureDraft(name, before, after, better, other, values);
    }

    /** {@return the same with other values behind it} */
    public FigureDraft with(ValuesDraft others) {
        return new FigureDraft(name, before, after, better, at, others);
    }

    /** {@return whether neither figure was typed yet} */
    public boolean isBlank() {
        return before.isEmpty() && after.isEmpty();
    }

    /** {@return the figure, once both are typed; without its values as long as they are not whole} */
    public Optional<Publication.Figure> figure() {
        return before.isPresent() && after.isPresent()
                ? Optional.of(new Publication.Figure(name, before.get(), after.get(), better, at, values.values())) : Optional.empty();
    }
}
