package fairpull.domain.audit;

/**
 * What is taken for granted of a published pair where it was not disclosed, or as it was.
 *
 * @param before what the figure before is of its pulls
 * @param after what the figure after is of its pulls
 * @param scatter of the rig
 * @param refits how often the refit variance enters the difference: 0 in one strap-down, 2 where each figure is of one install
 * @param otherDay whether they were run on different days
 * @param standards how far mixed standards may have raised the figure after, relative
 * @param barometer how far mixed barometers may have, relative
 * @param criticalValue that the largest of the figures picked from passes by chance with the error rate; 1.96 for one named before
 */
public record Assumed(Quote before, Quote after, ScatterShares scatter, double refits, boolean otherDay, double standards,
        double barometer, double criticalValue) {

    /** {@return how far anything but the part may have raised the figure after, relative} */
    public double offset() {
        return (1 + standards) * (1 + barometer) - 1;
    }
}
