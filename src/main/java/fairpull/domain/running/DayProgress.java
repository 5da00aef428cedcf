package fairpull.domain.running;

import fairpull.domain.plan.Install;
import fairpull.domain.plan.Looks;
import fairpull.domain.plan.Plan;
import fairpull.domain.pull.DayLog;
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
 * @param isOver whether every counted pull of the last install came in, or the day was ended before
 * @param isLooked whether the planned look after the installs reached is in the log, and nothing came in since
 * @param nextLook the installs after which the next look is planned, from where the day is; empty where none is before the end
 */
public record DayProgress(int in, int counted, int reached, int installs, boolean isOver, boolean isLooked,
        Optional<Integer> nextLook) {

    /** {@return how far a test has come by its log} */
    public static DayProgress of(Plan plan, DayLog log) {
        List<Install> installs = plan.sequence().installs().toList();
        List<PullId> counted = installs.stream().flatMap(DayProgress::counted).toList();
        boolean isOver = log.ended().isPresent() || counted(installs.get(installs.size() - 1)).allMatch(log.pulls()::containsKey);
        int reached = IntStream.range(0, installs.size())
                .filter(place -> counted(installs.get(place)).anyMatch(log.pulls()::containsKey)).map(place -> place + 1).max().orElse(0);
        List<Integer> looks = plan.looks().map(Looks::afterInstalls).orElse(List.of());
        boolean looked = looks.contains(reached) && !log.newSinceLook()
                && log.looks().stream().anyMatch(look -> look.afterInstalls() == reached);
        return new DayProgress((int) counted.stream().filter(log.pulls()::containsKey).count(), counted.size(), reached, installs.size(),
                isOver, looked,
                looks.stream().filter(after -> after < installs.size() && after >= reached && !(looked && after == reached)).findFirst());
    }

    private static Stream<PullId> counted(Install install) {
        return IntStream.rangeClosed(1, install.countedPulls()).mapToObj(number -> new PullId(install.label(), false, number));
    }

    /** {@return whether it may be judged now} */
    public boolean mayBeJudged() {
        return isOver || isLooked;
    }
}
