package fairpull.domain.audit;

/**
 * What a comparison makes of a true gain.
 *
 * @param power how often it comes out beyond the limits
 * @param wrongSign how often, of those times, with the wrong sign (type S)
 * @param exaggeration how many times too large it is, on average over those times (type M)
 */
public record TypeErrors(double power, double wrongSign, double exaggeration) {
}
