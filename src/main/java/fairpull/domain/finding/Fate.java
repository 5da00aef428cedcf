package fairpull.domain.finding;

/**
 * What became of a pull. Every planned pull and every pull that came in has one; none vanishes. Until the day is over, one that may still
 * come in is awaited; after that it is missing.
 */
public enum Fate {
    USED, WARM_UP, EXCLUDED, ABORTED, AWAITED, MISSING
}
