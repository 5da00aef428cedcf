package fairpull.engine.check;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.domain.finding.CheckOutcome;
import fairpull.domain.finding.CheckOutcome.State;
import fairpull.domain.finding.Fate;
import fairpull.domain.finding.PullSeen;
import fairpull.domain.pull.PullId;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class StartOrderTest {
    private static final OffsetDateTime NINE = OffsetDateTime.parse("2026-05-09T09:00:00+02:00");

    private static PullSeen at(String pull, int minutes) {
        return new PullSeen(PullId.parse(pull).orElseThrow(), Fate.USED, "", Optional.of(NINE.plusMinutes(minutes)), Double.NaN,
                Map.of(), Map.of());
    }

    @Test
    void aPullThatStartedBeforeTheOneAheadOfItIsNamed() {
        CheckOutcome outcome = StartOrder.check(List.of(at("A1-W1", 0), at("A1-1", 10), at("A1-2", 5), at("A1-3", 20)));

        assertThat(outcome.state()).isEqualTo(State.RAISED);
        assertThat(outcome.names()).containsExactly("A1-2");
    }

    @Test
    void pullsInOrderAreClearAndInstallsAreNotHeldAgainstEachOther() {
        assertThat(StartOrder.check(List.of(at("A1-1", 30), at("A1-2", 40), at("B1-1", 0), at("B1-2", 10))).state())
                .isEqualTo(State.CLEAR);
        assertThat(StartOrder.check(List.of(at("A1-1", 30), at("B1-1", 0))).state()).isEqualTo(State.NOT_APPLICABLE);
    }
}
