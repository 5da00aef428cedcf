package fairpull.domain.plan;

/**
 * A sentence “at least x” about the gain in one measure.
 *
 * @param words the sentence as it would be printed
 * @param measure the name of the measure it is about
 * @param atLeastSi the gain claimed, positive where it is a gain
 */
public record Claim(String words, String measure, double atLeastSi) {
    public Claim {
        Checks.named("a claim", words);
        Checks.named("the measure of a claim", measure);
        if (!Double.isFinite(atLeastSi)) {
            throw new IllegalArgumentException("the claim “" + words + "” needs a finite gain");
        }
    }
}
