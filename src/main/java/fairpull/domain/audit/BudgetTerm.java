package fairpull.domain.audit;

/**
 * One thing but the part that moves a published difference.
 *
 * @param kind what it is
 * @param ordinary how far at ordinary scatter, with all that was not disclosed done well
 * @param worst how far with scatter and all that was not disclosed at their worst plausible value; both in SI
 */
public record BudgetTerm(Kind kind, double ordinary, double worst) {
    /** What moves a difference. */
    public enum Kind {
        /** One standard deviation by the scatter of the pulls behind both figures. */
        PULLS(false),
        /** One standard deviation by strapping down anew. */
        REFIT(false),
        /** One standard deviation by another day, its correction included. */
        DAY(false),
        /** One standard deviation by the rounding of both figures. */
        ROUNDING(false),
        /** What quoting the best of several pulls adds on average. */
        PICKED_BEST(true),
        /** What picking the speed afterwards adds to the reach of the interval. */
        PICKED_SPEED(true),
        /** What another rig may add. */
        RIG(true),
        /** What mixed standards may add. */
        STANDARDS(true),
        /** What mixed barometers may add. */
        BAROMETER(true),
        /** What the air of two days may add to figures that were not corrected. */
        WEATHER(true);

        private final boolean shift;

        Kind(boolean shift) {
            this.shift = shift;
        }

        /** {@return whether it shifts the difference, and does not scatter it} */
        public boolean isShift() {
            return shift;
        }

        /** {@return whether it moves one figure as a whole, however many values stand behind it} */
        public boolean movesAlways() {
            return shift && this != PICKED_BEST && this != PICKED_SPEED;
        }
    }
}
