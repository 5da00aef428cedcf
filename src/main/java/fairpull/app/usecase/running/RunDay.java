package fairpull.app.usecase.running;

import fairpull.app.usecase.keeping.Planned;
import fairpull.app.usecase.pulls.NotePull;
import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.day.DayClock;
import fairpull.domain.plan.Condition;
import fairpull.domain.plan.Plan;
import fairpull.domain.pull.DayLog;
import fairpull.domain.pull.LogEntry;
import fairpull.domain.pull.LogEntry.Swap.Phase;
import fairpull.domain.pull.LogRecord;
import fairpull.domain.pull.PullId;
import fairpull.domain.running.GateNow;
import fairpull.domain.running.NextAction;
import fairpull.engine.running.CutSearch;
import fairpull.engine.running.GatesNow;
import fairpull.engine.running.NextStep;
import fairpull.engine.running.Retiming;
import fairpull.io.folder.TestFolder;
import fairpull.report.wording.EntryWords;
import fairpull.report.wording.RunWords;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A sealed test while its day is run. Everything done is in the log when the call returns, so that after a kill the day goes on where it
 * was.
 *
 * @param folder the test
 * @param plan the plan in force
 * @param log the log as it stands
 */
public record RunDay(Path folder, Plan plan, DayLog log) {
    private static final Duration DAY_OF_WORK = Duration.ofHours(16);

    /** {@return the day of the test in a folder} */
    public static RunDay of(Path folder) throws IOException {
        TestFolder.Content content = TestFolder.open(folder).read();
        return new RunDay(folder, content.plan(), content.log());
    }

    /** {@return what is to be done next} */
    public NextAction next(OffsetDateTime now) {
        return NextStep.of(plan, log, now);
    }

    /** {@return the gates before the next pull; none where no pull is next} */
    public List<GateNow> gates(NextAction next) {
        return next.pull().map(pull -> GatesNow.of(plan, log, pull)).orElse(List.of());
    }

    /** {@return the clock of every session, re-timed from what really happened} */
    public List<DayClock> clocks(OffsetDateTime now) {
        return Retiming.of(plan, log, now);
    }

    /** {@return the time now on the clock of the session that the day is in, in seconds; beyond midnight it counts on} */
    public double nowOnClock(OffsetDateTime now) {
        return Retiming.nowOnClock(plan, log, now);
    }

    /** {@return since when the car has stood, where it was left for hours} */
    public Optional<OffsetDateTime> leftAt(OffsetDateTime now) {
        return NextStep.leftAt(plan, log, now);
    }

    /**
     * {@return a time as the day tells it: at the offset from UTC at which its last act was written down, wherever the computer is by now}
     * A day that was left for longer than a day of work goes on by the clock of the computer.
     */
    public OffsetDateTime onItsClock(OffsetDateTime now) {
        return log.standing().stream().filter(record -> record.entry() instanceof LogEntry.PullRun
                || record.entry() instanceof LogEntry.Swap || record.entry() instanceof LogEntry.DayEnded).map(LogRecord::at)
                .reduce((earlier, later) -> later)
                .filter(last -> NextStep.isDone(plan, log) || Duration.between(last, now).compareTo(DAY_OF_WORK) < 0)
                .map(last -> now.withOffsetSameInstant(last.getOffset())).orElse(now);
    }

    /** {@return whether the last act of the day lies in the future: the clock was set back} */
    public boolean isAhead(OffsetDateTime now) {
        return NextStep.isAhead(plan, log, now);
    }

    /** {@return what no longer fits and what to drop, in words; empty where the day fits} */
    public Optional<String> cut(OffsetDateTime now) {
        return CutSearch.of(plan, log, now).map(cut -> RunWords.cut(cut, plan.question().deciding().unit().symbol()));
    }

    /** {@return the pulls that were driven to their end} */
    public Set<PullId> driven() {
        return NextStep.driven(plan, log);
    }

    /** {@return the place of the session that the day is in} */
    public int session() {
        return NextStep.session(plan, log);
    }

    /** {@return whether a swap can be started or finished} */
    public boolean canSwap(NextAction next) {
        List<String> labels = plan.sequence().installs().map(install -> install.label()).toList();
        boolean last = next.kind() != NextAction.Kind.SWAP && next.kind() != NextAction.Kind.SWAP_UNDER_WAY
                && labels.indexOf(next.install()) == labels.size() - 1;
        return !next.install().isEmpty() && !last;
    }

    /** {@return what “undo” would take back, in words; empty where there is nothing} */
    public String lastAct() {
        return String.join(" and ", log.lastAct().stream().map(record -> EntryWords.of(record.entry())).toList());
    }

    /** {@return whether there is something that “undo” would take back} */
    public boolean canUndo() {
        return !log.lastAct().isEmpty();
    }

    /**
     * {@return the same day, as long as what is next is what was in view when somebody acted}
     *
     * @throws InputException if something else is next by now
     */
    public RunDay meaning(NextAction seen, OffsetDateTime now) {
        NextAction next = next(now);
        if (!next.pull().equals(seen.pull()) || !next.install().equals(seen.install()) || next.kind() != seen.kind()
                && (next.pull().isEmpty() || seen.pull().isEmpty())) {
            throw refused(RunWords.head(seen) + " is not next any more, so nothing was written");
        }
        return this;
    }

    /** Writes down that the next pull was run. */
    public RunDay pullDone(OffsetDateTime now) throws IOException {
        return write(now, List.of(new LogEntry.PullRun(nextPull(now), now)));
    }

