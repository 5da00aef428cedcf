package fairpull.domain.audit;

/**
 * The scatter that a publication is held against: a range where nothing is known, one value where it was stated.
 *
 * @param least the least plausible
 * @param ordinary what is ordinary
 * @param most the most plausible
 * @param pullStated whether that of pulls was stated, and not assumed
 * @param refitStated whether that of refits was
 */
public record ScatterRange(ScatterShares least, ScatterShares ordinary, ScatterShares most, boolean pullStated, boolean refitStated) {
    /** Nothing is known of the rig. */
    public static final ScatterRange ASSUMED =
            new ScatterRange(ScatterShares.LEAST, ScatterShares.ORDINARY, ScatterShares.MOST, false, false);
}
