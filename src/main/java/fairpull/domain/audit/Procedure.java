package fairpull.domain.audit;

import fairpull.domain.plan.Part;
import java.util.Objects;
import java.util.Optional;

/**
 * How a published pair of figures came about, as far as it was disclosed.
 *
 * @param quoting what the figures are of all that was run
 * @param keeping what was kept the same for both
 * @param returning whether the state before was run again after the change
 * @param correcting how they were brought to reference air
 * @param sweeping how the curves behind them were run and drawn
 * @param scatter that was stated, or is known of the rig
 */
public record Procedure(Quoting quoting, Keeping keeping, Returning returning, Correcting correcting, Sweeping sweeping,
        Optional<StatedScatter> scatter) {
    private static final Procedure NOT_DISCLOSED = new Procedure(Quoting.NOT_DISCLOSED, Keeping.NOT_DISCLOSED, Returning.NOT_DISCLOSED,
            Correcting.NOT_DISCLOSED, Sweeping.NOT_DISCLOSED, Optional.empty());

    public Procedure {
        Objects.requireNonNull(quoting, "quoting");
        Objects.requireNonNull(keeping, "keeping");
        Objects.requireNonNull(returning, "returning");
        Objects.requireNonNull(correcting, "correcting");
        Objects.requireNonNull(sweeping, "sweeping");
        returning.order().ifPresent(order -> {
            fits(order, Part.A, quoting.kinds().before(), quoting.pulls().before());
            fits(order, Part.B, quoting.kinds().after(), quoting.pulls().after());
            if (!order.sharesADay() && keeping.day().filter(Sameness.SAME::equals).isPresent()) {
                throw new Contradiction(Contradiction.Item.DAY, "both figures are of one day, and no day of the order " + order.letters()
                        + " has both states: only one can be");
            }
        });
    }

    /** A single pull may be quoted of several; a mean or the best takes a pull of each install at the least. */
    private static void fits(RunOrder order, Part part, Optional<Quote.Kind> kind, Optional<Integer> pulls) {
        int installs = order.installs(part);
        if (kind.filter(Quote.Kind.SINGLE::equals).isEmpty() && pulls.filter(number -> number < installs).isPresent()) {
            String side = part == Part.A ? "before" : "after";
            throw new Contradiction(part == Part.A ? Contradiction.Item.PULLS_BEFORE : Contradiction.Item.PULLS_AFTER, "the order "
                    + order.letters() + " has " + installs + " installs of the state " + side + ", each of one pull at the least, and only "
                    + pulls.get() + " stand behind the figure " + side);
        }
    }

    /** {@return nothing was disclosed} */
    public static Procedure notDisclosed() {
        return NOT_DISCLOSED;
    }

    /** {@return the same with figures that are something else of what was run} */
    public Procedure with(Quoting other) {
        return new Procedure(other, keeping, returning, correcting, sweeping, scatter);
    }

    /** {@return the same where something else was kept the same} */
    public Procedure with(Keeping other) {
        return new Procedure(quoting, other, returning, correcting, sweeping, scatter);
    }

    /** {@return the same with another word of the return to the state before} */
    public Procedure with(Returning other) {
        return new Procedure(quoting, keeping, other, correcting, sweeping, scatter);
    }

    /** {@return the same brought to reference air in another way} */
    public Procedure with(Correcting other) {
        return new Procedure(quoting, keeping, returning, other, sweeping, scatter);
    }

    /** {@return the same with curves that were run or drawn in another way} */
    public Procedure with(Sweeping other) {
        return new Procedure(quoting, keeping, returning, correcting, other, scatter);
    }

    /** {@return the same with another scatter} */
    public Procedure withScatter(Optional<StatedScatter> other) {
        return new Procedure(quoting, keeping, returning, correcting, sweeping, other);
    }
}
