package fairpull.domain.audit;

/**
 * Power against torque × engine speed for one pair of printed figures.
 *
 * @param ratio P ÷ (T·ω)
 * @param low the smallest ratio that rounding allows
 * @param high the largest
 * @param mixUp the mixed-up unit that explains it, symbols only; empty where it holds, or where none does
 */
public record IdentityOfFigures(double ratio, double low, double high, String mixUp) {
    /** {@return whether a ratio of 1 lies within what rounding allows} */
    public boolean holds() {
        return low <= 1 && 1 <= high;
    }
}
