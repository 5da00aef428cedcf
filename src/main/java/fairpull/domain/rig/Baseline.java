package fairpull.domain.rig;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Repeated installs of an unchanged car.
 *
 * @param sessions in the order of time
 * @param rowsOfB how many pulls of part B the source also held, which were left out
 */
public record Baseline(List<Session> sessions, int rowsOfB) {
    /** One session: its name, a date where it can be one, and its installs in the order in which they were run. */
    public record Session(String name, List<Install> installs) {
        public Session {
            installs = List.copyOf(installs);
            if (name.isBlank() || installs.isEmpty()) {
                throw new IllegalArgumentException("a session needs a name and an install");
            }
        }
    }

    /** One install: its label and the values of its pulls, in the unit of the measure. */
    public record Install(String label, List<Double> values) {
        public Install {
            values = List.copyOf(values);
            if (label.isBlank() || values.isEmpty()) {
                throw new IllegalArgumentException("an install needs a label and a pull");
            }
        }
    }

    public Baseline {
        sessions = List.copyOf(sessions);
        Set<String> names = new HashSet<>();
        for (Session session : sessions) {
            if (!names.add(session.name())) {
                throw new IllegalArgumentException("two sessions are named " + session.name());
            }
        }
        if (sessions.isEmpty()) {
            throw new IllegalArgumentException("a baseline needs a session");
        }
    }

    /** {@return the number of installs} */
    public int installs() {
        return sessions.stream().mapToInt(session -> session.installs().size()).sum();
    }

    /** {@return the number of pulls} */
    public int pulls() {
        return sessions.stream().flatMap(session -> session.installs().stream()).mapToInt(install -> install.values().size()).sum();
    }
}
