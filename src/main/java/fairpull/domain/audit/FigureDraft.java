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
        Optional<Printed> at, Optional<Publication.Values> values) {
    /** @throws IllegalArgumentException if there is no such figure, in words for people */
    public FigureDraft {
        if (before.isPresent() || after.isPresent()) {
            figure(name, before.or(() -> after).get(), after.or(() -> before).get(), better, at, values);
        }
    }

    /** {@return a figure of which nothing but the name is known} */
    public static FigureDraft named(String name) {
        return new FigureDraft(name, Optional.empty(), Optional.empty(), Better.MORE, Optional.empty(), Optional.empty());
    }

    /** {@return a published figure as a draft} */
    public static FigureDraft of(Publication.Figure figure) {
        return new FigureDraft(figure.name(), Optional.of(figure.before()), Optional.of(figure.after()), figure.better(),
                figure.at(), figure.values());
    }

    /** {@return the same under another name} */
    public FigureDraft renamed(String other) {
        return new FigureDraft(other, before, after, better, at, values);
    }

    /** {@return the same with another figure before} */
    public FigureDraft withBefore(Optional<Printed> other) {
        return new FigureDraft(name, other, after, better, at, values);
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

    /** {@return whether neither figure was typed yet} */
    public boolean isBlank() {
        return before.isEmpty() && after.isEmpty();
    }

    /** {@return the figure, once both are typed} */
    public Optional<Publication.Figure> figure() {
        return before.isPresent() && after.isPresent() ? Optional.of(figure(name, before.get(), after.get(), better, at, values))
                : Optional.empty();
    }

    private static Publication.Figure figure(String name, Printed before, Printed after, Better better, Optional<Printed> at,
            Optional<Publication.Values> values) {
        return new Publication.Figure(name, before, after, better, at, values);
    }
}
