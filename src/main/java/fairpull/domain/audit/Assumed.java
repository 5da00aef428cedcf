package fairpull.domain.audit;

/**
 * What is taken for granted of a published pair where it was not disclosed, or as it was.
 *
 * @param before what the figure before is of its pulls
 * @param after what the figure after is of its pulls
 * @param scatter of the rig
 * @param refits how often the refit variance enters the difference: 0 in one strap-down, 2 where each figure is of one install
 * @param days how often the variance of days does: 0 on one day, 2 where each figure is of a day of its own
 * @param shifts what may have moved one figure as a whole
 * @param criticalValue that the largest of the figures picked from passes by chance with the error rate; 1.96 for one named before
 */
public record Assumed(Quote before, Quote after, ScatterShares scatter, double refits, double days, Shifts shifts,
        double criticalValue) {
    /**
     * How far something else than the part may have moved one figure against the other, relative, 0 or more.
     *
     * @param rig two rigs in place of one
     * @param standards mixed standards
     * @param barometer mixed barometers
     * @param weather the air of two days, where neither figure was corrected
     */
    public record Shifts(double rig, double standards, double barometer, double weather) {
        /** Nothing is moved. */
        public static final Shifts NONE = new Shifts(0, 0, 0, 0);

        /** {@return all of them together} */
        public double together() {
            return (1 + rig) * (1 + standards) * (1 + barometer) * (1 + weather) - 1;
        }
    }
}
