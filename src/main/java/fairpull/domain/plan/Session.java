package fairpull.domain.plan;

import java.util.List;

/**
 * Installs that follow each other without a break of the day: the unit in which drift is centred.
 *
 * @param name the day, in words or as a date
 * @param installs in the order in which they are run
 */
public record Session(String name, List<Install> installs) {
    public Session {
        Checks.named("a session", name);
        installs = List.copyOf(installs);
        if (installs.isEmpty()) {
            throw new IllegalArgumentException("session " + name + " has no install");
        }
    }
}
