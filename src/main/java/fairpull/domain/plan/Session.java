package fairpull.domain.plan;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Installs that follow each other on one day: the unit in which drift is centred.
 *
 * @param name the day, in words or as a date
 * @param installs in the order in which they are run
 * @param hours its working hours; empty where they are not planned, and then not written to a file
 */
public record Session(String name, List<Install> installs, Optional<Hours> hours) {
    public Session {
        Checks.named("a session", name);
        installs = List.copyOf(installs);
        Objects.requireNonNull(hours, "the hours of a session");
        if (installs.isEmpty()) {
            throw new IllegalArgumentException("session " + name + " has no install");
        }
    }

    /** A session whose hours are not planned. */
    public Session(String name, List<Install> installs) {
        this(name, installs, Optional.empty());
    }

    /** {@return the same session under another name} */
    public Session named(String other) {
        return new Session(other, installs, hours);
    }

    /** {@return the same session with other installs} */
    public Session with(List<Install> others) {
        return new Session(name, others, hours);
    }

    /** {@return the same session with other hours} */
    public Session with(Hours others) {
        return new Session(name, installs, Optional.of(others));
    }
}
