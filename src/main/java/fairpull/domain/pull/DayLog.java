package fairpull.domain.pull;

import fairpull.domain.plan.Condition;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * A log read from first to last: what stands at its end. Later entries replace earlier ones about the same thing; what was taken back is
 * passed over, but stays data that somebody has seen.
 *
 * @param records the log
 */
public record DayLog(List<LogRecord> records) {
    public DayLog {
        records = List.copyOf(records);
    }

    /** {@return the records that were not taken back, in order} */
    public List<LogRecord> standing() {
        Set<Integer> gone = new HashSet<>();
        for (LogRecord record : records) {
            if (record.entry() instanceof LogEntry.TakenBack back) {
                gone.add(back.number());
            }
        }
        return gone.isEmpty() ? records : records.stream().filter(record -> !gone.contains(record.number())).toList();
    }

    /**
     * {@return the last act of the day that stands, which is what “undo” would take back: one entry, or those that one act wrote together;
     * empty where there is none}
     */
    public List<LogRecord> lastAct() {
        List<LogRecord> day = standing().stream().filter(record -> record.entry().isOfTheDay()).toList();
        return day.isEmpty() ? List.of() : actOf(day, day.size() - 1);
    }

    /** {@return the standing entries of the day that were written together with one of them; empty where none has that number} */
    public List<LogRecord> actOf(int number) {
        List<LogRecord> day = standing().stream().filter(record -> record.entry().isOfTheDay()).toList();
        return IntStream.range(0, day.size()).filter(place -> day.get(place).number() == number).mapToObj(place -> actOf(day, place))
                .findFirst().orElse(List.of());
    }

    private static List<LogRecord> actOf(List<LogRecord> day, int place) {
        int from = place;
        while (from > 0 && isOneAct(day.get(from - 1), day.get(from))) {
            from--;
        }
        int to = place + 1;
        while (to < day.size() && isOneAct(day.get(to - 1), day.get(to))) {
            to++;
        }
        return day.subList(from, to);
    }

    /** A pull that came in and what was read from its first row, or several gates overridden with one reason. */
    private static boolean isOneAct(LogRecord earlier, LogRecord later) {
        if (!earlier.at().equals(later.at()) || earlier.number() + 1 != later.number()) {
            return false;
        }
        return earlier.entry() instanceof LogEntry.PullTaken taken && later.entry() instanceof LogEntry.ConditionsNoted noted
                ? taken.pull().equals(noted.pull()) && noted.startedAt().isEmpty()
                : earlier.entry() instanceof LogEntry.GateOverridden one && later.entry() instanceof LogEntry.GateOverridden other
                        && one.pull().equals(other.pull());
    }

    /** {@return the log as it would be once some of its records were taken back} */
    public DayLog takingBack(List<LogRecord> act) {
        List<LogRecord> more = new ArrayList<>(records);
        act.forEach(record -> more.add(new LogRecord(more.size() + 1, record.at(), "", new LogEntry.TakenBack(record.number()), "")));
        return new DayLog(more);
    }

    /** {@return the records that were taken back, in order} */
    public List<LogRecord> takenBack() {
        List<LogRecord> standing = standing();
        return records.stream().filter(record -> !standing.contains(record)).toList();
    }

    /** {@return the pulls that were run, with the last start that the day says of each} */
    public Map<PullId, LogEntry.PullRun> run() {
        return latest(LogEntry.PullRun.class, LogEntry.PullRun::pull);
    }

    /** {@return the pulls that came in, in the order of the log} */
    public Map<PullId, LogEntry.PullTaken> pulls() {
        return latest(LogEntry.PullTaken.class, LogEntry.PullTaken::pull);
    }

    /** {@return the names of all exports that the log ever took in, also of those taken back} */
    public List<String> filesNamed() {
        return records.stream().filter(record -> record.entry() instanceof LogEntry.PullTaken)
                .map(record -> ((LogEntry.PullTaken) record.entry()).file()).toList();
    }

    /** {@return the names of the exports of pulls that were taken back} */
    public List<String> filesTakenBack() {
        return takenBack().stream().filter(record -> record.entry() instanceof LogEntry.PullTaken)
                .map(record -> ((LogEntry.PullTaken) record.entry()).file()).toList();
    }

    /** {@return every time that the export of a pull was read anew, in order} */
    public List<LogEntry.PullTaken> readAnew() {
        return entries(LogEntry.PullTaken.class).stream().filter(taken -> taken.readAnew().isPresent()).toList();
    }

    /** {@return the pulls that were aborted and did not come in after all} */
    public Map<PullId, LogEntry.PullAborted> aborted() {
        Map<PullId, LogEntry.PullAborted> aborted = latest(LogEntry.PullAborted.class, LogEntry.PullAborted::pull);
        aborted.keySet().removeAll(pulls().keySet());
        aborted.keySet().removeIf(this::wasRunAfterAbort);
        return aborted;
    }

    private boolean wasRunAfterAbort(PullId pull) {
        boolean runLast = false;
        for (LogRecord record : standing()) {
            if (record.entry() instanceof LogEntry.PullRun run && run.pull().equals(pull)) {
                runLast = true;
            } else if (record.entry() instanceof LogEntry.PullAborted stopped && stopped.pull().equals(pull)) {
                runLast = false;
            }
        }
        return runLast;
    }

