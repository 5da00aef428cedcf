package fairpull.domain.finding;

/**
 * The look at which a test is judged, among those planned.
 *
 * @param number which one, counted from 1; 0 where no look is planned after so many installs
 * @param planned how many are planned
 * @param afterInstalls installs that have data
 * @param level the error rate of this look alone: that of its interval and of its tests
 * @param errorRate the error rate of all looks together
 */
public record LookTaken(int number, int planned, int afterInstalls, double level, double errorRate) {
    /** {@return whether such a look was planned} */
    public boolean wasPlanned() {
        return number > 0;
    }

    /** {@return whether it is the last one} */
    public boolean isLast() {
        return number == planned;
    }
}
