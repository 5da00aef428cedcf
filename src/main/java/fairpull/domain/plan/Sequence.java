package fairpull.domain.plan;

import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The order of installs over one or several sessions, and the times between pulls.
 *
 * @param sessions the sessions in order
 * @param origin chosen by hand, or drawn at random
 * @param seed the seed of the draw
 * @param pullIntervalS from the start of a pull to the start of the next
 * @param swapS what a swap adds
 * @param setUpS before the first pull of a session
 */
public record Sequence(List<Session> sessions, Origin origin, OptionalLong seed, double pullIntervalS, double swapS, double setUpS) {
    /** How the order came about; only a drawn one allows a randomisation test. */
    public enum Origin {
        CHOSEN, DRAWN
    }

    public Sequence {
        sessions = List.copyOf(sessions);
        Objects.requireNonNull(origin, "the origin of the order");
        Checks.positive("the interval between pulls", pullIntervalS);
        Checks.notNegative("the time of a swap", swapS);
        Checks.notNegative("the set-up time", setUpS);
        if (sessions.isEmpty()) {
            throw new IllegalArgumentException("a plan needs at least one session");
        }
        if (origin == Origin.DRAWN && seed.isEmpty()) {
            throw new IllegalArgumentException("an order drawn at random keeps its seed");
        }
        Set<String> labels = new HashSet<>();
        Set<String> names = new HashSet<>();
        for (Session session : sessions) {
            if (!names.add(session.name())) {
                throw new IllegalArgumentException("two sessions are named " + session.name());
            }
            for (Install install : session.installs()) {
                if (!labels.add(install.label())) {
                    throw new IllegalArgumentException("two installs are labelled " + install.label());
                }
            }
        }
        for (Part part : Part.values()) {
            if (labels.stream().noneMatch(label -> label.startsWith(part.name()))) {
                throw new IllegalArgumentException("no install of part " + part + ": there is nothing to compare");
            }
        }
    }

    /** {@return all installs in the order in which they are run} */
    public Stream<Install> installs() {
        return sessions.stream().flatMap(session -> session.installs().stream());
    }

    /** {@return the order in letters, sessions parted by a bar: {@code ABA|BAB}} */
    public String letters() {
        StringBuilder letters = new StringBuilder();
        for (Session session : sessions) {
            if (!letters.isEmpty()) {
                letters.append('|');
            }
            session.installs().forEach(install -> letters.append(install.part()));
        }
        return letters.toString();
    }

    /**
     * {@return the same times with other sessions, the installs labelled anew in the order in which they are run}
     *
     * @param others the sessions, whatever their labels
     */
    public Sequence withSessions(List<Session> others) {
        int[] numbers = new int[Part.values().length];
        List<Session> labelled = others.stream().map(session -> session.with(session.installs().stream().map(install ->
                new Install(install.part() + String.valueOf(++numbers[install.part().ordinal()]), install.part(), install.countedPulls(),
                        install.warmUpPulls(), install.unstrapped())).toList())).toList();
        return withLabelled(labelled);
    }

    /** {@return the same times with other sessions, whose labels are kept} */
    public Sequence withLabelled(List<Session> others) {
        return new Sequence(others, origin, seed, pullIntervalS, swapS, setUpS);
    }
}