    /** {@return the pulls that were aborted and came in after all: each was run at least twice} */
    public Map<PullId, LogEntry.PullAborted> repeated() {
        Map<PullId, LogEntry.PullAborted> repeated = latest(LogEntry.PullAborted.class, LogEntry.PullAborted::pull);
        repeated.keySet().retainAll(pulls().keySet());
        return repeated;
    }

    /** {@return the exclusions in force} */
    public Map<PullId, LogEntry.Excluded> excluded() {
        Map<PullId, LogEntry.Excluded> excluded = new LinkedHashMap<>();
        for (LogRecord record : standing()) {
            if (record.entry() instanceof LogEntry.Excluded exclusion) {
                excluded.put(exclusion.pull(), exclusion);
            } else if (record.entry() instanceof LogEntry.Readmitted readmitted) {
                excluded.remove(readmitted.pull());
            } else if (record.entry() instanceof LogEntry.PullTaken taken && taken.readAnew().isEmpty()) {
                // it came in again after it was taken back: what was left out was another export
                excluded.remove(taken.pull());
            }
        }
        return excluded;
    }

    /**
     * {@return the reason for going on, by pull and by the gate that did not hold; the last one that was given since the pull was last
     * aborted}
     */
    public Map<PullId, Map<Condition, String>> gatesOverridden() {
        Map<PullId, Map<Condition, String>> reasons = new LinkedHashMap<>();
        for (LogRecord record : standing()) {
            if (record.entry() instanceof LogEntry.GateOverridden over) {
                reasons.computeIfAbsent(over.pull(), pull -> new EnumMap<>(Condition.class)).put(over.condition(), over.reason());
            } else if (record.entry() instanceof LogEntry.PullAborted stopped) {
                reasons.remove(stopped.pull());
            }
        }
        return reasons;
    }

    /** {@return the readings noted at a pull since it was last aborted, in SI} */
    public Map<Condition, Double> conditionsAt(PullId pull) {
        Map<Condition, Double> readings = new EnumMap<>(Condition.class);
        for (LogRecord record : standing()) {
            if (record.entry() instanceof LogEntry.ConditionsNoted noted && noted.pull().equals(pull)) {
                readings.putAll(noted.readingsSi());
            } else if (record.entry() instanceof LogEntry.PullAborted stopped && stopped.pull().equals(pull)) {
                readings.clear();
            }
        }
        return readings;
    }

    /** {@return when a pull started, as far as anything in the log says so; a note outranks the import} */
    public Optional<OffsetDateTime> startOf(PullId pull) {
        Optional<OffsetDateTime> noted = entries(LogEntry.ConditionsNoted.class).stream()
                .filter(note -> note.pull().equals(pull))
                .flatMap(note -> note.startedAt().stream())
                .reduce((earlier, later) -> later);
        return noted.or(() -> Optional.ofNullable(pulls().get(pull)).flatMap(LogEntry.PullTaken::startedAt))
                .or(() -> Optional.ofNullable(run().get(pull)).map(LogEntry.PullRun::startedAt));
    }

    /** {@return that the day was ended before all of its pulls were run} */
    public Optional<LogEntry.DayEnded> ended() {
        return entries(LogEntry.DayEnded.class).stream().reduce((earlier, later) -> later);
    }

    /** {@return every seal the log names, in order} */
    public List<LogEntry.Sealed> seals() {
        return entries(LogEntry.Sealed.class);
    }

    /** {@return every look the log names, in order} */
    public List<LogEntry.Look> looks() {
        return entries(LogEntry.Look.class);
    }

    /** {@return whether a look after so many installs is in the log, and no counted pull came in since: other data were not seen} */
    public boolean isLookedAfter(int installs) {
        boolean isLooked = false;
        for (LogRecord record : standing()) {
            if (record.entry() instanceof LogEntry.Look look) {
                isLooked |= look.afterInstalls() == installs;
            } else if (record.entry() instanceof LogEntry.PullTaken taken && !taken.pull().warmUp()) {
                isLooked = false;
            }
        }
        return isLooked;
    }

    /** {@return the SHA-256 that the plan must have by this log; empty where it was never sealed} */
    public Optional<String> planSha256() {
        String expected = null;
        for (LogRecord record : records) {
            if (record.entry() instanceof LogEntry.Sealed sealed) {
                expected = sealed.planSha256();
            } else if (record.entry() instanceof LogEntry.Amended amended) {
                expected = amended.planSha256After();
            }
        }
        return Optional.ofNullable(expected);
    }

    /** {@return the records of amendments, in order} */
    public List<LogRecord> amendments() {
        return records.stream().filter(record -> record.entry() instanceof LogEntry.Amended).toList();
    }

    /** {@return the number of the first entry that brought data; empty before there are any} */
    public Optional<Integer> firstData() {
        return records.stream().filter(record -> record.entry() instanceof LogEntry.PullTaken).map(LogRecord::number).findFirst();
    }

    private <E extends LogEntry> List<E> entries(Class<E> kind) {
        List<E> found = new ArrayList<>();
        for (LogRecord record : standing()) {
            if (kind.isInstance(record.entry())) {
                found.add(kind.cast(record.entry()));
            }
        }
        return found;
    }

    private <E extends LogEntry> Map<PullId, E> latest(Class<E> kind, Function<E, PullId> key) {
        Map<PullId, E> latest = new LinkedHashMap<>();
        entries(kind).forEach(entry -> latest.put(key.apply(entry), entry));
        return latest;
    }
}
