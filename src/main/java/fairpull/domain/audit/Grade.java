package fairpull.domain.audit;

/** How a claim stands against the figures that it rests on, from the weakest to the strongest. */
public enum Grade {
    CONTRADICTED, NOT_SHOWN, PLAUSIBLE, SHOWN
}
