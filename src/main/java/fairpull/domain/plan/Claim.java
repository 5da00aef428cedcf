package fairpull.domain.plan;

import java.util.OptionalDouble;

/**
 * A sentence “at least x” about the gain in one measure.
 *
 * @param words the sentence as it would be printed
 * @param measure the name of the measure it is about
 * @param atLeastSi the gain claimed, positive where it is a gain
 * @param speedRadPerS the engine speed at which it is claimed; empty where it is about the measure itself
 */
public record Claim(String words, String measure, double atLeastSi, OptionalDouble speedRadPerS) {
    public Claim {
        Checks.named("a claim", words);
        Checks.named("the measure of a claim", measure);
        if (!Double.isFinite(atLeastSi)) {
            throw new IllegalArgumentException("the claim “" + words + "” needs a finite gain");
        }
        speedRadPerS.ifPresent(speed -> Checks.positive("the engine speed of a claim", speed));
    }

    /** A claim about the measure itself. */
    public Claim(String words, String measure, double atLeastSi) {
        this(words, measure, atLeastSi, OptionalDouble.empty());
    }
}
