package fairpull.domain.audit;

import fairpull.domain.air.Barometer;
import fairpull.domain.curve.SpeedRange;
import fairpull.domain.plan.Correction;
import fairpull.domain.unit.Quantity;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How a published pair of figures came about. What is empty was not disclosed.
 *
 * @param quoted whether each figure is the mean or the best of its pulls, or a single one
 * @param pulls how many were run for each figure, 1 to 1000
 * @param rig whether both were run on one rig
 * @param strapDown whether the car stayed strapped down between them
 * @param day whether both were run on one day
 * @param otherChanges whether all else stayed as it was
 * @param alsoChanged what else was changed, in words
 * @param order in which the states were run
 * @param returnedSaid whether the state before was said to have been run again after the change
 * @param namedBefore whether the figure, or its engine speed, was named before the test; false where it was picked afterwards
 * @param corrections the correction of each figure
 * @param barometers whether the pressure behind each correction is that at the rig, or one reduced to sea level
 * @param elevation height of the rig above sea level
 * @param smoothing of each figure or curve, in words or as a width of engine speed
 * @param sweep the engine speeds that were run through
 * @param scatter that was stated, or is known of the rig
 */
public record Procedure(BeforeAfter<Quote.Kind> quoted, BeforeAfter<Integer> pulls, Optional<Sameness> rig, Optional<Sameness> strapDown,
        Optional<Sameness> day, Optional<Sameness> otherChanges, Optional<String> alsoChanged, Optional<RunOrder> order,
        Optional<Boolean> returnedSaid, Optional<Boolean> namedBefore, BeforeAfter<Correction> corrections,
        BeforeAfter<Barometer.Kind> barometers, Optional<Printed> elevation, BeforeAfter<String> smoothing, Optional<SpeedRange> sweep,
        Optional<StatedScatter> scatter) {
    public Procedure {
        if (alsoChanged.isPresent() && otherChanges.filter(Sameness.SAME::equals).isPresent()) {
            throw new IllegalArgumentException("all else stayed the same, and “" + alsoChanged.get() + "” was changed: only one can be");
        }
        if (order.isPresent() && returnedSaid.isPresent() && order.get().returns() != returnedSaid.get()) {
            throw new IllegalArgumentException("the order " + order.get().letters() + (order.get().returns() ? " returns"
                    : " does not return") + " to the state before, against what is said of it");
        }
        quote(quoted.before(), pulls.before());
        quote(quoted.after(), pulls.after());
        Stream.of(pulls.before(), pulls.after()).flatMap(Optional::stream).forEach(number -> new Quote(Quote.Kind.MEAN, number));
        elevation.ifPresent(height -> {
            if (height.unit().quantity() != Quantity.LENGTH || !(height.si() >= -500 && height.si() <= 6000)) {
                throw new IllegalArgumentException("an elevation is a height from −500 m to 6000 m, such as 300 m or 1000 ft");
            }
        });
    }

    /** {@return what the figure before is of its pulls, where all of that was disclosed} */
    public Optional<Quote> before() {
        return quote(quoted.before(), pulls.before());
    }

    /** {@return what the figure after is of its pulls, where all of that was disclosed} */
    public Optional<Quote> after() {
        return quote(quoted.after(), pulls.after());
    }

    private static Optional<Quote> quote(Optional<Quote.Kind> kind, Optional<Integer> pulls) {
        return kind.flatMap(known -> known == Quote.Kind.SINGLE ? Optional.of(Quote.single())
                : pulls.map(number -> new Quote(known, number)));
    }

    /** {@return the correction of the figure before} */
    public Optional<Correction> correctionBefore() {
        return corrections.before();
    }

    /** {@return the correction of the figure after} */
    public Optional<Correction> correctionAfter() {
        return corrections.after();
    }

    /** {@return whether the state before was run again after the change, or the order shows drift as well} */
    public Optional<Boolean> returned() {
        return order.map(RunOrder::showsDrift).or(() -> returnedSaid);
    }

    /** {@return whether anything else was changed with the part} */
    public Optional<Sameness> allElse() {
        return alsoChanged.isPresent() ? Optional.of(Sameness.DIFFERENT) : otherChanges;
    }

    /** {@return whether what was disclosed leaves open that the corrections of both figures differ} */
    public boolean mayMixStandards() {
        return !corrections.isSame();
    }

    /** {@return nothing was disclosed} */
    public static Procedure notDisclosed() {
        return new Procedure(BeforeAfter.notDisclosed(), BeforeAfter.notDisclosed(), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), BeforeAfter.notDisclosed(),
                BeforeAfter.notDisclosed(), Optional.empty(), BeforeAfter.notDisclosed(), Optional.empty(), Optional.empty());
    }

    /** {@return the same with other quotes} */
    public Procedure withQuotes(BeforeAfter<Quote> other) {
        return withQuoted(new BeforeAfter<>(other.before().map(Quote::kind), other.after().map(Quote::kind)))
                .withPulls(new BeforeAfter<>(other.before().map(Quote::pulls), other.after().map(Quote::pulls)));
    }

    /** {@return the same with another word of what is quoted} */
    public Procedure withQuoted(BeforeAfter<Quote.Kind> other) {
        return new Procedure(other, pulls, rig, strapDown, day, otherChanges, alsoChanged, order, returnedSaid, namedBefore,
                corrections, barometers, elevation, smoothing, sweep, scatter);
    }

    /** {@return the same with other numbers of pulls} */
    public Procedure withPulls(BeforeAfter<Integer> other) {
        return new Procedure(quoted, other, rig, strapDown, day, otherChanges, alsoChanged, order, returnedSaid, namedBefore,
                corrections, barometers, elevation, smoothing, sweep, scatter);
    }

    /** {@return the same with another word of the rig} */
    public Procedure withRig(Optional<Sameness> other) {
        return new Procedure(quoted, pulls, other, strapDown, day, otherChanges, alsoChanged, order, returnedSaid, namedBefore,
                corrections, barometers, elevation, smoothing, sweep, scatter);
    }

    /** {@return the same with another word of the strap-down} */
    public Procedure withStrapDown(Optional<Sameness> other) {
        return new Procedure(quoted, pulls, rig, other, day, otherChanges, alsoChanged, order, returnedSaid, namedBefore, corrections,
                barometers, elevation, smoothing, sweep, scatter);
    }

    /** {@return the same with another word of the day} */
    public Procedure withDay(Optional<Sameness> other) {
        return new Procedure(quoted, pulls, rig, strapDown, other, otherChanges, alsoChanged, order, returnedSaid, namedBefore,
                corrections, barometers, elevation, smoothing, sweep, scatter);
    }

    /** {@return the same with another word of all else} */
    public Procedure withOtherChanges(Optional<Sameness> other) {
        return new Procedure(quoted, pulls, rig, strapDown, day, other, alsoChanged, order, returnedSaid, namedBefore, corrections,
                barometers, elevation, smoothing, sweep, scatter);
    }

    /** {@return the same with other words of what else was changed} */
    public Procedure withAlsoChanged(Optional<String> other) {
        return new Procedure(quoted, pulls, rig, strapDown, day, otherChanges, other, order, returnedSaid, namedBefore, corrections,
                barometers, elevation, smoothing, sweep, scatter);
    }

    /** {@return the same with another order} */
    public Procedure withOrder(Optional<RunOrder> other) {
        return new Procedure(quoted, pulls, rig, strapDown, day, otherChanges, alsoChanged, other, returnedSaid, namedBefore,
                corrections, barometers, elevation, smoothing, sweep, scatter);
    }

    /** {@return the same with another word of whether it returned} */
    public Procedure withReturnedSaid(Optional<Boolean> other) {
        return new Procedure(quoted, pulls, rig, strapDown, day, otherChanges, alsoChanged, order, other, namedBefore, corrections,
                barometers, elevation, smoothing, sweep, scatter);
    }

    /** {@return the same with another word of whether it was named before} */
    public Procedure withNamedBefore(Optional<Boolean> other) {
        return new Procedure(quoted, pulls, rig, strapDown, day, otherChanges, alsoChanged, order, returnedSaid, other, corrections,
                barometers, elevation, smoothing, sweep, scatter);
    }

    /** {@return the same with other corrections} */
    public Procedure withCorrections(BeforeAfter<Correction> other) {
        return new Procedure(quoted, pulls, rig, strapDown, day, otherChanges, alsoChanged, order, returnedSaid, namedBefore, other,
                barometers, elevation, smoothing, sweep, scatter);
    }

    /** {@return the same with other barometers} */
    public Procedure withBarometers(BeforeAfter<Barometer.Kind> other) {
        return new Procedure(quoted, pulls, rig, strapDown, day, otherChanges, alsoChanged, order, returnedSaid, namedBefore,
                corrections, other, elevation, smoothing, sweep, scatter);
    }

    /** {@return the same with another elevation} */
    public Procedure withElevation(Optional<Printed> other) {
        return new Procedure(quoted, pulls, rig, strapDown, day, otherChanges, alsoChanged, order, returnedSaid, namedBefore,
                corrections, barometers, other, smoothing, sweep, scatter);
    }

    /** {@return the same with another smoothing} */
    public Procedure withSmoothing(BeforeAfter<String> other) {
        return new Procedure(quoted, pulls, rig, strapDown, day, otherChanges, alsoChanged, order, returnedSaid, namedBefore,
                corrections, barometers, elevation, other, sweep, scatter);
    }

    /** {@return the same with another sweep} */
    public Procedure withSweep(Optional<SpeedRange> other) {
        return new Procedure(quoted, pulls, rig, strapDown, day, otherChanges, alsoChanged, order, returnedSaid, namedBefore,
                corrections, barometers, elevation, smoothing, other, scatter);
    }

    /** {@return the same with another scatter} */
    public Procedure withScatter(Optional<StatedScatter> other) {
        return new Procedure(quoted, pulls, rig, strapDown, day, otherChanges, alsoChanged, order, returnedSaid, namedBefore,
                corrections, barometers, elevation, smoothing, sweep, other);
    }
}
