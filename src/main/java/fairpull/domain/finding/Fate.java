package fairpull.domain.finding;

/** What became of a pull. Every planned pull and every pull that came in has one; none vanishes. */
public enum Fate {
    USED, WARM_UP, EXCLUDED, ABORTED, MISSING
}
