package fairpull.domain.day;

import fairpull.domain.day.DayEvent.Kind;
import fairpull.domain.plan.Break;
import fairpull.domain.plan.Hours;
import fairpull.domain.plan.Install;
import fairpull.domain.plan.Sequence;
import fairpull.domain.plan.Session;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/**
 * When everything in a session happens if it goes as planned; the one place that reckons times.
 *
 * <p>Every pull, warm-ups included, takes one interval; every install after the first adds a swap, whether or not the part changes; the
 * set-up comes once. A break is kept at its time: set-up and swap stop for it and are taken up again; no pull starts in it, but the
 * cool-down of the pull before runs on through it.
 *
 * @param session name of the session
 * @param hours its working hours, where planned
 * @param events in the order of their start
 */
public record DayClock(String session, Optional<Hours> hours, List<DayEvent> events) {
    private static final double SECONDS_A_MINUTE = 60;
    /** Times closer than this are the same, in seconds. */
    private static final double SAME = 1e-6;

    public DayClock {
        events = List.copyOf(events);
        if (events.isEmpty()) {
            throw new IllegalArgumentException("session " + session + " has no event");
        }
    }

    /** {@return the clock of every session of a sequence} */
    public static List<DayClock> of(Sequence sequence) {
        return sequence.sessions().stream().map(session -> of(session, Pace.of(sequence))).toList();
    }

    /** {@return the clock of a session} */
    public static DayClock of(Session session, Pace pace) {
        Reckoning day = new Reckoning(pace, session.hours(), 0);
        day.work(Kind.SET_UP, session.installs().get(0).label(), pace.setUpS());
        for (int i = 0; i < session.installs().size(); i++) {
            Install install = session.installs().get(i);
            if (i > 0) {
                day.work(Kind.SWAP, install.label(), pace.swapS());
            }
            day.pulls(Kind.WARM_UP, install.label(), install.warmUpPulls());
            day.pulls(Kind.PULL, install.label(), install.countedPulls());
        }
        return new DayClock(session.name(), session.hours(), day.events);
    }

    /**
     * The clock of a session that is under way.
     *
     * @param session its name and hours
     * @param pace of what is still to come
     * @param done what happened, in order, in seconds after midnight
     * @param nowS the time now, likewise; nothing still to come starts before it
     * @param ahead what is still to come, in order, each as long as from its {@code startS} to its {@code endS}
     * @return both, the second re-timed behind the first
     */
    public static DayClock resumed(Session session, Pace pace, List<DayEvent> done, double nowS, List<DayEvent> ahead) {
        Reckoning day = new Reckoning(pace, session.hours(), nowS);
        day.events.addAll(done);
        for (DayEvent event : ahead) {
            if (event.kind().isPull()) {
                day.pull(event.kind(), event.install(), event.number());
            } else {
                day.work(event.kind(), event.install(), event.endS() - event.startS());
            }
        }
        return new DayClock(session.name(), session.hours(), day.events);
    }

    /** Moves through the day, adding what comes next. */
    private static final class Reckoning {
        private final Pace pace;
        private final Deque<Break> ahead;
        private final List<DayEvent> events = new ArrayList<>();
        private final double startS;

        /** Nothing starts before {@code fromS}; breaks that are over by then were kept or were not, and are no more. */
        Reckoning(Pace pace, Optional<Hours> hours, double fromS) {
            this.pace = pace;
            ahead = new ArrayDeque<>(hours.map(Hours::breaks).orElse(List.of()));
            ahead.removeIf(pause -> pause.endS() <= fromS);
            startS = Math.max(startOf(hours), fromS);
        }

        /** When what is done is over: breaks may end before the cool-down that runs on through them. */
        private double clock() {
            double clock = startS;
            for (int i = events.size() - 1; i >= 0; i--) {
                clock = Math.max(clock, events.get(i).endS());
                if (events.get(i).kind() != Kind.BREAK) {
                    return clock;
                }
            }
            return clock;
        }

        void work(Kind kind, String install, double seconds) {
            double left = seconds;
            while (left > SAME) {
                keepBreaks(install);
                double clock = clock();
                double free = ahead.isEmpty() ? left : ahead.getFirst().start().toSecondOfDay() - clock;
                double now = Math.min(left, free);
                events.add(new DayEvent(kind, install, 0, clock, clock + now));
                left -= now;
            }
        }

        void pulls(Kind kind, String install, int pulls) {
            for (int number = 1; number <= pulls; number++) {
                pull(kind, install, number);
            }
        }

        void pull(Kind kind, String install, int number) {
            keepBreaks(install);
            double clock = clock();
            events.add(new DayEvent(kind, install, number, clock, clock + pace.pullIntervalS()));
        }

        private void keepBreaks(String install) {
            while (!ahead.isEmpty() && ahead.getFirst().start().toSecondOfDay() <= clock() + SAME) {
                Break pause = ahead.removeFirst();
                events.add(new DayEvent(Kind.BREAK, install, 0, pause.start().toSecondOfDay(), pause.endS()));
            }
        }
    }

    private static double startOf(Optional<Hours> hours) {
        return hours.map(Hours::start).map(start -> (double) start.toSecondOfDay()).orElse(0.0);
    }

    /** {@return when the session starts} */
    public double startS() {
        return startOf(hours);
    }

    /** {@return when its last pull is done, its interval included} */
    public double finishS() {
        return events.get(events.size() - 1).endS();
    }

    /** {@return from start to finish, breaks included} */
    public double minutes() {
        return (finishS() - startS()) / SECONDS_A_MINUTE;
    }

    /** {@return how far it runs beyond the end of day; 0 where it fits or the end is open} */
    public double lateS() {
        double late = hours.flatMap(Hours::end).map(end -> finishS() - end.toSecondOfDay()).orElse(0.0);
        return late > SAME ? late : 0;
    }

    /** {@return the first start and the last end of the pulls of every install, in the order in which they are run} */
    public List<Span> installs() {
        List<Span> spans = new ArrayList<>();
        for (DayEvent event : events) {
            if (!event.kind().isPull()) {
                continue;
            }
            int last = spans.size() - 1;
            if (last >= 0 && spans.get(last).install().equals(event.install())) {
                spans.set(last, new Span(event.install(), spans.get(last).startS(), event.endS()));
            } else {
                spans.add(new Span(event.install(), event.startS(), event.endS()));
            }
        }
        return spans;
    }

    /**
     * The time of an install on the rig.
     *
     * @param install its label
     * @param startS its first pull starts, warm-ups included
     * @param endS its last pull is done, its interval included
     */
    public record Span(String install, double startS, double endS) {
    }

    /** {@return the breaks that part two pulls of one install, so that the car cools down between them} */
    public List<DayEvent> breaksWithinInstalls() {
        List<DayEvent> within = new ArrayList<>();
        String driven = "";
        for (DayEvent event : events) {
            if (event.kind() == Kind.BREAK && event.install().equals(driven)) {
                within.add(event);
            } else if (event.kind() != Kind.BREAK) {
                driven = event.kind().isPull() ? event.install() : "";
            }
        }
        return within;
    }
}
