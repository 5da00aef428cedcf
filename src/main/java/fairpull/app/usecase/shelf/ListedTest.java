package fairpull.app.usecase.shelf;

import fairpull.app.usecase.judging.JudgeFolder;
import fairpull.domain.InputException;
import fairpull.domain.finding.Judgement;
import fairpull.domain.finding.Notice;
import fairpull.domain.plan.Plan;
import fairpull.domain.pull.DayLog;
import fairpull.domain.pull.LogEntry;
import fairpull.domain.pull.LogRecord;
import fairpull.domain.pull.Seal;
import fairpull.domain.rig.RigRecord;
import fairpull.domain.running.DayProgress;
import fairpull.io.folder.TestFolder;
import fairpull.report.chart.Drawing;
import fairpull.report.chart.IntervalMark;
import fairpull.report.wording.ShelfWords;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A test as it stands in a list. It is judged as {@code judge} does, and only once its last pull is in: a list must not be a way to peek.
 *
 * @param folder where it is
 * @param title of the test; the name of its folder where it cannot be read
 * @param parts both parts in words; empty where it cannot be read
 * @param state how far it is
 * @param stateWords the same in words
 * @param measure the deciding measure
 * @param outcome what was found; empty before the end
 * @param date the day of its first pull, else of its seal, where there is one
 * @param trouble what is wrong with it in one line; empty where nothing is
 */
public record ListedTest(Path folder, String title, String parts, State state, String stateWords, String measure,
        Optional<Outcome> outcome, Optional<OffsetDateTime> date, String trouble) {
    /** How far a test is, in the order of the work. */
    public enum State {
        PLANNED, SEALED, UNDER_WAY, COMPLETE, UNREADABLE
    }

    /**
     * What was found.
     *
     * @param verdict the verdict in the words of the trade, such as {@code gain}
     * @param verdictWords the same as a heading
     * @param beside what belongs to it, such as whether it is worthwhile
     * @param change the estimate with its unit; empty where it cannot be judged
     * @param interval with unit and level; empty likewise
     * @param inGains the estimate in worthwhile gains; NaN where that cannot be said
     * @param mark the interval as a line
     * @param alarm what casts doubt on all of it; empty where nothing does
     * @param ofA the record that its installs of A would make of the rig
     */
    public record Outcome(String verdict, String verdictWords, String beside, String change, String interval, double inGains,
            Optional<Drawing> mark, String alarm, Optional<RigRecord> ofA) {
    }

    /** {@return the test in a folder; what is wrong with it stands in it, whatever that is} */
    static ListedTest of(Path folder) {
        String trouble;
        try {
            return read(folder);
        } catch (InputException unusable) {
            trouble = unusable.oneLine();
        } catch (IOException | UncheckedIOException disk) {
            trouble = "It cannot be read from the disk: " + disk.getMessage();
        } catch (RuntimeException | StackOverflowError fault) { // one test must not take the list away
            trouble = "A fault of the program: " + fault;
        }
        return new ListedTest(folder, String.valueOf(folder.getFileName()), "", State.UNREADABLE, "cannot be read", "", Optional.empty(),
                Optional.empty(), trouble);
    }

    private static ListedTest read(Path folder) throws IOException {
        TestFolder.Content content = TestFolder.open(folder).read();
        Plan plan = content.plan();
        DayLog log = content.log();
        DayProgress progress = DayProgress.of(plan, log);
        boolean over = progress.isOver();
        State state = over ? State.COMPLETE : progress.in() > 0 ? State.UNDER_WAY : content.isSealed() ? State.SEALED : State.PLANNED;
        String words = ShelfWords.state(new ShelfWords.Progress(progress.in(), progress.counted(), content.isSealed(), over,
                log.amendments().size()));
        Optional<OffsetDateTime> date = firstStart(log).or(() -> content.seal().map(Seal::at));
        ListedTest unjudged = new ListedTest(folder, plan.title(), ShelfWords.parts(plan), state, words,
                plan.question().deciding().name(), Optional.empty(), date, "");
        return over ? judged(unjudged) : unjudged;
    }

    private static Optional<OffsetDateTime> firstStart(DayLog log) {
        return log.standing().stream().flatMap(record -> start(record).stream()).min(OffsetDateTime.timeLineOrder());
    }

    private static Optional<OffsetDateTime> start(LogRecord record) {
        return record.entry() instanceof LogEntry.PullTaken taken ? taken.startedAt()
                : record.entry() instanceof LogEntry.ConditionsNoted noted ? noted.startedAt()
                : record.entry() instanceof LogEntry.PullRun run ? Optional.of(run.startedAt()) : Optional.empty();
    }

    private static ListedTest judged(ListedTest test) throws IOException {
        try {
            return test.with(Optional.of(outcome(JudgeFolder.withoutCurve(test.folder()))), "");
        } catch (InputException notJudged) {
            return test.with(Optional.empty(), notJudged.oneLine());
        }
    }

    private static Outcome outcome(Judgement judgement) {
        var finding = judgement.deciding();
        double inGains = finding.estimate().isPresent() && finding.settings().worthwhileGain().isPresent()
                ? finding.estimate().get().change() / finding.settings().worthwhileGain().getAsDouble() : Double.NaN;
        List<Notice> notices = Stream.concat(judgement.notices().stream(), finding.notices().stream()).toList();
        return new Outcome(finding.verdict().words(), ShelfWords.verdict(finding), ShelfWords.besideVerdict(finding),
                ShelfWords.change(finding), ShelfWords.interval(finding), inGains, IntervalMark.draw(finding),
                ShelfWords.alarm(notices, finding.unit()), RigRecords.ofTest(judgement, OffsetDateTime.MIN));
    }

    private ListedTest with(Optional<Outcome> found, String wrong) {
        return new ListedTest(folder, title, parts, state, stateWords, measure, found, date, wrong);
    }

    /** {@return how many tests there are, and in which states} */
    public static String count(List<ListedTest> tests) {
        return ShelfWords.count(tests.size(), number(tests, State.COMPLETE), number(tests, State.UNDER_WAY),
                number(tests, State.PLANNED) + number(tests, State.SEALED), number(tests, State.UNREADABLE));
    }

    private static int number(List<ListedTest> tests, State state) {
        return (int) tests.stream().filter(test -> test.state() == state).count();
    }
}
