package fairpull.engine.running;

import fairpull.domain.plan.Install;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Session;
import fairpull.domain.pull.DayLog;
import fairpull.domain.pull.LogEntry;
import fairpull.domain.pull.LogEntry.Swap.Phase;
import fairpull.domain.pull.LogRecord;
import fairpull.domain.pull.PlannedClock;
import fairpull.domain.pull.PullId;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** How far a day has come, by its log: the furthest install that anything was done in, and the pulls that were driven. */
final class DayStanding {
    /** A car that stood so long is as cold as one that never ran: common practice, no source. */
    static final Duration LEFT = Duration.ofHours(8);

    /** Clocks that are set by a net step by so much. */
    private static final Duration TICK = Duration.ofSeconds(30);

    private final Plan plan;
    private final DayLog log;
    private final List<Install> installs;
    private final Map<PullId, OffsetDateTime> driven = new LinkedHashMap<>();
    private final Map<PullId, OffsetDateTime> aborted = new LinkedHashMap<>();
    private final Map<String, Map<Phase, OffsetDateTime>> swaps = new HashMap<>();
    private final int reached;

    DayStanding(Plan plan, DayLog log) {
        this.plan = plan;
        this.log = log;
        this.installs = plan.sequence().installs().toList();
        Set<PullId> planned = new HashSet<>(PlannedClock.of(plan.sequence()).minutes().keySet());
        log.standing().forEach(this::note);
        driven.keySet().retainAll(planned);
        driven.replaceAll((pull, written) -> log.startOf(pull).orElse(written));
        reached = furthest();
    }

    private void note(LogRecord record) {
        if (record.entry() instanceof LogEntry.PullRun run) {
            driven.putIfAbsent(run.pull(), run.startedAt());
            aborted.remove(run.pull());
        } else if (record.entry() instanceof LogEntry.PullTaken taken) {
            driven.putIfAbsent(taken.pull(), record.at());
            aborted.remove(taken.pull());
        } else if (record.entry() instanceof LogEntry.ConditionsNoted noted && noted.pull().warmUp() && noted.startedAt().isPresent()) {
            driven.putIfAbsent(noted.pull(), noted.startedAt().get());
        } else if (record.entry() instanceof LogEntry.PullAborted stopped) {
            aborted.put(stopped.pull(), record.at());
        } else if (record.entry() instanceof LogEntry.Swap swap) {
            swaps.computeIfAbsent(swap.install(), install -> new HashMap<>()).put(swap.phase(), swap.time());
        }
    }

    private int furthest() {
        int furthest = 0;
        for (int place = 0; place < installs.size(); place++) {
            String label = installs.get(place).label();
            boolean touched = swaps.containsKey(label) || driven.keySet().stream().anyMatch(pull -> pull.install().equals(label))
                    || aborted.keySet().stream().anyMatch(pull -> pull.install().equals(label));
            furthest = touched ? place : furthest;
        }
        return furthest;
    }

    Plan plan() {
        return plan;
    }

    DayLog log() {
        return log;
    }

    List<Install> installs() {
        return installs;
    }

    /** {@return the place of the install that the day is in} */
    int reached() {
        return reached;
    }

    Install current() {
        return installs.get(reached);
    }

    /** {@return the start of every pull that was driven to its end} */
    Map<PullId, OffsetDateTime> driven() {
        return driven;
    }

    boolean isAborted(PullId pull) {
        return aborted.containsKey(pull);
    }

    Optional<OffsetDateTime> swap(String install, Phase phase) {
        return Optional.ofNullable(swaps.getOrDefault(install, Map.of()).get(phase));
    }

    /** {@return whether the part is being changed: a swap was started, and neither finished nor followed by a pull} */
    boolean isSwapping() {
        String label = current().label();
        return swap(label, Phase.STARTED).isPresent() && swap(label, Phase.FINISHED).isEmpty()
                && driven.keySet().stream().noneMatch(pull -> pull.install().equals(label));
    }

    /** {@return the next pull of the install that the day is in; warm-ups are over once a counted pull was driven} */
    Optional<PullId> nextPull() {
        boolean counting = driven.keySet().stream().anyMatch(pull -> pull.install().equals(current().label()) && !pull.warmUp());
        return PlannedClock.pullsOf(current()).stream().filter(pull -> !driven.containsKey(pull))
                .filter(pull -> !(pull.warmUp() && counting)).findFirst();
    }

    /** {@return the first pull of the install that follows; empty in the last one} */
    Optional<PullId> firstAhead() {
        return reached + 1 < installs.size() ? PlannedClock.pullsOf(installs.get(reached + 1)).stream().findFirst() : Optional.empty();
    }

    /** {@return when the car was last driven in the session, also for a pull that was stopped} */
    Optional<OffsetDateTime> lastDriven(Session session) {
        Set<String> labels = new HashSet<>(session.installs().stream().map(Install::label).toList());
        Optional<OffsetDateTime> latest = Optional.empty();
        for (Map<PullId, OffsetDateTime> some : List.of(driven, aborted)) {
            for (Map.Entry<PullId, OffsetDateTime> one : some.entrySet()) {
                boolean later = labels.contains(one.getKey().install()) && (latest.isEmpty() || one.getValue().isAfter(latest.get()));
                latest = later ? Optional.of(one.getValue()) : latest;
            }
        }
        return latest;
    }

    /** {@return whether the car was last driven in the future: the clock was set back since} */
    boolean isAhead(OffsetDateTime now) {
        return lastDriven(sessionOf(current())).filter(last -> last.isAfter(now.plus(TICK))).isPresent();
    }

    /** {@return since when the car has stood, where that is so long that the day was left: {@link #LEFT} or more} */
    Optional<OffsetDateTime> leftAt(OffsetDateTime now) {
        return lastDriven(sessionOf(current())).filter(last -> Duration.between(last, now).compareTo(LEFT) >= 0);
    }

    Session sessionOf(Install install) {
        return plan.sequence().sessions().stream().filter(session -> session.installs().contains(install)).findFirst().orElseThrow();
    }

    boolean isFirstOfSession(Install install) {
        return sessionOf(install).installs().get(0).equals(install);
    }
}
