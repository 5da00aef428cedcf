package fairpull.domain.heat;

/**
 * One way in which heat leaves: a share of what a pull adds, dying away with its own time constant.
 *
 * @param timeConstantS seconds in which it falls to 1/e, above 0
 * @param share of the rise that a pull adds, above 0, at most 1
 */
public record Mode(double timeConstantS, double share) {
    public Mode {
        if (!(timeConstantS > 0) || Double.isInfinite(timeConstantS)) {
            throw new IllegalArgumentException("a time constant must be above 0 and finite, was " + timeConstantS);
        }
        if (!(share > 0 && share <= 1)) {
            throw new IllegalArgumentException("a share must lie above 0 and at most at 1, was " + share);
        }
    }
}
