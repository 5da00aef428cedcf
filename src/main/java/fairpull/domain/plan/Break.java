package fairpull.domain.plan;

import java.time.LocalTime;
import java.util.Objects;

/**
 * A break of the day, kept at its time whatever is being done.
 *
 * @param start when it starts
 * @param lengthS how long it lasts
 */
public record Break(LocalTime start, double lengthS) {
    public Break {
        Objects.requireNonNull(start, "the start of a break");
        Checks.positive("the length of a break", lengthS);
    }

    /** {@return when it ends, in seconds after midnight} */
    public double endS() {
        return start.toSecondOfDay() + lengthS;
    }
}
