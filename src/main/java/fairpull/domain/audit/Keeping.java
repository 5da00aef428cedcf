package fairpull.domain.audit;

import java.util.Optional;

/**
 * What was kept the same for both figures. What is empty was not disclosed.
 *
 * @param rig whether both were run on one rig
 * @param strapDown whether the car stayed strapped down between them
 * @param day whether both were run on one day
 * @param otherChanges whether all else stayed as it was
 * @param alsoChanged what else was changed, in words
 */
public record Keeping(Optional<Sameness> rig, Optional<Sameness> strapDown, Optional<Sameness> day, Optional<Sameness> otherChanges,
        Optional<String> alsoChanged) {
    /** Nothing was disclosed. */
    public static final Keeping NOT_DISCLOSED = new Keeping(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
            Optional.empty());

    public Keeping {
        if (alsoChanged.isPresent() && otherChanges.filter(Sameness.SAME::equals).isPresent()) {
            throw new Contradiction(Contradiction.Item.ALSO_CHANGED, "all else stayed the same, and “" + alsoChanged.get()
                    + "” was changed: only one can be");
        }
        if (rig.filter(Sameness.DIFFERENT::equals).isPresent() && strapDown.filter(Sameness.SAME::equals).isPresent()) {
            throw new Contradiction(Contradiction.Item.STRAP_DOWN, "the rigs differ, and the car stayed strapped down: only one can be");
        }
    }

    /** {@return all was kept the same} */
    public static Keeping all() {
        Optional<Sameness> same = Optional.of(Sameness.SAME);
        return new Keeping(same, same, same, same, Optional.empty());
    }

    /** {@return whether anything else was changed with the part} */
    public Optional<Sameness> allElse() {
        return alsoChanged.isPresent() ? Optional.of(Sameness.DIFFERENT) : otherChanges;
    }

    /** {@return the same with another word of the rig} */
    public Keeping withRig(Optional<Sameness> other) {
        return new Keeping(other, strapDown, day, otherChanges, alsoChanged);
    }

    /** {@return the same with another word of the strap-down} */
    public Keeping withStrapDown(Optional<Sameness> other) {
        return new Keeping(rig, other, day, otherChanges, alsoChanged);
    }

    /** {@return the same with another word of the day} */
    public Keeping withDay(Optional<Sameness> other) {
        return new Keeping(rig, strapDown, other, otherChanges, alsoChanged);
    }

    /** {@return the same with another word of all else} */
    public Keeping withOtherChanges(Optional<Sameness> other) {
        return new Keeping(rig, strapDown, day, other, alsoChanged);
    }

    /** {@return the same with other words of what else was changed} */
    public Keeping withAlsoChanged(Optional<String> other) {
        return new Keeping(rig, strapDown, day, otherChanges, other);
    }
}
