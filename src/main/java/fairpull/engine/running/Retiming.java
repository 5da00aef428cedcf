package fairpull.engine.running;

import fairpull.domain.day.DayClock;
import fairpull.domain.day.DayEvent;
import fairpull.domain.day.DayEvent.Kind;
import fairpull.domain.day.Pace;
import fairpull.domain.plan.Hours;
import fairpull.domain.plan.Install;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Session;
import fairpull.domain.pull.DayLog;
import fairpull.domain.pull.LogEntry.Swap.Phase;
import fairpull.domain.pull.PlannedClock;
import fairpull.domain.pull.PullId;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The clock of a day under way: what happened when it happened, the rest behind it at the planned pace. Where the car was left for hours
 * the rest stands behind what happened, as nobody knows when it goes on.
 */
public final class Retiming {
    private static final int SUMMER_TIME_S = 3600;

    private final DayStanding day;
    private final OffsetDateTime now;
    private final Set<PullId> without;

    private Retiming(DayStanding day, OffsetDateTime now, Set<PullId> without) {
        this.day = day;
        this.now = now;
        this.without = without;
    }

    /** {@return the clock of every session: of those that are over as they were, of those to come as planned} */
    public static List<DayClock> of(Plan plan, DayLog log, OffsetDateTime now) {
        return of(new DayStanding(plan, log), now, Set.of());
    }

    /**
     * {@return the time now on the clock of the session that the day is in, in seconds after the midnight before its first pull, beyond the
     * next midnight counted on; where the car was left for hours, when it was}
     */
    public static double nowOnClock(Plan plan, DayLog log, OffsetDateTime now) {
        DayStanding day = new DayStanding(plan, log);
        Retiming retiming = new Retiming(day, now, Set.of());
        OffsetDateTime shown = day.leftAt(now).orElse(now);
        Set<String> labels = labels(day.sessionOf(day.current()));
        return retiming.seconds(shown, retiming.date(retiming.driven(labels).stream().map(Map.Entry::getValue).findFirst().orElse(shown)));
    }

    /** The same without some pulls that are still to come; an install that loses all of them loses its swap as well, a session its day. */
    static List<DayClock> of(DayStanding day, OffsetDateTime now, Set<PullId> without) {
        return new Retiming(day, now, without).days();
    }

    private List<DayClock> days() {
        Pace pace = Pace.of(day.plan().sequence());
        return day.plan().sequence().sessions().stream().flatMap(session -> clock(session, pace).stream()).toList();
    }

    /** A session that was not begun, from its set-up on; empty where all of its pulls are dropped. */
    private Optional<DayClock> toCome(Session session, Pace pace) {
        if (without.isEmpty()) {
            return Optional.of(DayClock.of(session, pace));
        }
        List<DayEvent> ahead = ahead(session, pace);
        return ahead.isEmpty() ? Optional.empty() : Optional.of(DayClock.resumed(session, pace, List.of(), 0, ahead));
    }

    private Optional<DayClock> clock(Session session, Pace pace) {
        List<Map.Entry<PullId, OffsetDateTime>> driven = driven(labels(session));
        Optional<OffsetDateTime> last = day.lastDriven(session);
        if (last.isEmpty()) {
            return toCome(session, pace);
        }
        LocalDate date = date(driven.isEmpty() ? last.get() : driven.get(0).getValue());
        List<DayEvent> done = done(driven, date, pace);
        done.addAll(swaps(session, done, date, pace));
        done.sort(Comparator.comparingDouble(DayEvent::startS));
        double after = seconds(last.get(), date) + pace.pullIntervalS();
        double free = day.leftAt(now).isPresent() ? after : Math.max(seconds(now, date), after);
        return Optional.of(DayClock.resumed(withHours(session, done, free), pace, done, free, ahead(session, pace)));
    }

    private static Set<String> labels(Session session) {
        return new HashSet<>(session.installs().stream().map(Install::label).toList());
    }

    private List<Map.Entry<PullId, OffsetDateTime>> driven(Set<String> labels) {
        return day.driven().entrySet().stream().filter(pull -> labels.contains(pull.getKey().install()))
                .sorted(Map.Entry.comparingByValue()).toList();
    }

