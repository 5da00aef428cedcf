package fairpull.domain.audit;

/**
 * The curves before and after as they were read.
 *
 * @param published what was said of them
 * @param before the one before
 * @param after the one after, of the same quantity
 */
public record CurvePair(Publication.Curves published, CurveSeen before, CurveSeen after) {
    public CurvePair {
        if (before.unit().quantity() != after.unit().quantity()) {
            throw new IllegalArgumentException("the curve of " + published.name() + " is of " + before.unit().quantity().words()
                    + " before and of " + after.unit().quantity().words() + " after");
        }
    }
}
