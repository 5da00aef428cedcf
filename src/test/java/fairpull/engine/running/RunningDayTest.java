package fairpull.engine.running;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.app.usecase.planning.ExamplePlan;
import fairpull.domain.day.DayClock;
import fairpull.domain.day.DayEvent;
import fairpull.domain.plan.Break;
import fairpull.domain.plan.Condition;
import fairpull.domain.plan.Hours;
import fairpull.domain.plan.Looks;
import fairpull.domain.plan.Plan;
import fairpull.domain.pull.DayLog;
import fairpull.domain.pull.LogEntry;
import fairpull.domain.pull.LogEntry.Swap.Phase;
import fairpull.domain.pull.LogRecord;
import fairpull.domain.pull.PullId;
import fairpull.domain.running.Cut;
import fairpull.domain.running.GateNow;
import fairpull.domain.running.NextAction;
import fairpull.engine.planning.PlanSizing;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Days of our own: A/B/A/B/A, two warm-ups and five pulls every four minutes, a swap of eight; checked by hand. */
class RunningDayTest {
    private static final OffsetDateTime NINE = OffsetDateTime.of(2026, 5, 9, 9, 0, 0, 0, ZoneOffset.ofHours(2));

    private final List<LogRecord> records = new ArrayList<>();
    private Plan plan = ExamplePlan.plan();
    private OffsetDateTime now = NINE;

    private void write(LogEntry entry) {
        records.add(new LogRecord(records.size() + 1, now, "", entry, ""));
    }

    private DayLog log() {
        return new DayLog(records);
    }

    private NextAction next() {
        return NextStep.of(plan, log(), now);
    }

    private void run(int pulls) {
        for (int k = 0; k < pulls; k++) {
            write(new LogEntry.PullRun(next().pull().orElseThrow(), now));
            now = now.plusMinutes(4);
        }
    }

    private void swap(String install, int minutes) {
        write(new LogEntry.Swap(install, Phase.STARTED, now));
        now = now.plusMinutes(minutes);
        write(new LogEntry.Swap(install, Phase.FINISHED, now));
    }

    private void hours(LocalTime end, Break... breaks) {
        plan = plan.resequenced(plan.sequence().withLabelled(plan.sequence().sessions().stream()
                .map(session -> session.with(new Hours(LocalTime.of(8, 0), Optional.of(end), List.of(breaks)))).toList()));
    }

    private void isAsIfNothingHadHappened(OffsetDateTime start, ZoneId zone) {
        now = start;
        plan = plan.resequenced(plan.sequence().withLabelled(plan.sequence().sessions().stream()
                .map(session -> session.with(new Hours(LocalTime.MIDNIGHT, Optional.empty(), List.of()))).toList()));
        double begun = Double.NaN;
        for (int pull = 0; pull < 7; pull++) {
            run(1);
            now = now.atZoneSameInstant(zone).toOffsetDateTime();
            DayClock clock = Retiming.of(plan, log(), now).get(0);
            double first = clock.events().get(0).startS();
            begun = Double.isNaN(begun) ? first : begun;
            assertThat(Retiming.nowOnClock(plan, log(), now) - first).as("now, after %d pulls", pull + 1).isEqualTo(240.0 * (pull + 1));
            assertThat(clock.finishS() - first).as("the whole day").isEqualTo((5 * 7 * 4 + 4 * 8) * 60.0);
            assertThat(clock.lateS()).isZero();
            if (pull < 6) {
                assertThat(next().due()).hasValueSatisfying(due -> assertThat(due.toInstant()).isEqualTo(now.toInstant()));
                assertThat(next().due().orElseThrow().getOffset()).as("said by the clock on the wall").isEqualTo(now.getOffset());
            }
        }
        assertThat(next().kind()).isEqualTo(NextAction.Kind.SWAP);
        assertThat(NextStep.leftAt(plan, log(), now)).isEmpty();
        assertThat(NextStep.isAhead(plan, log(), now)).isFalse();
    }

    /** The third pull starts after midnight; clocks in Berlin go back at 03:00 on 25 October 2026 and forward at 02:00 on 29 March. */
    @Test
    void aDayRunsOnOverMidnightAndOverTheChangeOfClocks() {
        ZoneId berlin = ZoneId.of("Europe/Berlin");
        isAsIfNothingHadHappened(OffsetDateTime.parse("2026-05-09T23:50:00+02:00"), berlin);
        for (String start : List.of("2026-10-25T02:50:00+02:00", "2026-10-25T00:40:00+02:00", "2026-03-29T01:50:00+01:00",
                "2026-03-28T23:50:00+01:00", "2026-10-24T23:50:00+02:00")) {
            records.clear();
            isAsIfNothingHadHappened(OffsetDateTime.parse(start), berlin);
        }
    }

