package fairpull.engine.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.finding.Notice;
import fairpull.domain.finding.Notice.Code;
import fairpull.domain.pull.Channels;
import fairpull.domain.unit.Quantity;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Each doubt raised by a pull made for it, beside pulls that raise none. */
class SweepCheckTest {
    private static final DoubleUnaryOperator STEADY = t -> 10.0;

    /** From 100 to 400 rad/s at a rate, the ratio to the speed of the car a function of the time, at full throttle. */
    private static Channels pull(double rate, DoubleUnaryOperator ratio, double opening) {
        return new TimeLog(300 / rate, 0.02).with(Quantity.ENGINE_SPEED, t -> 100 + rate * t)
                .with(Quantity.SPEED, t -> (100 + rate * t) / ratio.applyAsDouble(t)).with(Quantity.FRACTION, t -> opening).channels();
    }

    private static List<Notice> check(Channels reference, Channels other) {
        return SweepCheck.of(List.of(new SweepCheck.Pull("A1-1", reference), new SweepCheck.Pull("B1-1", other)));
    }

    @Test
    void pullsAlikeRaiseNothingNorDoNoiseAndSmallDifferences() {
        SplittableRandom random = new SplittableRandom(7);

        assertThat(check(pull(60, STEADY, 1), pull(60, STEADY, 1))).isEmpty();
        assertThat(check(pull(60, STEADY, 1), pull(62.4, t -> 10.05 + 0.03 * random.nextGaussian(), 0.985))).isEmpty();
    }

    @Test
    void sweepRateBeyondFivePercentOfTheReference() {
        Notice notice = only(check(pull(60, STEADY, 1), pull(66, STEADY, 1)), Code.SWEEP_RATE_DIFFERS);

        assertThat(notice.names()).containsExactly("B1-1");
        assertThat(notice.figures()).hasSize(2).allSatisfy(figure -> assertThat(figure).isCloseTo(0.1, within(0.005)));
    }

    @Test
    void slipThatGrowsThroughTheSweep() {
        Notice notice = only(check(pull(60, STEADY, 1), pull(60, t -> 10 * (0.99 + 0.02 * t / 5), 1)), Code.SLIP);

        // 2 % from end to end; the medians of twelve blocks lie 11/12 of that apart
        assertThat(notice.figures().get(1)).isCloseTo(0.02 * 11 / 12, within(0.001));
    }

    @Test
    void aStepOfTheRatioIsAChangeOfGearAndNoSlip() {
        // the car gains speed throughout, the engine falls by a quarter at 3 s and pulls on
        DoubleUnaryOperator car = t -> 20 + 4 * t;
        Channels shifted = new TimeLog(5, 0.02).with(Quantity.SPEED, car).with(Quantity.FRACTION, t -> 1)
                .with(Quantity.ENGINE_SPEED, t -> car.applyAsDouble(t) * (t < 3 ? 10 : 7.5)).channels();
        Channels steady = new TimeLog(5, 0.02).with(Quantity.SPEED, car).with(Quantity.FRACTION, t -> 1)
                .with(Quantity.ENGINE_SPEED, t -> car.applyAsDouble(t) * 10).channels();

        assertThat(check(steady, shifted)).extracting(Notice::code).contains(Code.GEAR_CHANGED).doesNotContain(Code.SLIP);
        assertThat(check(steady, steady)).isEmpty();
    }

    @Test
    void anotherGearThanTheReferenceThroughout() {
        Notice notice = only(check(pull(60, STEADY, 1), pull(60, t -> 13, 1)), Code.SPEED_RATIO_DIFFERS);

        assertThat(notice.figures().get(1)).isCloseTo(0.3, within(1e-9));
    }

    @Test
    void throttleThatNeverComesToThatOfTheReference() {
        Notice notice = only(check(pull(60, STEADY, 1), pull(60, STEADY, 0.9)), Code.THROTTLE_NEVER_FULL);

        assertThat(notice.figures().get(0)).isCloseTo(0.9, within(1e-9));
    }

    @Test
    void noSweepAndSeveral() {
        Channels none = new TimeLog(5, 0.02).with(Quantity.ENGINE_SPEED, t -> 300 - t).channels();
        Channels several = new TimeLog(20, 0.02).with(Quantity.ENGINE_SPEED, t -> t % 10 < 5 ? 100 + 60 * (t % 10) : 400 - 60 * (t % 5)).channels();

        assertThat(only(check(pull(60, STEADY, 1), none), Code.SWEEP_NOT_FOUND).names()).containsExactly("B1-1");
        assertThat(only(check(pull(60, STEADY, 1), several), Code.SWEEPS_SEVERAL).names()).containsExactly("B1-1");
    }

    private static Notice only(List<Notice> notices, Code code) {
        assertThat(notices).extracting(Notice::code).containsExactly(code);
        return notices.get(0);
    }
}
