package fairpull.engine.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.finding.CheckOutcome;
import fairpull.domain.finding.CheckOutcome.State;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.Units;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ValuesPlausibleTest {
    private static CheckOutcome seen(Quantity quantity, Unit unit, IntToDoubleFunction value) {
        return new ValuesPlausible().check(List.of(Traces.sweep(1).put(quantity, unit, value).trace()));
    }

    @Test
    void aPullOfAnOrdinaryCarIsBelieved() {
        assertThat(new ValuesPlausible().check(List.of(Traces.sweep(1).trace())).state()).isEqualTo(State.CLEAR);
    }

    /** The bounds: 5 MW, 100 kN·m, 100,000 rpm, 1500 km/h; on them is not beyond them. One row is enough. */
    @ParameterizedTest
    @CsvSource({"POWER, kW, 5000, P", "TORQUE, N·m, 100000, M", "ENGINE_SPEED, rpm, 100000, n", "SPEED, km/h, 1500, v"})
    void beyondTheBoundInOneRowIsRaised(Quantity quantity, String symbol, double most, String letter) {
        Unit unit = Units.find(symbol).orElseThrow();
        assertThat(seen(quantity, unit, row -> row == 7 ? 0.999 * most : 50).state()).isEqualTo(State.CLEAR);
        for (double factor : new double[] {1.01, -1.01}) {
            CheckOutcome outcome = seen(quantity, unit, row -> row == 7 ? factor * most : 50);
            assertThat(outcome.state()).isEqualTo(State.RAISED);
            assertThat(outcome.figures().get(0)).isCloseTo(1.01, within(1e-9));
            assertThat(outcome.names().get(0)).contains("(" + letter + " = ", symbol);
        }
        assertThat(seen(quantity, unit, row -> row == 7 ? Double.POSITIVE_INFINITY : 50).state()).isEqualTo(State.RAISED);
    }

    @ParameterizedTest
    @CsvSource({"POWER, kW, P", "TORQUE, N·m, M", "ENGINE_SPEED, rpm, n", "SPEED, km/h, v"})
    void belowZeroThroughoutIsRaisedAndBelowZeroForAWhileIsNot(Quantity quantity, String symbol, String letter) {
        Unit unit = Units.find(symbol).orElseThrow();
        CheckOutcome outcome = seen(quantity, unit, row -> row % 3 == 0 ? Double.NaN : -50 - row);
        assertThat(outcome.state()).isEqualTo(State.RAISED);
        assertThat(outcome.names().get(0)).endsWith("(" + letter + " < 0)");
        assertThat(seen(quantity, unit, row -> row < 20 ? -5 : 50).state()).isEqualTo(State.CLEAR);
        assertThat(seen(quantity, unit, row -> 0).state()).as("a channel that is not connected").isEqualTo(State.CLEAR);
    }
}
