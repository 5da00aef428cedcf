package fairpull.app.usecase.judging;

import fairpull.domain.finding.Fate;
import fairpull.domain.finding.LookTaken;
import fairpull.domain.finding.Notice;
import fairpull.domain.finding.Notice.Code;
import fairpull.domain.finding.PullSeen;
import fairpull.domain.plan.Install;
import fairpull.domain.plan.Plan;
import fairpull.domain.pull.DayLog;
import fairpull.domain.pull.LogEntry;
import fairpull.domain.pull.LogRecord;
import fairpull.engine.planning.LookBounds;
import fairpull.engine.planning.PlanSizing;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * At which look a test stands, by how many installs have data and by what the log says of looks.
 *
 * @param reached installs from the first one to the last one that has data
 * @param taken the look, and the level at which it is judged; empty where no looks are planned
 * @param notices what does not fit the plan
 */
record LookNow(int reached, Optional<LookTaken> taken, List<Notice> notices) {

    /** {@return the look at which a test stands} */
    static LookNow of(Plan plan, DayLog log, List<PullSeen> pulls) {
        int reached = reached(plan, pulls);
        Optional<LookTaken> taken = plan.looks().map(looks -> taken(LookBounds.of(PlanSizing.layout(plan), looks), plan, reached));
        List<Notice> notices = new ArrayList<>();
        taken.ifPresent(look -> ofLook(look, log, notices));
        tooOften(plan, log).ifPresent(notices::add);
        return new LookNow(reached, taken, notices);
    }

    private static int reached(Plan plan, List<PullSeen> pulls) {
        List<String> labels = plan.sequence().installs().map(Install::label).toList();
        return pulls.stream().filter(seen -> seen.fate() == Fate.USED || seen.fate() == Fate.EXCLUDED)
                .mapToInt(seen -> labels.indexOf(seen.pull().install()) + 1).max().orElse(0);
    }

    private static LookTaken taken(LookBounds bounds, Plan plan, int reached) {
        int place = bounds.afterInstalls().indexOf(reached);
        double strictest = IntStream.range(0, bounds.count()).mapToDouble(bounds::level).min().orElseThrow();
        return new LookTaken(place + 1, bounds.count(), reached, place < 0 ? strictest : bounds.level(place), plan.question().errorRate());
    }

    private static void ofLook(LookTaken look, DayLog log, List<Notice> notices) {
        if (!look.wasPlanned()) {
            notices.add(Notice.of(Code.LOOK_NOT_PLANNED, (double) look.afterInstalls(), look.level()));
            return;
        }
        notices.add(Notice.of(Code.LOOK_APPLIED, (double) look.number(), (double) look.planned(), look.level(), look.errorRate()));
        if (!look.isLast() && !log.isLookedAfter(look.afterInstalls())) {
            notices.add(Notice.of(Code.LOOK_NOT_LOGGED, (double) look.number()));
        }
    }

    /** Looks of the log that the plan does not have: at another place, or again at the same place after more pulls came in. */
    private static Optional<Notice> tooOften(Plan plan, DayLog log) {
        int end = (int) plan.sequence().installs().count();
        List<Integer> planned = plan.looks().map(looks -> looks.afterInstalls()).orElse(List.of(end));
        Set<Integer> seen = new HashSet<>();
        boolean newData = false;
        int logged = 0;
        int unplanned = 0;
        for (LogRecord record : log.records()) {
            newData |= record.entry() instanceof LogEntry.PullTaken taken && !taken.pull().warmUp();
            if (record.entry() instanceof LogEntry.Look look) {
                logged++;
                boolean again = !seen.add(look.afterInstalls()) && newData;
                unplanned += again || !planned.contains(look.afterInstalls()) ? 1 : 0;
                newData = false;
            }
        }
        return unplanned == 0 ? Optional.empty()
                : Optional.of(Notice.of(Code.LOOKED_TOO_OFTEN, (double) logged, (double) planned.size(), (double) unplanned));
    }
}
