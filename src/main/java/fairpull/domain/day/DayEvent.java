package fairpull.domain.day;

/**
 * Something that takes time in a session.
 *
 * @param kind what
 * @param install the install that it belongs to; for set-up and swap the one that follows, for a break the one under way or next
 * @param number the number of a pull among its kind in its install, from 1; 0 for all else
 * @param startS when it starts: seconds after midnight where the start of day is planned, else from the start of the session
 * @param endS when it ends; for a pull when the next may start
 */
public record DayEvent(Kind kind, String install, int number, double startS, double endS) {
    /** What takes time. */
    public enum Kind {
        SET_UP, SWAP, WARM_UP, PULL, BREAK;

        /** {@return whether the car is driven} */
        public boolean isPull() {
            return this == WARM_UP || this == PULL;
        }
    }
}
