package fairpull.domain.audit;

/**
 * What is taken for granted of a published pair where it was not disclosed, or as it was.
 *
 * @param before what the figure before is of its pulls
 * @param after what the figure after is of its pulls
 * @param scatter of the rig
 * @param refitted whether the car was strapped down anew between them
 * @param otherDay whether they were run on different days
 * @param offset how far anything but the part may have raised the figure after, relative: mixed standards, another rig
 * @param criticalValue that the largest of the figures picked from passes by chance with the error rate; 1.96 for one named before
 */
public record Assumed(Quote before, Quote after, ScatterShares scatter, boolean refitted, boolean otherDay, double offset,
        double criticalValue) {
}
