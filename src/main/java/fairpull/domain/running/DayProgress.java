package fairpull.domain.running;

import fairpull.domain.plan.Install;
import fairpull.domain.plan.Looks;
import fairpull.domain.plan.Plan;
import fairpull.domain.pull.DayLog;
import fairpull.domain.pull.LogEntry;
import fairpull.domain.pull.PullId;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * How far the pulls of a test have come in, and whether it may be judged: at its end, or at a planned look that is in the log. Whoever
 * judges at any other time can stop when luck is good.
 *
 * @param in counted pulls that came in
 * @param counted how many are planned
 * @param reached installs from the first one to the last one that has a counted pull
 * @param installs how many are planned
 * @param isOver whether every counted pull is done with, or the day was ended before
 * @param isLooked whether the planned look after the installs reached is in the log, and no counted pull came in since
 * @param nextLook the installs after which the next look is planned, from where the day is; empty where none is before the end
 * @param missing counted pulls to be done with before it is judged next, in the order of the plan
 */
public record DayProgress(int in, int counted, int reached, int installs, boolean isOver, boolean isLooked,
        Optional<Integer> nextLook, List<PullId> missing) {
    public DayProgress {
        missing = List.copyOf(missing);
    }

    /**
     * {@return how far a test has come by its log} A counted pull is done with once it came in; one that was stopped, unless it is next
     * again on a day that is run by the log; one that was never run, once such a day went on to a later install. All others are missing,
     * until the day is ended with a reason: whoever brings the last exports in first must not see what they come to.
     */
    public static DayProgress of(Plan plan, DayLog log) {
        List<String> labels = plan.sequence().installs().map(Install::label).toList();
        List<PullId> counted = plan.sequence().installs().flatMap(DayProgress::counted).toList();
        List<PullId> in = counted.stream().filter(log.pulls()::containsKey).toList();
        int reached = in.stream().mapToInt(pull -> labels.indexOf(pull.install()) + 1).max().orElse(0);
        List<PullId> missing = missing(counted, labels, log, reached);
        boolean isOver = log.ended().isPresent() || missing.isEmpty();
        List<Integer> looks = plan.looks().map(Looks::afterInstalls).orElse(List.of());
        boolean looked = looks.contains(reached) && upTo(missing, labels, reached).isEmpty()
                && log.isLookedAfter(reached);
        Optional<Integer> next = looks.stream()
                .filter(after -> after < labels.size() && after >= reached && !(looked && after == reached)).findFirst();
        return new DayProgress(in.size(), counted.size(), reached, labels.size(), isOver, looked, next,
                upTo(missing, labels, next.orElse(labels.size())));
    }

    private static Stream<PullId> counted(Install install) {
        return IntStream.rangeClosed(1, install.countedPulls()).mapToObj(number -> new PullId(install.label(), false, number));
    }

    private static List<PullId> upTo(List<PullId> pulls, List<String> labels, int installs) {
        return pulls.stream().filter(pull -> labels.indexOf(pull.install()) < installs).toList();
    }

    private static List<PullId> missing(List<PullId> counted, List<String> labels, DayLog log, int withData) {
        int runIn = log.standing().stream().mapToInt(record -> record.entry() instanceof LogEntry.Swap swap ? labels.indexOf(swap.install())
                : record.entry() instanceof LogEntry.PullRun run ? labels.indexOf(run.pull().install()) : -1).max().orElse(-1);
        return counted.stream().filter(pull -> {
            int place = labels.indexOf(pull.install());
            boolean isAgain = runIn >= 0 && place >= Math.max(withData - 1, runIn);
            boolean isStopped = log.aborted().containsKey(pull) && !isAgain;
            boolean isDropped = !log.run().containsKey(pull) && place < runIn;
            return !log.pulls().containsKey(pull) && !isStopped && !isDropped;
        }).toList();
    }

    /** {@return whether a planned look can be taken now: all before it is in, and nothing after it} */
    public boolean isLookDue() {
        return in > 0 && missing.isEmpty() && nextLook.filter(after -> after == reached).isPresent();
    }

    /** {@return whether it may be judged now} */
    public boolean mayBeJudged() {
        return isOver || isLooked;
    }
}
