package fairpull.domain.audit;

import fairpull.domain.plan.Better;
import fairpull.domain.pull.Samples;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A published comparison.
 *
 * @param title what it is called here
 * @param remark what a reader should know first
 * @param source where it was published
 * @param changed what was changed
 * @param figures the printed figures, one at least
 * @param procedure how they came about
 * @param claims what is claimed of them
 */
public record Publication(String title, String remark, String source, String changed, List<Figure> figures, Procedure procedure,
        List<Claim> claims) {
    public Publication {
        Objects.requireNonNull(procedure, "procedure");
        figures = List.copyOf(figures);
        claims = List.copyOf(claims);
        if (figures.isEmpty()) {
            throw new IllegalArgumentException("a publication without a figure before and after holds nothing to audit");
        }
        for (Claim claim : claims) {
            if (figures.stream().noneMatch(figure -> figure.name().equals(claim.figure()))) {
                throw new IllegalArgumentException("the claim “" + claim.words() + "” is about “" + claim.figure()
                        + "”, which is no figure of the publication");
            }
        }
    }

    /**
     * A figure before and after.
     *
     * @param name what it is, unique within the publication
     * @param before the figure before
     * @param after the figure after, in a unit of the same quantity
     * @param better which direction is a gain
     * @param values the values behind it, where they were published one by one
     */
    public record Figure(String name, Printed before, Printed after, Better better, Optional<Values> values) {
        public Figure {
            if (before.unit().quantity() != after.unit().quantity()) {
                throw new IllegalArgumentException(name + " is printed in " + before.unit().symbol() + " and in " + after.unit().symbol());
            }
            if (!(before.si() > 0)) {
                throw new IllegalArgumentException(name + " before must be above 0");
            }
        }

        /** {@return the gain, positive where it is one, in SI} */
        public double gainSi() {
            return better.gainOf(after.si() - before.si());
        }
    }

    /**
     * Values that were published one by one, each of a unit of its own: a car, a battery, an install.
     *
     * @param before in SI
     * @param after in SI
     * @param paired whether each after belongs to the before at its place
     */
    public record Values(Samples before, Samples after, boolean paired) {
    }

    /**
     * A claim.
     *
     * @param words as it was published
     * @param figure the figure that it is about
     * @param gain the gain claimed, with its unit or in percent; empty where any gain is
     */
    public record Claim(String words, String figure, Optional<Printed> gain) {
    }

    /** {@return the figure of a name} */
    public Figure figure(String name) {
        return figures.stream().filter(figure -> figure.name().equals(name)).findFirst().orElseThrow();
    }
}
