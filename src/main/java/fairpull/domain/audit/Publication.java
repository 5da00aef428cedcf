package fairpull.domain.audit;

import fairpull.domain.plan.Better;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A published comparison.
 *
 * @param title what it is called here
 * @param remark what a reader should know first
 * @param source where it was published
 * @param changed what was changed
 * @param figures the printed figures, one at least, each with a name of its own
 * @param curves the published curves
 * @param procedure how they came about
 * @param claims what is claimed of them
 */
public record Publication(String title, String remark, String source, String changed, List<Figure> figures, List<Curves> curves,
        Procedure procedure, List<Claim> claims) {
    private static final int MOST_FIGURES = 20;
    private static final int MOST_CURVES = 8;
    private static final int LONGEST_TEXT = 400;
    private static final int MOST_VALUES = 1000;

    public Publication {
        Objects.requireNonNull(procedure, "procedure");
        figures = List.copyOf(figures);
        curves = List.copyOf(curves);
        claims = List.copyOf(claims);
        if (figures.size() > MOST_FIGURES || curves.size() > MOST_CURVES || claims.size() > MOST_FIGURES) {
            throw new IllegalArgumentException("up to " + MOST_FIGURES + " figures and claims and " + MOST_CURVES + " pairs of curves are "
                    + "audited at a time; part the publication");
        }
        for (String text : List.of(title, remark, source, changed)) {
            bounded("a text", text);
        }
        if (figures.isEmpty()) {
            throw new IllegalArgumentException("a publication without a figure before and after holds nothing to audit");
        }
        if (figures.stream().map(Figure::name).distinct().count() < figures.size()) {
            throw new IllegalArgumentException("two figures have the same name");
        }
        for (Claim claim : claims) {
            if (figures.stream().noneMatch(figure -> figure.name().equals(claim.figure()))) {
                throw new IllegalArgumentException("the claim “" + claim.words() + "” is about “" + claim.figure()
                        + "”, which is no figure of the publication");
            }
        }
    }

    private static void bounded(String what, String text) {
        if (text.length() > LONGEST_TEXT) {
            throw new IllegalArgumentException(what + " has up to " + LONGEST_TEXT + " characters, this one has " + text.length());
        }
    }

    /**
     * A figure before and after.
     *
     * @param name what it is, unique within the publication
     * @param before the figure before
     * @param after the figure after, in a unit of the same quantity
     * @param better which direction is a gain
     * @param at the engine speed of both, as it was printed; empty where none was named, or the figure is no value at a speed
     * @param values the values behind it, where they were published one by one
     */
    public record Figure(String name, Printed before, Printed after, Better better, Optional<Printed> at,
            Optional<Values> values) {
        public Figure {
            if (before.unit().quantity() != after.unit().quantity()
                    || before.unit().quantity() == Quantity.OTHER && !before.unit().equals(after.unit())) {
                throw new IllegalArgumentException(name + " is printed in " + before.unit().symbol() + " and in " + after.unit().symbol());
            }
            bounded("the name of a figure", name);
            if (!(before.si() > 0)) {
                throw new IllegalArgumentException(name + " before must be above 0");
            }
            at.ifPresent(speed -> {
                if (speed.unit().quantity() != Quantity.ENGINE_SPEED || !(speed.si() > 0)) {
                    throw new IllegalArgumentException(name + " is at an engine speed above 0, such as 5500 rpm");
                }
            });
        }

        /** {@return whether it is of power or torque, which are brought to reference air and stand at an engine speed} */
        public boolean isOfEngine() {
            Quantity quantity = before.unit().quantity();
            return quantity == Quantity.POWER || quantity == Quantity.TORQUE;
        }

        /** {@return the gain, positive where it is one, in SI} */
        public double gainSi() {
            return better.gainOf(after.si() - before.si());
        }
    }

    /**
     * Values that were published one by one.
     *
     * @param printedBefore two or more
     * @param printedAfter two or more, as many where they are paired
     * @param paired whether each after belongs to the before at its place
     * @param each what each of them is of; empty where it was not disclosed
     */
    public record Values(List<Printed> printedBefore, List<Printed> printedAfter, boolean paired, Optional<Each> each) {
        /** What a value is of. Only values that repeat all that may differ can say how much differs. */
        public enum Each {
            /** One pull of several within one install: repeats neither strap-down nor day. */
            PULL,
            /** One install, the car strapped down and the part fitted anew. */
            INSTALL,
            /** A specimen of its own, such as a car or a battery. */
            SPECIMEN
        }

        public Values {
            printedBefore = List.copyOf(printedBefore);
            printedAfter = List.copyOf(printedAfter);
            if (Math.max(printedBefore.size(), printedAfter.size()) > MOST_VALUES) {
                throw new IllegalArgumentException("up to " + MOST_VALUES + " values a side are audited");
            }
            if (printedBefore.size() < 2 || printedAfter.size() < 2 || paired && printedBefore.size() != printedAfter.size()) {
                throw new IllegalArgumentException("values need two or more on each side, and as many on both where they are paired");
            }
        }

        /** {@return whether they scatter, so that they can be tested} */
        public boolean scatter() {
            if (paired) {
                double first = after().at(0) - before().at(0);
                return IntStream.range(1, printedBefore.size()).anyMatch(place -> after().at(place) - before().at(place) != first);
            }
            return Stream.of(before(), after()).anyMatch(side -> side.stream().anyMatch(value -> value != side.at(0)));
        }

        /** {@return the values before, in SI} */
        public Samples before() {
            return samples(printedBefore);
        }

        /** {@return the values after, in SI} */
        public Samples after() {
            return samples(printedAfter);
        }

        private static Samples samples(List<Printed> printed) {
            return Samples.of(printed.stream().mapToDouble(Printed::si).toArray());
        }
    }

    /**
     * The published curves of a quantity over engine speed.
     *
     * @param name what they show
     * @param unit of the values, in which they are told
     * @param speedUnit of the speeds
     * @param before where the curve before stands
     * @param after where the curve after stands
     */
    public record Curves(String name, Unit unit, Unit speedUnit, CurveSource before, CurveSource after) {
        public Curves {
            if (unit.quantity() == Quantity.OTHER || unit.quantity() == Quantity.ENGINE_SPEED) {
                throw new IllegalArgumentException("“" + unit.symbol() + "” is no unit of a curve that is known here; give one such as "
                        + "hp or N·m");
            }
            Objects.requireNonNull(before, "before");
            Objects.requireNonNull(after, "after");
            if (speedUnit.quantity() != Quantity.ENGINE_SPEED) {
                throw new IllegalArgumentException("a curve runs over engine speed, in a unit such as rpm");
            }
        }
    }

    /**
     * A claim.
     *
     * @param words as it was published
     * @param figure the figure that it is about
     * @param gain the gain claimed, with its unit or in percent; empty where any gain is
     */
    public record Claim(String words, String figure, Optional<Printed> gain) {
        public Claim {
            bounded("a claim", words);
        }
    }

    /** {@return the same with another procedure} */
    public Publication with(Procedure other) {
        return new Publication(title, remark, source, changed, figures, curves, other, claims);
    }

    /** {@return the figure of a name} */
    public Figure figure(String name) {
        return figures.stream().filter(figure -> figure.name().equals(name)).findFirst().orElseThrow();
    }
}
