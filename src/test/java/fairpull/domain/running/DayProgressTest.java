package fairpull.domain.running;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.app.usecase.planning.ExamplePlan;
import fairpull.domain.plan.Looks;
import fairpull.domain.plan.Plan;
import fairpull.domain.pull.DayLog;
import fairpull.domain.pull.LogEntry;
import fairpull.domain.pull.LogEntry.Swap.Phase;
import fairpull.domain.pull.LogRecord;
import fairpull.domain.pull.PullId;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** When a verdict may be shown: A/B/A/B/A with five counted pulls an install, all worked out by hand. */
class DayProgressTest {
    private static final OffsetDateTime NOW = OffsetDateTime.parse("2026-05-09T09:00:00+02:00");

    private final List<LogRecord> records = new ArrayList<>();
    private Plan plan = ExamplePlan.plan();

    private void write(LogEntry entry) {
        records.add(new LogRecord(records.size() + 1, NOW, "", entry, ""));
    }

    private void take(String install, int from, int to) {
        for (int number = from; number <= to; number++) {
            write(new LogEntry.PullTaken(new PullId(install, false, number), Optional.empty(), "", Optional.empty(), "", "", "",
                    Optional.empty(), Map.of("power", 1.0), Optional.empty()));
        }
    }

    private DayProgress now() {
        return DayProgress.of(plan, new DayLog(records));
    }

    private void looks(Integer... after) {
        plan = plan.withLooks(Optional.of(new Looks(Looks.Spending.OBRIEN_FLEMING, List.of(after))));
    }

    private static PullId pull(String install, int number) {
        return new PullId(install, false, number);
    }

    @Test
    void itIsJudgedOnceTheLastPullIsInAndNotOneEarlier() {
        for (String install : List.of("A1", "B1", "A2", "B2")) {
            take(install, 1, 5);
        }
        take("A3", 1, 4);
        assertThat(now()).isEqualTo(new DayProgress(24, 25, 5, 5, false, false, Optional.empty(), List.of(pull("A3", 5))));
        take("A3", 5, 5);
        assertThat(now()).isEqualTo(new DayProgress(25, 25, 5, 5, true, false, Optional.empty(), List.of()));
    }

    /** Whoever brings the last exports in first has not seen the others. */
    @Test
    void thePullsOfTheLastInstallAloneEndNothing() {
        take("A1", 1, 5);
        take("B1", 1, 5);
        take("A3", 1, 5);
        assertThat(now().mayBeJudged()).isFalse();
        assertThat(now().missing()).hasSize(10).startsWith(pull("A2", 1)).endsWith(pull("B2", 5));
    }

    @Test
    void aPlannedLookIsDueWhenAllOfItsInstallsIsInAndHoldsUntilTheNextCountedPull() {
        looks(3, 5);
        take("A1", 1, 5);
        take("B1", 1, 5);
        take("A2", 1, 1);
        assertThat(now().isLookDue()).as("four pulls of A2 are to come").isFalse();
        assertThat(now().missing()).hasSize(4).startsWith(pull("A2", 2));
        take("A2", 2, 5);
        assertThat(now().isLookDue()).isTrue();
        assertThat(now().mayBeJudged()).isFalse();
        write(new LogEntry.Look(1, 3));
        assertThat(now().mayBeJudged()).isTrue();
        write(new LogEntry.Swap("B2", Phase.STARTED, NOW));
        write(new LogEntry.PullRun(pull("B2", 1), NOW));
        write(new LogEntry.PullTaken(new PullId("B2", true, 1), Optional.empty(), "", Optional.empty(), "", "", "", Optional.empty(),
                Map.of("power", 1.0), Optional.empty()));
        assertThat(now().mayBeJudged()).as("a warm-up is no value that counts").isTrue();
        assertThat(now().isLookDue()).as("nor makes it the look due once more").isFalse();
        take("B2", 1, 1);
        assertThat(now().mayBeJudged()).isFalse();
        assertThat(now().nextLook()).isEmpty();
    }

    /** Another export in the place of one that was seen makes other data, and a verdict on them is another look. */
    @Test
    void aLookIsDueOnceMoreWhereAPullCameInAfterIt() {
        looks(3, 5);
        take("A1", 1, 5);
        take("B1", 1, 5);
        take("A2", 1, 5);
        int last = records.size();
        write(new LogEntry.Look(1, 3));
        write(new LogEntry.TakenBack(last));
        assertThat(now().mayBeJudged()).isFalse();
        take("A2", 5, 5);
        assertThat(now().mayBeJudged()).isFalse();
        assertThat(now().isLookDue()).isTrue();
    }

    @Test
    void aLookWhereNoneIsPlannedOpensNothing() {
        looks(3, 5);
        take("A1", 1, 5);
        take("B1", 1, 5);
        write(new LogEntry.Look(1, 2));
        assertThat(now().mayBeJudged()).isFalse();
    }

    @Test
    void whatTheDayDroppedIsNotWaitedForButWhatItDroveIs() {
        take("A1", 1, 4);
        write(new LogEntry.Swap("B1", Phase.STARTED, NOW));
        take("B1", 1, 4);
        write(new LogEntry.PullRun(pull("B1", 5), NOW));
        write(new LogEntry.Swap("A2", Phase.STARTED, NOW));
        assertThat(now().missing()).as("A1-5 was dropped by the swap, the export of B1-5 is to come").doesNotContain(pull("A1", 5))
                .contains(pull("B1", 5));
    }

    @Test
    void aStoppedLastPullIsNextAgainOnADayThatIsRunAndDoneWithElsewhere() {
        for (String install : List.of("A1", "B1", "A2", "B2")) {
            take(install, 1, 5);
        }
        take("A3", 1, 4);
        write(new LogEntry.PullAborted(pull("A3", 5), "slip"));
        assertThat(now().isOver()).isTrue();
        write(new LogEntry.PullRun(pull("A3", 1), NOW));
        assertThat(now().isOver()).isFalse();
    }
}
