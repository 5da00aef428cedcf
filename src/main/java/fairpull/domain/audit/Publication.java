package fairpull.domain.audit;

import fairpull.domain.plan.Better;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.Units;
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
    /** More nobody reads in one audit; each costs a search for the fair repeat and two charts. */
    private static final int MOST_FIGURES = 20;
    /** Pairs of curves, each of which is read and held against every figure and every other pair. */
    private static final int MOST_CURVES = 8;
    private static final int MOST_CLAIMS = 40;

    public Publication {
        Objects.requireNonNull(procedure, "procedure");
        figures = List.copyOf(figures);
        curves = List.copyOf(curves);
        claims = List.copyOf(claims);
        if (figures.isEmpty()) {
            throw new RefusedPart("figures", "a publication without a figure before and after holds nothing to audit");
        }
        requireAtMost(MOST_FIGURES, figures, "figures");
        requireAtMost(MOST_CURVES, curves, "curves");
        requireAtMost(MOST_CLAIMS, claims, "claims");
        PublishedText.require("title", "the title", title, PublishedText.LONGEST_WORDS);
        PublishedText.require("remark", "the remark", remark, PublishedText.LONGEST);
        PublishedText.require("source", "the source", source, PublishedText.LONGEST);
        PublishedText.require("changed", "what was changed", changed, PublishedText.LONGEST_WORDS);
        requireSaid("procedure/alsoChanged", "what else was changed", procedure.keeping().alsoChanged());
        requireSaid("procedure/smoothingBefore", "the smoothing before", procedure.sweeping().smoothing().before());
        requireSaid("procedure/smoothingAfter", "the smoothing after", procedure.sweeping().smoothing().after());
        if (figures.stream().map(Figure::name).distinct().count() < figures.size()) {
            throw new RefusedPart("figures", "two figures have the same name");
        }
        for (int place = 0; place < claims.size(); place++) {
            claims.get(place).require("claims/" + place, figures);
        }
    }

    private static void requireSaid(String part, String what, Optional<String> words) {
        words.ifPresent(said -> PublishedText.require(part, what, said, PublishedText.LONGEST_WORDS));
    }

    private static void requireAtMost(int most, List<?> parts, String part) {
        if (parts.size() > most) {
            throw new RefusedPart(part, "a publication has at most " + most + " " + part + ", were " + parts.size()
                    + "; audit the others by themselves");
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
        private static final int SLOWEST_RPM = 100;
        private static final int FASTEST_RPM = 50_000;

        public Figure {
            PublishedText.requireWords("name", "the name of a figure", name, PublishedText.LONGEST_NAME);
            if (before.unit().equals(Units.ONE) || after.unit().equals(Units.ONE)) {
                throw new IllegalArgumentException(name + " needs its unit, such as " + before.number() + " hp");
            }
            if (!before.isLike(after)) {
                throw new IllegalArgumentException(name + " is printed in " + before.unit().symbol() + " and in " + after.unit().symbol());
            }
            values.ifPresent(known -> Values.requireLike(name, before,
                    Stream.concat(known.printedBefore().stream(), known.printedAfter().stream())));
            if (!(before.si() > 0 && values.map(known -> known.before().stream().sum() > 0).orElse(true))) {
                throw new IllegalArgumentException(name + " before must be above 0, and so must the average of its values");
            }
            at.ifPresent(speed -> {
                double rpm = speed.unit().quantity() == Quantity.ENGINE_SPEED ? Units.RPM.fromSi(speed.si()) : Double.NaN;
                if (!(rpm >= SLOWEST_RPM && rpm <= FASTEST_RPM)) {
                    throw new IllegalArgumentException(name + " is at an engine speed from " + SLOWEST_RPM + " to " + FASTEST_RPM
                            + " rpm, such as 5500 rpm; was “" + speed.words() + "”");
                }
            });
        }

        /** {@return whether it is of power or torque, which are brought to reference air and stand at an engine speed} */
        public boolean isOfEngine() {
            Quantity quantity = before.unit().quantity();
            return quantity == Quantity.POWER || quantity == Quantity.TORQUE;
        }

        /** Refuses a gain that is claimed in another quantity than that of the figure: it is in a unit of the figure or in percent. */
        public void requireGain(Printed gain) {
            if (gain.unit().equals(Units.ONE) || !gain.isLike(before) && gain.unit().quantity() != Quantity.FRACTION) {
                throw new IllegalArgumentException("a gain of “" + gain.words() + "” is claimed of " + name + ", which is printed in "
                        + before.unit().symbol() + "; give the gain in " + before.unit().symbol() + " or in percent");
            }
        }

        /** {@return the gain, positive where it is one, in the unit of the figure before} */
        public double gain() {
            return better.gainOf(-before.above(after));
        }

        /** {@return the gain, positive where it is one, in SI} */
        public double gainSi() {
            return better.gainOf(after.si() - before.si());
        }
    }

    /**
     * Values that were published one by one.
     *
     * @param printedBefore two to 1000
     * @param printedAfter two to 1000, as many where they are paired
     * @param paired whether each after belongs to the before at its place
     * @param each what each of them is of; empty where it was not disclosed
     */
    public record Values(List<Printed> printedBefore, List<Printed> printedAfter, boolean paired, Optional<Each> each) {
        /** No publication that is typed holds more of them on a side. */
        public static final int MOST = 1000;
        private static final double NOISE = 1e-9;

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
            if (printedBefore.size() < 2 || printedAfter.size() < 2 || paired && printedBefore.size() != printedAfter.size()) {
                throw new IllegalArgumentException("values need two or more on each side, and as many on both where they are paired");
            }
            if (printedBefore.size() > MOST || printedAfter.size() > MOST) {
                throw new IllegalArgumentException("values are at most " + MOST + " on each side, were " + printedBefore.size() + " and "
                        + printedAfter.size());
            }
        }

        /** Refuses values of another quantity than that of their figure. */
        static void requireLike(String name, Printed figure, Stream<Printed> values) {
            values.filter(value -> !value.isLike(figure)).findFirst().ifPresent(unlike -> {
                throw new IllegalArgumentException(name + " is printed in " + figure.unit().symbol() + ", and one of its values is “"
                        + unlike.words() + "”; give values of the figure itself");
            });
        }

        /** {@return whether they scatter by more than what is lost in reckoning, so that they can be tested} */
        public boolean scatter() {
            double noise = NOISE * Math.abs(before().at(0));
            if (paired) {
                double first = after().at(0) - before().at(0);
                return IntStream.range(1, printedBefore.size())
                        .anyMatch(place -> Math.abs(after().at(place) - before().at(place) - first) > noise);
            }
            return Stream.of(before(), after()).anyMatch(side -> side.stream().anyMatch(value -> Math.abs(value - side.at(0)) > noise));
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
            PublishedText.requireWords("name", "the name of a curve", name, PublishedText.LONGEST_NAME);
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
        private void require(String part, List<Figure> figures) {
            PublishedText.requireWords(part + "/words", "a claim", words, PublishedText.LONGEST_WORDS);
            Figure about = figures.stream().filter(known -> known.name().equals(figure)).findFirst().orElseThrow(() -> new RefusedPart(
                    part + "/figure", "the claim “" + words + "” is about “" + figure + "”, which is no figure of the publication"));
            try {
                gain.ifPresent(about::requireGain);
            } catch (IllegalArgumentException refused) {
                throw new RefusedPart(part + "/gain", refused.getMessage());
            }
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
