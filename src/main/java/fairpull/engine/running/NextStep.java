package fairpull.engine.running;

import fairpull.domain.plan.Break;
import fairpull.domain.plan.Hours;
import fairpull.domain.plan.Install;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Session;
import fairpull.domain.pull.DayLog;
import fairpull.domain.pull.LogEntry.Swap.Phase;
import fairpull.domain.pull.PlannedClock;
import fairpull.domain.pull.PullId;
import fairpull.domain.running.NextAction;
import fairpull.domain.running.NextAction.Kind;
import java.time.Duration;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What is to be done next, and when. */
public final class NextStep {
    /** A pull starts within so much of its time: common practice, no source. */
    private static final double TOLERANCE_S = 60;
    /** With short intervals the tolerance is this share of them. */
    private static final double SHARE_OF_INTERVAL = 0.25;

    private final DayStanding day;
    private final OffsetDateTime now;

    private NextStep(DayStanding day, OffsetDateTime now) {
        this.day = day;
        this.now = now;
    }

    /**
     * What is next on a day.
     *
     * <p>The day is in the furthest install that anything was done in, so that pulls are dropped by starting the swap early. A pull that
     * was aborted is next again. A pull is due one interval after the car was last driven, ± 1 min or a quarter of the interval where that
     * is less; the first pull after a swap, or after the car was left for hours, may start at any time. In a break the pull waits for its
     * end.
     *
     * @param plan the plan in force
     * @param log of the test
     * @param now the time
     * @return the action
     */
    public static NextAction of(Plan plan, DayLog log, OffsetDateTime now) {
        return new NextStep(new DayStanding(plan, log), now).find();
    }

    /** {@return whether the day's last act lies in the future: the clock of this computer was set back since} */
    public static boolean isAhead(Plan plan, DayLog log, OffsetDateTime now) {
        return new DayStanding(plan, log).isAhead(now);
    }

    /** {@return since when the car has stood, where it was left for hours; empty where the day goes on} */
    public static Optional<OffsetDateTime> leftAt(Plan plan, DayLog log, OffsetDateTime now) {
        return new DayStanding(plan, log).leftAt(now);
    }

    /** {@return the pulls that were driven to their end} */
    public static Set<PullId> driven(Plan plan, DayLog log) {
        return Set.copyOf(new DayStanding(plan, log).driven().keySet());
    }

    /** {@return the pulls that were never driven to their end, and that the day has gone past} */
    public static Set<PullId> passed(Plan plan, DayLog log) {
        DayStanding day = new DayStanding(plan, log);
        List<PullId> left = PlannedClock.of(plan.sequence()).minutes().keySet().stream().filter(pull -> !day.driven().containsKey(pull))
                .toList();
        Optional<PullId> next = isDone(plan, log) ? Optional.empty() : day.nextPull().or(() -> day.firstAhead());
        return Set.copyOf(next.map(first -> left.subList(0, left.indexOf(first))).orElse(left));
    }

    /** {@return the place of the session that the day is in} */
    public static int session(Plan plan, DayLog log) {
        DayStanding day = new DayStanding(plan, log);
        return plan.sequence().sessions().indexOf(day.sessionOf(day.current()));
    }

    /** {@return whether every install was run: nothing is next} */
    public static boolean isDone(Plan plan, DayLog log) {
        DayStanding day = new DayStanding(plan, log);
        return log.ended().isPresent() || !day.isSwapping() && day.nextPull().isEmpty()
                && new NextStep(day, OffsetDateTime.MIN).betweenInstalls().kind() == Kind.DONE;
    }

    private NextAction find() {
        if (day.log().ended().isPresent()) {
            return NextAction.atAnyTime(Kind.DONE, "");
        }
        Install install = day.current();
        if (day.isSwapping()) {
            OffsetDateTime started = day.swap(install.label(), Phase.STARTED).orElseThrow();
            NextAction swapping = NextAction.atAnyTime(Kind.SWAP_UNDER_WAY, install.label());
            return day.leftAt(now).isPresent() ? swapping : swapping.dueAt(started.plus(duration(day.plan().sequence().swapS())));
        }
        return day.nextPull().map(pull -> pull(pull, install)).orElseGet(this::betweenInstalls);
    }

    private NextAction betweenInstalls() {
        int done = day.reached() + 1;
        if (done == day.installs().size()) {
            // the last look is the finding itself, and needs no act of its own
            return NextAction.atAnyTime(Kind.DONE, "");
        }
        boolean lookPlanned = day.plan().looks().map(looks -> looks.afterInstalls().contains(done)).orElse(false);
        if (lookPlanned && !day.log().isLookedAfter(done)) {
            return NextAction.atAnyTime(Kind.LOOK, day.current().label());
        }
        Install next = day.installs().get(done);
        return NextAction.atAnyTime(day.isFirstOfSession(next) ? Kind.SET_UP : Kind.SWAP, next.label());
    }

    private NextAction pull(PullId pull, Install install) {
        Session session = day.sessionOf(install);
        Optional<OffsetDateTime> last = day.lastDriven(session);
        boolean afterSwap = day.driven().keySet().stream().noneMatch(one -> one.install().equals(install.label()))
                && !day.isAborted(pull) && day.swap(install.label(), Phase.FINISHED).isPresent();
        Optional<OffsetDateTime> due = afterSwap || day.leftAt(now).isPresent() || day.isAhead(now) ? Optional.empty()
                : last.map(time -> time.withOffsetSameInstant(now.getOffset()).plus(duration(day.plan().sequence().pullIntervalS())));
        Optional<OffsetDateTime> pause = breakEnd(session).filter(end -> due.isEmpty() || end.isAfter(due.get()));
        if (pause.isPresent()) {
            return new NextAction(Kind.BREAK, install.label(), Optional.of(pull), day.isAborted(pull), pause, pause, Optional.empty());
        }
        Duration tolerance = duration(Math.min(TOLERANCE_S, SHARE_OF_INTERVAL * day.plan().sequence().pullIntervalS()));
        return new NextAction(pull.warmUp() ? Kind.WARM_UP : Kind.PULL, install.label(), Optional.of(pull), day.isAborted(pull), due,
                due.map(time -> time.minus(tolerance)), due.map(time -> time.plus(tolerance)));
    }

    private Optional<OffsetDateTime> breakEnd(Session session) {
        LocalTime time = now.toLocalTime();
        return session.hours().map(Hours::breaks).flatMap(breaks -> breaks.stream().filter(pause -> holds(pause, time)).findFirst())
                .map(pause -> now.toLocalDate().atStartOfDay().atOffset(now.getOffset()).plus(duration(pause.endS())));
    }

    private static boolean holds(Break pause, LocalTime time) {
        return pause.start().toSecondOfDay() <= time.toSecondOfDay() && time.toSecondOfDay() < pause.endS();
    }

    private static Duration duration(double seconds) {
        return Duration.ofMillis(Math.round(seconds * 1000));
    }
}
