package fairpull.domain.search;

/**
 * Whole numbers from one to another, both included.
 *
 * @param least the least, 0 or more
 * @param most the most
 */
public record Range(int least, int most) {
    public Range {
        if (least < 0 || most < least) {
            throw new IllegalArgumentException("a range runs from a smaller to a larger number of 0 or more, was " + least + "-" + most);
        }
    }
}
