package fairpull.engine.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.plan.Definition;
import fairpull.domain.pull.Channels;
import fairpull.domain.unit.Quantity;
import fairpull.engine.curve.Outcome.Reason;
import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Responses against closed forms: a first-order lag comes to the share s of its end after −τ·ln(1 − s). */
class ResponseTimeTest {
    private static final double TAU = 0.4;
    private static final double STEP_AT = 2;

    private static Channels lag(double dead, double before) {
        return new TimeLog(12, 0.005).with(Quantity.FRACTION, t -> ramp(t, STEP_AT, 0.1))
                .with(Quantity.TORQUE, t -> t < STEP_AT + dead ? before : before + (300 - before) * -Math.expm1(-(t - STEP_AT - dead) / TAU))
                .channels();
    }

    private static double ramp(double time, double middle, double length) {
        return Math.max(0, Math.min(1, 0.5 + (time - middle) / length));
    }

    @Test
    void aFirstOrderLagComesToHalfAndToNineTenthsAfterTheClosedFormTime() {
        for (double share : new double[] {0.5, 0.9}) {
            assertThat(seconds(lag(0.15, 0), share)).isCloseTo(0.15 - TAU * Math.log(1 - share), within(1e-4));
        }
    }

    @Test
    void noiseMovesTheTimeByMillisecondsAndNotAllOneWay() {
        SplittableRandom random = new SplittableRandom(11);
        for (double share : new double[] {0.5, 0.9}) {
            double truth = -TAU * Math.log(1 - share);
            double[] off = new double[40];
            for (int log = 0; log < off.length; log++) {
                Channels noisy = new TimeLog(12, 0.005).with(Quantity.FRACTION, t -> ramp(t, STEP_AT, 0.1)).with(Quantity.TORQUE,
                        t -> (t < STEP_AT ? 0 : 300 * -Math.expm1(-(t - STEP_AT) / TAU)) + 0.5 * random.nextGaussian()).channels();
                off[log] = seconds(noisy, share) - truth;
            }
            // at 90 % torque rises by 75 N·m a second, so noise of 0.5 N·m is 7 ms in a single row
            assertThat(Arrays.stream(off).average().orElseThrow()).isBetween(-0.002, 0.002);
            assertThat(Arrays.stream(off).map(Math::abs).max().orElseThrow()).isLessThan(0.008);
        }
    }

    @Test
    void theShareIsOfTheTorqueReachedWhateverItWasBefore() {
        // from 60 to 300 N·m: half of 300 is passed where 1 − e^(−t/τ) = 90/240
        assertThat(seconds(lag(0, 60), 0.5)).isCloseTo(-TAU * Math.log(1 - 90.0 / 240), within(1e-4));
    }

    @Test
    void torqueOutOfPowerAndEngineSpeedAnswersAlike() {
        Channels torque = lag(0.15, 0);
        Channels power = new TimeLog(12, 0.005).with(Quantity.FRACTION, t -> ramp(t, STEP_AT, 0.1)).with(Quantity.ENGINE_SPEED, t -> 200 + t)
                .with(Quantity.POWER, t -> t < STEP_AT + 0.15 ? 0 : (200 + t) * 300 * -Math.expm1(-(t - STEP_AT - 0.15) / TAU)).channels();

        assertThat(seconds(power, 0.9)).isCloseTo(seconds(torque, 0.9), within(1e-9));
    }

    @Test
    void aSlowPedalIsNoStepAndTorqueAlreadyThereIsNoResponse() {
        Channels slow = new TimeLog(12, 0.005).with(Quantity.FRACTION, t -> ramp(t, 4, 3)).with(Quantity.TORQUE, t -> 10 * t).channels();

        assertThat(MeasureValue.of(slow, response(0.5))).isEqualTo(Outcome.missing(Reason.NO_PEDAL_STEP, Quantity.FRACTION));
        assertThat(MeasureValue.of(lag(0, 200), response(0.5))).isEqualTo(Outcome.missing(Reason.NO_RESPONSE, Quantity.TORQUE));
    }

    @Test
    void ofSeveralStepsTheFirstCountsAndTheirNumberIsTold() {
        Channels twice = new TimeLog(12, 0.005).with(Quantity.FRACTION, t -> ramp(t % 6, STEP_AT, 0.1) - ramp(t % 6, 5, 0.1))
                .with(Quantity.TORQUE, t -> t % 6 < STEP_AT || t % 6 > 5 ? 0 : 300 * -Math.expm1(-(t % 6 - STEP_AT) / TAU)).channels();

        Outcome.Value value = (Outcome.Value) MeasureValue.of(twice, response(0.5));
        assertThat(value.runs()).isEqualTo(2);
        assertThat(value.si()).isCloseTo(TAU * Math.log(2), within(1e-3));
    }

    @Test
    void whatIsMissingIsNamed() {
        Channels noPedal = new TimeLog(1, 0.1).with(Quantity.TORQUE, t -> t).channels();
        Channels noTorque = new TimeLog(1, 0.1).with(Quantity.FRACTION, t -> t).channels();

        assertThat(MeasureValue.of(noPedal, response(0.5))).isEqualTo(Outcome.missing(Reason.CHANNEL_ABSENT, Quantity.FRACTION));
        assertThat(MeasureValue.of(noTorque, response(0.5))).isEqualTo(Outcome.missing(Reason.CHANNEL_ABSENT, Quantity.TORQUE));
    }

    private static Definition.Response response(double share) {
        return new Definition.Response(Quantity.TORQUE, share);
    }

    private static double seconds(Channels pull, double share) {
        return MeasureValue.of(pull, response(share)).match(Outcome.Value::si, missing -> {
            throw new AssertionError(missing);
        });
    }
}
