package fairpull.domain.plan;

import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * What is dropped of every sweep before it is scored. At either end engine speed and time may both be named; then both have to pass.
 *
 * @param tipInRadPerS how far engine speed rises after full throttle before scoring starts
 * @param tipInS how long after full throttle scoring starts
 * @param liftOffRadPerS how far below the highest engine speed scoring stops
 * @param liftOffS how long before lift-off scoring stops
 */
public record ScoredWindow(OptionalDouble tipInRadPerS, OptionalDouble tipInS, OptionalDouble liftOffRadPerS, OptionalDouble liftOffS) {
    public ScoredWindow {
        tipInRadPerS.ifPresent(drop -> Checks.positive("the rise dropped at tip-in", drop));
        tipInS.ifPresent(drop -> Checks.positive("the time dropped at tip-in", drop));
        liftOffRadPerS.ifPresent(drop -> Checks.positive("the fall dropped at lift-off", drop));
        liftOffS.ifPresent(drop -> Checks.positive("the time dropped at lift-off", drop));
        if (Stream.of(tipInRadPerS, tipInS, liftOffRadPerS, liftOffS).noneMatch(OptionalDouble::isPresent)) {
            throw new IllegalArgumentException("a scored window drops something at tip-in or at lift-off");
        }
    }

    /** {@return whether it takes a time channel} */
    public boolean needsTime() {
        return tipInS.isPresent() || liftOffS.isPresent();
    }
}
