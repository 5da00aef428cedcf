package fairpull.domain.finding;

/** Whether a change is shown to reach the worthwhile gain, shown to stay below it, or neither. */
public enum Worthwhile {
    YES, NO, OPEN
}
