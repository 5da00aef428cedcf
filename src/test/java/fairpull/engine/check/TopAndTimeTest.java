package fairpull.engine.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.finding.CheckOutcome;
import fairpull.domain.finding.CheckOutcome.State;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Units;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Values that stand still at the top, and time that does not rise. */
class TopAndTimeTest {
    private static CheckOutcome plateau(Traces pull) {
        return new Plateau().check(List.of(pull.trace()));
    }

    private static CheckOutcome time(Traces pull) {
        return new TimeRises().check(List.of(pull.trace()));
    }

    /** Thrust in gf of a motor over eleven steps whose last two rows were overwritten with the third last, and as a look-alike goes on. */
    private static Traces thrust(double... values) {
        return Traces.sweep(1).without(Quantity.POWER).without(Quantity.TORQUE).put(Quantity.FORCE, Units.GRAM_OF_FORCE,
                row -> row < values.length ? values[row] : 0).first(values.length);
    }

    @Test
    void aFallingTopThatWasOverwrittenWithTheMaximumIsNamed() {
        CheckOutcome outcome = plateau(thrust(15.21, 37.08, 66.41, 99.47, 139.3, 189.12, 254.06, 329.31, 415.68, 415.68, 415.68));

        assertThat(outcome.state()).isEqualTo(State.RAISED);
        assertThat(outcome.figures().get(0)).isEqualTo(3);
        assertThat(outcome.figures().get(1)).isCloseTo(415.68, within(1e-9));
        assertThat(plateau(thrust(15.21, 37.08, 66.41, 99.47, 139.3, 189.12, 254.06, 329.31, 415.68, 409.2, 397.55)).state())
                .isEqualTo(State.CLEAR);
    }

    @Test
    void twoEqualValuesAreEnoughWhereTheyAreWrittenToTheTenMillionth() {
        assertThat(plateau(thrust(95.1234567, 188.7654321, 267.1122334, 331.9988776, 331.9988776)).state()).isEqualTo(State.RAISED);
        assertThat(plateau(thrust(95.12, 188.77, 267.11, 331.99, 331.99)).state()).isEqualTo(State.CLEAR);
    }

    @Test
    void aClippedTopIsNamedAndARealOneIsNot() {
        Traces pull = Traces.sweep(2);
        double[] power = pull.reading(Quantity.POWER);

        assertThat(plateau(Traces.sweep(2)).state()).isEqualTo(State.CLEAR);
        assertThat(plateau(pull.put(Quantity.POWER, Units.HORSEPOWER, row -> Math.min(power[row], 190))).state()).isEqualTo(State.RAISED);
    }

    @Test
    void coarseOrFlatColumnsSayNothing() {
        assertThat(plateau(Traces.sweep(3).times(Quantity.POWER, 1, 0).without(Quantity.TORQUE)).state()).isEqualTo(State.NOT_APPLICABLE);
        assertThat(plateau(Traces.sweep(3).without(Quantity.TORQUE).put(Quantity.POWER, Units.HORSEPOWER, row -> 100)).state())
                .isEqualTo(State.NOT_APPLICABLE);
    }

    @Test
    void timeThatRunsBackIsCounted() {
        assertThat(time(Traces.sweep(1)).state()).isEqualTo(State.CLEAR);
        CheckOutcome outcome = time(Traces.sweep(1).put(Quantity.TIME, Units.SECOND, row -> row < 100 ? row : row - 50));

        assertThat(outcome.state()).isEqualTo(State.RAISED);
        assertThat(outcome.figures()).containsExactly(1.0);
        assertThat(time(Traces.sweep(1).without(Quantity.TIME)).state()).isEqualTo(State.NOT_APPLICABLE);
    }
}
