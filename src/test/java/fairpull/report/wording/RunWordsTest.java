package fairpull.report.wording;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.domain.plan.Condition;
import fairpull.domain.plan.Gate;
import fairpull.domain.pull.DayLog;
import fairpull.domain.pull.LogEntry;
import fairpull.domain.pull.LogRecord;
import fairpull.domain.pull.PullId;
import fairpull.domain.running.GateNow;
import fairpull.domain.unit.UnitSystem;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class RunWordsTest {
    private static final OffsetDateTime NINE = OffsetDateTime.of(2026, 5, 9, 9, 0, 0, 0, ZoneOffset.UTC);
    private static final PullId PULL = new PullId("A1", false, 2);

    private static LogRecord line(int number, LogEntry entry) {
        return new LogRecord(number, NINE, "", entry, "");
    }

    @Test
    void everyGateThatWasPassedOverIsToldWithTheLastReasonGivenForIt() {
        DayLog log = new DayLog(List.of(line(1, new LogEntry.GateOverridden(PULL, Condition.COOLANT, "fan is slow")),
                line(2, new LogEntry.GateOverridden(PULL, Condition.INTAKE_AIR, "no time")),
                line(3, new LogEntry.GateOverridden(PULL, Condition.COOLANT, "fan has failed"))));
        assertThat(RunWords.pull(PULL, log, false, Optional.empty()))
                .contains("coolant at pull start overridden: fan has failed", "intake air at pull start overridden: no time").doesNotContain("slow");
    }

    @Test
    void aPullThatTheDayWentPastIsNotSaidToCome() {
        DayLog none = new DayLog(List.of());
        assertThat(RunWords.pull(PULL, none, false, Optional.empty())).isEqualTo("A1-2: not run yet.");
        assertThat(RunWords.pull(PULL, none, true, Optional.empty())).isEqualTo("A1-2: not run, and the day went on without it.");
    }

    @Test
    void aGateWhoseReferenceWasNotReadDoesNotHold() {
        Gate near = new Gate(Condition.COOLANT, new Gate.NearReference(3));
        GateNow open = new GateNow(near, OptionalDouble.of(363.15), OptionalDouble.empty(), false, Optional.empty());
        assertThat(open.state()).isEqualTo(GateNow.State.OPEN);
        assertThat(RunWords.band(open, UnitSystem.METRIC)).isEqualTo("reference not read");
        assertThat(RunWords.standing(open, UnitSystem.METRIC)).startsWith("? open").doesNotContain("holds");
        GateNow first = new GateNow(near, OptionalDouble.of(363.15), OptionalDouble.empty(), true, Optional.empty());
        assertThat(RunWords.standing(first, UnitSystem.METRIC)).isEqualTo("✓ read");
        GateNow held = new GateNow(near, OptionalDouble.of(363.15), OptionalDouble.of(362.15), false, Optional.empty());
        assertThat(RunWords.standing(held, UnitSystem.METRIC)).isEqualTo("✓ holds");
        Gate window = new Gate(Condition.COOLANT, new Gate.Window(353.15, 368.15));
        assertThat(new GateNow(window, OptionalDouble.of(363.15), OptionalDouble.empty(), false, Optional.empty()).state())
                .as("two fixed ends need no reference").isEqualTo(GateNow.State.HOLDS);
    }
}