    /** Begun at half past midnight before clocks go back, seen after it: it still belongs to that date, and its end of day is not past. */
    @Test
    void theDateIsThatOfTheDayOnWhichItWasBegun() {
        now = OffsetDateTime.parse("2026-10-25T00:30:00+02:00");
        run(3);
        now = OffsetDateTime.parse("2026-10-25T03:30:00+01:00");
        assertThat(Retiming.nowOnClock(plan, log(), now.minusHours(3))).isEqualTo(0.5 * 3600);
        hours(LocalTime.of(17, 0));
        assertThat(Retiming.of(plan, log(), now.minusHours(3)).get(0).lateS()).isZero();
    }

    /** Nine hours later, or half a year: the strip does not grow, and nothing is late. */
    @Test
    void aDayThatWasLeftGoesOnWhereItWasLeft() {
        run(4);
        List<DayClock> before = Retiming.of(plan, log(), now);
        OffsetDateTime last = now.minusMinutes(4);
        now = now.plusDays(180);

        assertThat(next().due()).isEmpty();
        assertThat(next().pull()).contains(new PullId("A1", false, 3));
        assertThat(NextStep.leftAt(plan, log(), now)).contains(last);
        assertThat(Retiming.of(plan, log(), now)).isEqualTo(before);
        assertThat(NextStep.leftAt(plan, log(), last.plusHours(7))).isEmpty();
    }

    @Test
    void theFirstWarmUpMayStartAtAnyTimeAndTheNextPullIsDueOneIntervalLater() {
        assertThat(next().kind()).isEqualTo(NextAction.Kind.WARM_UP);
        assertThat(next().due()).isEmpty();
        run(3);
        assertThat(next().pull()).contains(new PullId("A1", false, 2));
        assertThat(next().due()).contains(NINE.plusMinutes(12));
        assertThat(next().earliest()).contains(NINE.plusMinutes(11));
        assertThat(next().latest()).contains(NINE.plusMinutes(13));
    }

    @Test
    void anAbortedPullIsNextAgainAndOneTakenBackNeverWas() {
        run(3);
        write(new LogEntry.PullAborted(new PullId("A1", false, 2), "slip"));
        assertThat(next().pull()).contains(new PullId("A1", false, 2));
        assertThat(next().again()).isTrue();
        assertThat(next().due()).contains(now.plusMinutes(4));
        write(new LogEntry.TakenBack(records.size()));
        assertThat(next().again()).isFalse();
        assertThat(log().aborted()).isEmpty();
        assertThat(log().records()).hasSize(5);
    }

    @Test
    void aSwapIsNextAfterTheLastPullAndPullsAreDroppedByStartingItEarly() {
        run(7);
        assertThat(next()).extracting(NextAction::kind, NextAction::install).containsExactly(NextAction.Kind.SWAP, "B1");
        write(new LogEntry.Swap("B1", Phase.STARTED, now));
        assertThat(next().due()).contains(now.plusMinutes(8));
        swap("B1", 8);
        run(4);
        swap("A2", 8);
        assertThat(next().pull()).contains(new PullId("A2", true, 1));
        assertThat(next().due()).isEmpty();
    }

    @Test
    void inABreakThePullWaitsForItsEnd() {
        hours(LocalTime.of(17, 0), new Break(LocalTime.of(9, 10), 1800));
        run(3);
        assertThat(next().kind()).isEqualTo(NextAction.Kind.BREAK);
        assertThat(next().due()).contains(NINE.plusMinutes(40));
    }

    @Test
    void aGateIsHeldAgainstTheFirstCountedPullAndOneThatWasNotReadIsSaidToBe() {
        PullId reference = new PullId("A1", false, 1);
        PullId here = new PullId("A1", false, 2);
        write(new LogEntry.ConditionsNoted(reference, Optional.empty(), Map.of(Condition.INTAKE_AIR, 295.0)));
        write(new LogEntry.ConditionsNoted(here, Optional.empty(), Map.of(Condition.INTAKE_AIR, 298.0)));
        List<GateNow> gates = GatesNow.of(plan, log(), here);
        GateNow air = gates.stream().filter(gate -> gate.gate().condition() == Condition.INTAKE_AIR).findFirst().orElseThrow();
        assertThat(air.state()).isEqualTo(GateNow.State.BROKEN);
        assertThat(air.lowSi().getAsDouble()).isEqualTo(293.0);
        assertThat(air.highSi().getAsDouble()).isEqualTo(297.0);
        assertThat(gates.stream().filter(gate -> gate.gate().condition() == Condition.COOLANT).findFirst().orElseThrow().state())
                .isEqualTo(GateNow.State.NOT_READ);
    }

    @Test
    void theRestOfTheDayIsReTimedFromWhatHappened() {
        run(7);
        swap("B1", 20);
        DayClock day = Retiming.of(plan, log(), now).get(0);
        List<DayClock.Span> installs = day.installs();
        assertThat(installs.get(0).startS()).isEqualTo(9 * 3600);
        assertThat(installs.get(1).startS()).as("48 min after nine: 28 of pulls, 20 of swap").isEqualTo(9 * 3600 + 48 * 60);
        // four installs of 28 min and three swaps of 8 follow
        assertThat(day.finishS()).isEqualTo(9 * 3600 + (48 + 4 * 28 + 3 * 8) * 60);
    }

