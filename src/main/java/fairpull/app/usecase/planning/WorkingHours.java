package fairpull.app.usecase.planning;

import fairpull.app.usecase.UsageException;
import fairpull.app.usecase.typing.Typed;
import fairpull.domain.day.DayClock;
import fairpull.domain.day.Pace;
import fairpull.domain.plan.Break;
import fairpull.domain.plan.Hours;
import fairpull.domain.plan.Sequence;
import fairpull.domain.plan.Session;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;

/** Working hours as people type them, given to the sessions of a sequence. */
final class WorkingHours {
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("H:mm", Locale.ROOT);

    private final NewPlan.HoursTyped typed;

    private WorkingHours(NewPlan.HoursTyped typed) {
        this.typed = typed;
    }

    /** {@return the hours of what was typed; refused where an end or a break has no start of day to belong to} */
    static WorkingHours of(NewPlan.HoursTyped typed) {
        if (typed.start() == null && (typed.end() != null || !typed.breaks().isEmpty())) {
            throw new UsageException(typed.end() != null ? "--end" : "--break",
                    "needs a start of day; give --start too, such as --start 9:00");
        }
        return new WorkingHours(typed);
    }

    /** {@return the sequence with its hours} */
    Sequence given(Sequence sequence) {
        if (typed.start() == null) {
            return sequence;
        }
        List<LocalTime> starts = times("--start", typed.start(), sequence.sessions().size());
        List<LocalTime> ends = typed.end() == null ? List.of() : times("--end", typed.end(), sequence.sessions().size());
        List<Break> breaks = pauses();
        if (starts.size() > 1) {
            refuseOutsideAll(breaks, starts, ends);
        }
        List<Session> sessions = new ArrayList<>();
        for (int i = 0; i < sequence.sessions().size(); i++) {
            int at = i;
            Optional<LocalTime> end = end(ends, i);
            List<Break> own = breaks.stream().filter(pause -> starts.size() == 1 || within(pause, starts.get(at), end)).toList();
            Session session = sequence.sessions().get(i).with(hours(starts.get(i), end, own));
            refuseTooShort(session, Pace.of(sequence));
            sessions.add(session);
        }
        return sequence.withLabelled(sessions);
    }

    /** {@return the hours of any one day; none where no start was typed} */
    Optional<Hours> ofOneDay() {
        return typed.start() == null ? Optional.empty() : Optional.of(hours(time("--start", typed.start()), Optional.empty(), pauses()));
    }

    private List<Break> pauses() {
        return typed.breaks().stream().map(text -> pause("--break", text)).sorted(Comparator.comparing(Break::start)).toList();
    }

    /** Whether a break begins within the hours of a session. */
    private static boolean within(Break pause, LocalTime start, Optional<LocalTime> end) {
        return !pause.start().isBefore(start) && end.map(pause.start()::isBefore).orElse(true);
    }

    private static Optional<LocalTime> end(List<LocalTime> ends, int session) {
        return ends.isEmpty() ? Optional.empty() : Optional.of(ends.get(session));
    }

    /** Of several sessions each keeps the breaks that begin within its own hours; a break that begins in none is a slip. */
    private static void refuseOutsideAll(List<Break> breaks, List<LocalTime> starts, List<LocalTime> ends) {
        for (Break pause : breaks) {
            if (IntStream.range(0, starts.size()).noneMatch(i -> within(pause, starts.get(i), end(ends, i)))) {
                throw new UsageException("--break", "the break at " + pause.start()
                        + " begins before every session does, or after its end; give a time within the hours of a session");
            }
        }
    }

    private static Hours hours(LocalTime start, Optional<LocalTime> end, List<Break> breaks) {
        try {
            return new Hours(start, end, breaks);
        } catch (IllegalArgumentException contradiction) {
            throw new UsageException(breaks.isEmpty() ? "--end" : "--break", contradiction.getMessage());
        }
    }

    private static void refuseTooShort(Session session, Pace pace) {
        DayClock first = DayClock.of(session.with(session.installs().subList(0, 1)), pace);
        if (first.lateS() > 0) {
            throw new UsageException("--end", "a day from " + first.hours().orElseThrow().start() + " to "
                    + first.hours().flatMap(Hours::end).orElseThrow() + " is shorter than one install, which takes "
                    + Math.round(first.minutes()) + " min with set-up, warm-ups and breaks; give more time, or fewer --pulls");
        }
    }

    private static List<LocalTime> times(String option, String text, int sessions) {
        String[] parts = text.split("\\|", -1);
        if (parts.length != 1 && parts.length != sessions) {
            String each = sessions == 1 ? "" : " for all sessions or " + sessions + " parted by |";
            throw new UsageException(option, "expected one time" + each + ", found “" + text + "”");
        }
        List<LocalTime> times = new ArrayList<>();
        for (int i = 0; i < sessions; i++) {
            times.add(time(option, parts[parts.length == 1 ? 0 : i]));
        }
        return times;
    }

    static LocalTime time(String option, String text) {
        try {
            return LocalTime.parse(text.strip(), TIME);
        } catch (DateTimeParseException noTime) {
            throw new UsageException(option, "expected a time of day such as 9:00, found “" + text + "”");
        }
    }

    static Break pause(String option, String text) {
        String[] parts = text.split("\\+", -1);
        if (parts.length != 2) {
            throw new UsageException(option, "expected a time of day and minutes such as 12:30+45, found “" + text + "”");
        }
        double lengthS = Typed.minutesAsSeconds(option, parts[1].strip());
        if (lengthS == 0) {
            throw new UsageException(option, "must last longer than 0 minutes, found “" + text + "”");
        }
        return new Break(time(option, parts[0]), lengthS);
    }
}