    private List<DayEvent> done(List<Map.Entry<PullId, OffsetDateTime>> driven, LocalDate date, Pace pace) {
        List<DayEvent> done = new ArrayList<>();
        for (int place = 0; place < driven.size(); place++) {
            PullId pull = driven.get(place).getKey();
            double start = seconds(driven.get(place).getValue(), date);
            double next = place + 1 < driven.size() ? seconds(driven.get(place + 1).getValue(), date) : Double.POSITIVE_INFINITY;
            done.add(new DayEvent(pull.warmUp() ? Kind.WARM_UP : Kind.PULL, pull.install(), pull.number(), start,
                    Math.min(next, start + pace.pullIntervalS())));
        }
        return done;
    }

    private List<DayEvent> swaps(Session session, List<DayEvent> pulls, LocalDate date, Pace pace) {
        List<DayEvent> swaps = new ArrayList<>();
        for (Install install : session.installs()) {
            Optional<OffsetDateTime> started = day.swap(install.label(), Phase.STARTED);
            if (started.isEmpty()) {
                continue;
            }
            double start = seconds(started.get(), date);
            double end = day.swap(install.label(), Phase.FINISHED).map(time -> seconds(time, date))
                    .orElseGet(() -> pulls.stream().filter(pull -> pull.install().equals(install.label())).mapToDouble(DayEvent::startS)
                            .min().orElse(Math.max(seconds(now, date), start + pace.swapS())));
            swaps.add(new DayEvent(Kind.SWAP, install.label(), 0, start, Math.max(start, end)));
        }
        return swaps;
    }

    private List<DayEvent> ahead(Session session, Pace pace) {
        List<DayEvent> ahead = new ArrayList<>();
        for (Install install : session.installs()) {
            int place = day.installs().indexOf(install);
            if (place < day.reached()) {
                continue;
            }
            List<PullId> pulls = PlannedClock.pullsOf(install).stream().filter(pull -> !day.driven().containsKey(pull))
                    .filter(pull -> place > day.reached() || !isPassed(pull)).filter(pull -> !without.contains(pull)).toList();
            boolean isBegun = place == day.reached() && day.lastDriven(session).isPresent();
            if (!isBegun && pulls.stream().allMatch(PullId::warmUp)) {
                continue;
            }
            if (day.isFirstOfSession(install) && day.lastDriven(session).isEmpty()) {
                ahead.add(new DayEvent(Kind.SET_UP, install.label(), 0, 0, pace.setUpS()));
            } else if (place > day.reached()) {
                ahead.add(new DayEvent(Kind.SWAP, install.label(), 0, 0, pace.swapS()));
            }
            pulls.forEach(pull -> ahead.add(new DayEvent(pull.warmUp() ? Kind.WARM_UP : Kind.PULL, pull.install(), pull.number(), 0,
                    pace.pullIntervalS())));
        }
        return ahead;
    }

    /** A warm-up that was left out before the counted pulls began is not caught up. */
    private boolean isPassed(PullId pull) {
        return pull.warmUp() && day.nextPull().map(next -> !next.warmUp() || next.number() > pull.number()).orElse(true);
    }

    private static Session withHours(Session session, List<DayEvent> done, double free) {
        double first = done.isEmpty() ? free : done.get(0).startS();
        LocalTime start = LocalTime.ofSecondOfDay((long) Math.max(0, Math.min(24 * 3600 - 1.0, Math.floor(first))));
        Optional<Hours> planned = session.hours();
        return planned.isEmpty() ? session.with(new Hours(start, Optional.empty(), List.of()))
                : planned.get().start().isAfter(start) ? session.with(planned.get().startingAt(start)) : session;
    }

    private double seconds(OffsetDateTime time, LocalDate date) {
        return Duration.between(date.atStartOfDay(), here(time).toLocalDateTime()).toMillis() / 1000.0;
    }

    /** The date that was written on the day: clocks may have been changed for summer time since. */
    private LocalDate date(OffsetDateTime first) {
        boolean isOfThisZone = Math.abs(first.getOffset().getTotalSeconds() - now.getOffset().getTotalSeconds()) <= SUMMER_TIME_S;
        return (isOfThisZone ? first : here(first)).toLocalDate();
    }

    /** Times may have been noted in another zone. */
    private OffsetDateTime here(OffsetDateTime time) {
        return time.withOffsetSameInstant(now.getOffset());
    }
}