    @Test
    void theCutIsAsCheapAsTheCheapestOfAllByBruteForce() {
        hours(LocalTime.of(11, 49));
        run(7);
        swap("B1", 8);
        run(7);
        swap("A2", 8);
        run(5);
        Cut cut = CutSearch.of(plan, log(), now).orElseThrow();
        assertThat(cut.lateS()).isPositive();
        DayStanding standing = new DayStanding(plan, log());
        double best = Double.POSITIVE_INFINITY;
        for (int a2 = 0; a2 <= 2; a2++) {
            for (int b2 = 0; b2 <= 4; b2++) {
                for (int a3 = 0; a3 <= 4; a3++) {
                    Set<PullId> gone = new HashSet<>();
                    last("A2", a2, gone);
                    last("B2", b2, gone);
                    last("A3", a3, gone);
                    best = Math.min(best, gainIfItFits(standing, gone));
                }
            }
        }
        Set<PullId> twoInstallsLess = new HashSet<>();
        last("B2", 5, twoInstallsLess);
        last("A3", 5, twoInstallsLess);
        best = Math.min(best, gainIfItFits(standing, twoInstallsLess));
        assertThat(cut.gainAfter().getAsDouble()).isCloseTo(best, within(1e-12));
        assertThat(gainIfItFits(standing, Set.copyOf(cut.dropped()))).isCloseTo(best, within(1e-12));
        assertThat(cut.gainBefore().getAsDouble()).isLessThan(best);
    }

    @Test
    void pullsAreDroppedOfADayThatWasNotBegunAsWell() {
        hours(LocalTime.of(11, 20));
        DayClock asPlanned = Retiming.of(plan, log(), now).get(0);
        Cut cut = CutSearch.of(plan, log(), now).orElseThrow();
        assertThat(cut.lateS()).isEqualTo(asPlanned.lateS());
        assertThat(cut.dropped()).isNotEmpty();
        DayClock shorter = Retiming.of(new DayStanding(plan, log()), now, Set.copyOf(cut.dropped())).get(0);
        assertThat(shorter.lateS()).isZero();
        assertThat(shorter.events().get(0).kind()).isEqualTo(DayEvent.Kind.SET_UP);
        assertThat(shorter.installs().get(0).startS()).isEqualTo(asPlanned.installs().get(0).startS());
    }

    @Test
    void aLookIsNextBeforeASwapButTheLastOneIsTheFindingItself() {
        plan = plan.withLooks(Optional.of(new Looks(Looks.Spending.OBRIEN_FLEMING, List.of(3, 5))));
        for (String install : List.of("A1", "B1", "A2", "B2", "A3")) {
            if (!install.equals("A1")) {
                swap(install, 8);
            }
            run(7);
            assertThat(next().kind()).as(install).isEqualTo(switch (install) {
                case "A2" -> NextAction.Kind.LOOK;
                case "A3" -> NextAction.Kind.DONE;
                default -> NextAction.Kind.SWAP;
            });
        }
        assertThat(NextStep.isDone(plan, log())).isTrue();
    }

    @Test
    void pullsThatTheDayWentPastWereNotRun() {
        run(2);
        assertThat(NextStep.passed(plan, log())).isEmpty();
        run(2);
        swap("B1", 8);
        run(1);
        assertThat(NextStep.passed(plan, log())).containsExactlyInAnyOrder(new PullId("A1", false, 3), new PullId("A1", false, 4),
                new PullId("A1", false, 5));
    }

    private double gainIfItFits(DayStanding standing, Set<PullId> gone) {
        List<DayClock> days = Retiming.of(standing, now, gone);
        return days.stream().allMatch(day -> day.lateS() == 0) ? PlanSizing.detectableGainOn(plan, days).orElse(Double.POSITIVE_INFINITY)
                : Double.POSITIVE_INFINITY;
    }

    private static void last(String install, int pulls, Set<PullId> gone) {
        for (int number = 5; number > 5 - pulls; number--) {
            gone.add(new PullId(install, false, number));
        }
    }

    @Test
    void aDayWithEqualPullsIsSizedAsThePlanIs() {
        List<DayClock> planned = DayClock.of(plan.sequence());
        assertThat(planned.get(0).events().stream().filter(event -> event.kind() == DayEvent.Kind.PULL)).hasSize(25);
        assertThat(PlanSizing.detectableGainOn(plan, planned).getAsDouble()).isCloseTo(
                fairpull.engine.planning.Sizing.size(PlanSizing.question(plan).orElseThrow()).detectableGain().getAsDouble(), within(1e-9));
    }

    @Test
    void scatterIsPooledWithinInstalls() {
        // deviations ±1 and ±3: 2 + 18 over 1 + 1
        assertThat(PooledScatter.of(List.of(List.of(10.0, 12.0), List.of(20.0, 26.0))).orElseThrow().standardDeviation())
                .isCloseTo(Math.sqrt(10), within(1e-12));
        assertThat(PooledScatter.of(List.of(List.of(10.0), List.of(20.0)))).isEmpty();
    }
}
