package fairpull.domain.audit;

import java.util.Optional;
import java.util.stream.Stream;

/**
 * What the figures are of all that was run. What is empty was not disclosed.
 *
 * @param kinds whether each is the mean or the best of its pulls, or a single one
 * @param pulls how many were run for each, 1 to 1000
 * @param namedBefore whether the figure, or its engine speed, was named before the test; false where it was picked afterwards
 */
public record Quoting(BeforeAfter<Quote.Kind> kinds, BeforeAfter<Integer> pulls, Optional<Boolean> namedBefore) {
    /** Nothing was disclosed. */
    public static final Quoting NOT_DISCLOSED = new Quoting(BeforeAfter.notDisclosed(), BeforeAfter.notDisclosed(), Optional.empty());

    public Quoting {
        single(kinds.before(), pulls.before(), Contradiction.Item.PULLS_BEFORE);
        single(kinds.after(), pulls.after(), Contradiction.Item.PULLS_AFTER);
        Stream.of(pulls.before(), pulls.after()).flatMap(Optional::stream).forEach(number -> new Quote(Quote.Kind.MEAN, number));
    }

    private static void single(Optional<Quote.Kind> kind, Optional<Integer> pulls, Contradiction.Item item) {
        if (kind.filter(Quote.Kind.SINGLE::equals).isPresent() && pulls.filter(number -> number > 1).isPresent()) {
            throw new Contradiction(item, "a single pull is quoted, and " + pulls.get() + " were run: say whether it is their best or "
                    + "their mean, or leave it open");
        }
    }

    /** {@return what the figure before is of its pulls, where all of that was disclosed} */
    public Optional<Quote> before() {
        return quote(kinds.before(), pulls.before());
    }

    /** {@return what the figure after is of its pulls, where all of that was disclosed} */
    public Optional<Quote> after() {
        return quote(kinds.after(), pulls.after());
    }

    private static Optional<Quote> quote(Optional<Quote.Kind> kind, Optional<Integer> pulls) {
        return kind.flatMap(known -> known == Quote.Kind.SINGLE ? Optional.of(Quote.single())
                : pulls.map(number -> new Quote(known, number)));
    }

    /** {@return the same with other quotes} */
    public Quoting withQuotes(Quote before, Quote after) {
        return new Quoting(BeforeAfter.of(before.kind(), after.kind()), BeforeAfter.of(before.pulls(), after.pulls()), namedBefore);
    }

    /** {@return the same with another word of what is quoted} */
    public Quoting withKinds(BeforeAfter<Quote.Kind> other) {
        return new Quoting(other, pulls, namedBefore);
    }

    /** {@return the same with other numbers of pulls} */
    public Quoting withPulls(BeforeAfter<Integer> other) {
        return new Quoting(kinds, other, namedBefore);
    }

    /** {@return the same with another word of whether it was named before} */
    public Quoting withNamedBefore(Optional<Boolean> other) {
        return new Quoting(kinds, pulls, other);
    }
}
