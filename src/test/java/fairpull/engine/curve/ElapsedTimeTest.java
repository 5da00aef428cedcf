package fairpull.engine.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.plan.Definition;
import fairpull.domain.pull.Channels;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import fairpull.engine.curve.Outcome.Reason;
import fairpull.engine.curve.Outcome.Value;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Elapsed times against motions whose answer is known in closed form. */
class ElapsedTimeTest {

    @Test
    void constantAccelerationTakesTheDifferenceOverTheAcceleration() {
        // v = a·t with a = 2.5 m/s²: from 10 to 30 m/s takes 8 s, wherever the rows lie and wherever the clock starts
        double[] time = IntStream.range(0, 100).mapToDouble(row -> -7.3 + row * 0.37).toArray();
        double[] speed = IntStream.range(0, 100).mapToDouble(row -> 2.5 * row * 0.37).toArray();

        assertThat(elapsed(time, speed, 10, 30)).isInstanceOfSatisfying(Value.class, value -> {
            assertThat(value.si()).isCloseTo(8, within(1e-12));
            assertThat(value.runs()).isEqualTo(1);
        });
    }

    @Test
    void fromStandstillTheWatchStartsAtTheLastMomentAtRest() {
        assertThat(elapsed(new double[] {-0.0, 1, 2, 3, 4}, new double[] {0, 0, 0, 5, 10}, 0, 7.5)).isEqualTo(new Value(1.5, 1));
    }

    @Test
    void theLastCrossingBeforeTheSecondSpeedStartsTheWatch() {
        double[] time = {0, 1, 2, 3, 4, 5, 6};
        double[] speed = {8, 12, 8, 12, 16, 20, 24};

        // 10 is passed upward at 0.5 and again at 2.5; 22 is reached at 5.5
        assertThat(elapsed(time, speed, 10, 22)).isEqualTo(new Value(3, 1));
    }

    @Test
    void ofSeveralRunsTheFirstCountsAndAllAreCounted() {
        double[] time = {0, 1, 2, 3, 4, 5};
        double[] speed = {0, 20, 0, 40, 0, 30};

        // first run 5 → 15 at slope 20: 0.5 s; second at slope 40; third at slope 30
        assertThat(elapsed(time, speed, 5, 15)).isEqualTo(new Value(0.5, 3));
    }

    @Test
    void aRunThatFallsBackAboveTheFirstSpeedGoesOn() {
        // 10 is passed at 0.5, the dip to 14 stays above it, 20 is reached at 4
        assertThat(elapsed(new double[] {0, 1, 2, 3, 4}, new double[] {5, 15, 14, 18, 20}, 10, 20)).isEqualTo(new Value(3.5, 1));
    }

    @Test
    void speedsThatAreNotPassedAreSaid() {
        assertThat(elapsed(new double[] {0, 1, 2}, new double[] {0, 5, 9}, 4, 10))
                .isEqualTo(Outcome.missing(Reason.SPEEDS_NOT_PASSED, Quantity.SPEED, 0, 9));
        assertThat(elapsed(new double[] {0, 1, 2}, new double[] {5, 8, 12}, 4, 10))
                .isEqualTo(Outcome.missing(Reason.SPEEDS_NOT_PASSED, Quantity.SPEED, 5, 12));
    }

    @Test
    void timeThatStandsStillOrRunsBackGivesNoElapsedTime() {
        assertThat(elapsed(new double[] {0, 1, 1, 2}, new double[] {0, 5, 9, 12}, 4, 10))
                .isEqualTo(Outcome.missing(Reason.TIME_NOT_RISING, Quantity.TIME));
        assertThat(elapsed(new double[] {0, 2, 1, 3}, new double[] {0, 5, 9, 12}, 4, 10))
                .isEqualTo(Outcome.missing(Reason.TIME_NOT_RISING, Quantity.TIME));
    }

    @Test
    void engineSpeedCanBeTheSpeed() {
        Channels pull = new Channels(Map.of(Quantity.TIME, Samples.of(0, 2, 4), Quantity.ENGINE_SPEED, Samples.of(100, 300, 500)));

        assertThat(MeasureValue.of(pull, new Definition.Elapsed(Quantity.ENGINE_SPEED, 200, 400))).isEqualTo(new Value(2, 1));
    }

    private static Outcome elapsed(double[] time, double[] speed, double from, double to) {
        Channels pull = new Channels(Map.of(Quantity.TIME, Samples.of(time), Quantity.SPEED, Samples.of(speed)));
        return MeasureValue.of(pull, new Definition.Elapsed(Quantity.SPEED, from, to));
    }
}