    /** Writes down that the next pull was started and not finished; it is then next again. */
    public RunDay aborted(String reason, OffsetDateTime now) throws IOException {
        return write(now, List.of(new LogEntry.PullAborted(nextPull(now), worded(reason))));
    }

    /** Starts the swap to the next install, or finishes the one under way. Pulls that are still open are dropped with it. */
    public RunDay swap(OffsetDateTime now) throws IOException {
        NextAction next = next(now);
        if (next.kind() == NextAction.Kind.SWAP_UNDER_WAY) {
            return write(now, List.of(new LogEntry.Swap(next.install(), Phase.FINISHED, now)));
        }
        return write(now, List.of(new LogEntry.Swap(following(next), Phase.STARTED, now)));
    }

    private String following(NextAction next) {
        boolean between = next.kind() == NextAction.Kind.SWAP || next.kind() == NextAction.Kind.SET_UP;
        List<String> labels = plan.sequence().installs().map(install -> install.label()).toList();
        int place = labels.indexOf(next.install()) + (between ? 0 : 1);
        if (next.install().isEmpty() || place >= labels.size()) {
            throw refused("no install follows: there is nothing to swap to");
        }
        return labels.get(place);
    }

    /** Writes down what was read before the next pull. */
    public RunDay read(Condition condition, String typed, OffsetDateTime now) throws IOException {
        NotePull.note(folder, List.of(new NotePull.Note(nextPull(now), Optional.empty(), Map.of(condition, typed), Map.of(),
                Optional.empty(), Optional.empty(), Map.of(), Optional.empty())), now);
        return of(folder);
    }

    /** Writes down why the next pull is run although gates do not hold. */
    public RunDay goOn(String reason, OffsetDateTime now) throws IOException {
        return goOn(nextPull(now), reason, now);
    }

    /** The same of a pull that may have come in meanwhile. */
    public RunDay goOn(PullId pull, String reason, OffsetDateTime now) throws IOException {
        List<LogEntry> entries = new ArrayList<>();
        for (GateNow gate : GatesNow.of(plan, log, pull)) {
            if (gate.state() == GateNow.State.BROKEN && gate.overridden().isEmpty()) {
                entries.add(new LogEntry.GateOverridden(pull, gate.gate().condition(), worded(reason)));
            }
        }
        if (entries.isEmpty()) {
            throw refused("every gate that was read holds, so there is nothing to go on in spite of");
        }
        return write(now, entries);
    }

    /** Writes down that a pull was run, and when. */
    public RunDay run(PullId pull, OffsetDateTime startedAt, OffsetDateTime now) throws IOException {
        return run(pull, startedAt, Optional.empty(), now);
    }

    /** The same, with what is noted of the pull. */
    public RunDay run(PullId pull, OffsetDateTime startedAt, Optional<NotePull.Note> beside, OffsetDateTime now) throws IOException {
        Planned.check(plan, pull);
        List<LogEntry> entries = new ArrayList<>(List.of(new LogEntry.PullRun(pull, startedAt)));
        beside.ifPresent(note -> entries.addAll(NotePull.entries(note, plan, log)));
        return write(now, entries);
    }

    /** Writes down that the swap to an install was started or finished, and when. */
    public RunDay swapped(String install, Phase phase, OffsetDateTime time, OffsetDateTime now) throws IOException {
        Planned.checkInstall(plan, install);
        return write(now, List.of(new LogEntry.Swap(install, phase, time)));
    }

    /** Writes down that the day ends here, before all of its pulls were run; it may be judged then. */
    public RunDay end(String reason, OffsetDateTime now) throws IOException {
        if (NextStep.isDone(plan, log)) {
            throw refused("the day is done already");
        }
        if (log.pulls().keySet().stream().allMatch(PullId::warmUp)) {
            throw refused("no counted pull has come in, so there is nothing that could be judged");
        }
        return write(now, List.of(new LogEntry.DayEnded(worded(reason))));
    }

    /** Takes the last act of the day back, an export with the gates that were read from it; it stays in the log. */
    public RunDay undo(OffsetDateTime now) throws IOException {
        List<LogRecord> last = log.lastAct();
        if (last.isEmpty()) {
            throw refused("nothing of the day is in the log yet");
        }
        return takeBack(last, now);
    }

    /** Takes an entry of the day back by its number, with those that were written in one act with it. */
    public RunDay takeBack(int number, OffsetDateTime now) throws IOException {
        List<LogRecord> act = log.actOf(number);
        if (act.isEmpty()) {
            throw refused("entry " + number + " of the log tells nothing of the day that still stands");
        }
        return takeBack(act, now);
    }

    private RunDay takeBack(List<LogRecord> act, OffsetDateTime now) throws IOException {
        return write(now, act.stream().map(record -> (LogEntry) new LogEntry.TakenBack(record.number())).toList());
    }

    private PullId nextPull(OffsetDateTime now) {
        NextAction next = next(now);
        return next.pull().orElseThrow(() -> refused("no pull is next: " + RunWords.head(next).toLowerCase(Locale.ROOT)));
    }

    private static String worded(String reason) {
        if (reason.isBlank()) {
            throw refused("say why, in a few words");
        }
        return reason.strip();
    }

    private static InputException refused(String problem) {
        return new InputException(Place.none(), problem, "look at what is next");
    }

    private RunDay write(OffsetDateTime now, List<LogEntry> entries) throws IOException {
        TestFolder test = TestFolder.open(folder);
        if (!test.read().isSealed()) {
            throw new InputException(Place.of(folder.toString()), "the plan is not sealed", "seal it before the first pull");
        }
        test.append(now, entries);
        return of(folder);
    }
}
