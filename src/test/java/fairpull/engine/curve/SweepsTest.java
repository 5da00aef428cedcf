package fairpull.engine.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.plan.CurveSettings;
import fairpull.domain.plan.Definition;
import fairpull.domain.plan.ScoredWindow;
import fairpull.domain.pull.Channels;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Sweeps in logs whose full throttle begins and ends at known times; expected rows are those times ÷ step. */
class SweepsTest {
    private static final OptionalDouble NONE = OptionalDouble.empty();

    /** Three pulls of 10 s, each: 3 s of cruising up at part throttle, 5 s of sweep at full throttle from 100 to 400 rad/s, 2 s down. */
    private static double speed(double time) {
        double t = time % 10;
        if (t < 3) {
            return 50 + 50 * t / 3;
        }
        return t <= 8 ? 100 + 60 * (t - 3) : 400 - 175 * (t - 8);
    }

    private static double throttle(double time) {
        double t = time % 10;
        return t >= 3 && t <= 8 ? 0.9 : 0.15;
    }

    @Test
    void sweepsOfOneLogAreThoseAtFullThrottleInTheirOrder() {
        Channels log = new TimeLog(29.99, 0.01).with(Quantity.ENGINE_SPEED, SweepsTest::speed)
                .with(Quantity.FRACTION, SweepsTest::throttle).channels();

        assertThat(Sweeps.of(log)).extracting(Sweep::last).containsExactly(800, 1800, 2800);
        // the neighbourhood of the lowest speed is left as after idling; a straight rise has none, so rows begin with full throttle
        assertThat(Sweeps.of(log)).extracting(Sweep::first).containsExactly(300, 1300, 2300);
        List<Channels> cut = Sweeps.of(log).stream().map(sweep -> Sweeps.cut(log, sweep)).toList();
        assertThat(cut).hasSize(3).allSatisfy(pull -> assertThat(pull.rows()).isEqualTo(501));
        assertThat(cut.get(1).find(Quantity.TIME).orElseThrow().at(0)).isCloseTo(13, within(1e-9));
    }

    @Test
    void withoutTheThrottleWhereverEngineSpeedRises() {
        Channels log = new TimeLog(29.99, 0.01).with(Quantity.ENGINE_SPEED, SweepsTest::speed).channels();

        assertThat(Sweeps.of(log)).extracting(Sweep::last).containsExactly(800, 1800, 2800);
        assertThat(Sweeps.of(log).get(0).first()).isLessThan(300);
    }

    @Test
    void fullIsShareOfTheLargestSteadyOpeningSoASpikeSetsNoStandard() {
        Channels log = new TimeLog(9.99, 0.01).with(Quantity.ENGINE_SPEED, SweepsTest::speed)
                .with(Quantity.FRACTION, t -> Math.abs(t - 1) < 0.005 ? 5 : throttle(t)).channels();

        assertThat(Sweeps.of(log)).containsExactly(new Sweep(300, 800));
    }

    @Test
    void blankCellsAndSingleDipsOfTheThrottleCutNoSweepInTwo() {
        Channels log = new TimeLog(9.99, 0.01).with(Quantity.ENGINE_SPEED, SweepsTest::speed)
                .with(Quantity.FRACTION, t -> Math.abs(t - 4) < 0.3 ? Double.NaN : Math.abs(t - 6) < 0.006 ? 0.5 : throttle(t)).channels();

        assertThat(Sweeps.of(log)).containsExactly(new Sweep(300, 800));
    }

    @Test
    void aBriefRiseBesideThePullIsNoSweepAndALogWithoutOneHasNone() {
        Channels blip = new TimeLog(19.99, 0.01).with(Quantity.ENGINE_SPEED, t -> t < 10 ? speed(t) : 60 + 40 * Math.sin(t - 10)).channels();
        Channels closing = new TimeLog(10, 0.01).with(Quantity.ENGINE_SPEED, t -> 100 + 10 * t)
                .with(Quantity.FRACTION, t -> t == 0 ? 1 : 0).channels();
        Channels falling = new TimeLog(10, 0.01).with(Quantity.ENGINE_SPEED, t -> 400 - 10 * t).with(Quantity.FRACTION, t -> 1).channels();

        assertThat(Sweeps.of(blip)).hasSize(1);
        assertThat(Sweeps.of(closing)).isEmpty();
        assertThat(Sweeps.of(falling)).isEmpty();
    }

    @Test
    void theWindowDropsWhatThePlanSaysAtEitherEnd() {
        Channels log = new TimeLog(9.99, 0.01).with(Quantity.ENGINE_SPEED, SweepsTest::speed)
                .with(Quantity.FRACTION, SweepsTest::throttle).channels();
        Sweep sweep = Sweep.of(log).orElseThrow();

        // 60 rad/s a second: 0.5 s and 30 rad/s are both 50 rows
        assertThat(sweep.scored(log, new ScoredWindow(NONE, OptionalDouble.of(0.495), NONE, NONE))).contains(new Sweep(350, 800));
        assertThat(sweep.scored(log, new ScoredWindow(OptionalDouble.of(29.9), NONE, OptionalDouble.of(11.9), NONE)))
                .contains(new Sweep(350, 780));
        // where both are named, both have to pass
        assertThat(sweep.scored(log, new ScoredWindow(OptionalDouble.of(29.9), OptionalDouble.of(0.995), NONE, OptionalDouble.of(0.195))))
                .contains(new Sweep(400, 780));
        assertThat(sweep.scored(log, new ScoredWindow(OptionalDouble.of(301), NONE, NONE, NONE))).isEmpty();
    }

    @Test
    void aTableThatRunsDownwardIsTrimmedAtTheEndsOfEngineSpeed() {
        Channels table = new Channels(Map.of(Quantity.ENGINE_SPEED, Samples.of(600, 500, 400, 300, 200)));

        assertThat(Sweep.of(table).orElseThrow().scored(table, new ScoredWindow(OptionalDouble.of(50), NONE, OptionalDouble.of(150), NONE)))
                .contains(new Sweep(2, 3));
    }

    @Test
    void aMeasureTakesOnlyWhatIsScored() {
        // a bump of torque right after tip-in: peak 300 with it, 200 without it
        Channels log = new TimeLog(9.99, 0.01).with(Quantity.ENGINE_SPEED, SweepsTest::speed).with(Quantity.FRACTION, SweepsTest::throttle)
                .with(Quantity.TORQUE, t -> t >= 3 && t < 3.3 ? 300 : 200).channels();
        Definition peak = new Definition.Peak(Quantity.TORQUE);

        assertThat(MeasureValue.of(log, peak)).isEqualTo(Outcome.value(300));
        assertThat(MeasureValue.of(log, peak, scoring(0.5)))
                .isEqualTo(Outcome.value(200));
        assertThat(MeasureValue.of(log, peak, scoring(6)))
                .isEqualTo(Outcome.missing(Outcome.Reason.NOTHING_SCORED, Quantity.ENGINE_SPEED));
    }

    private static Optional<CurveSettings> scoring(double tipInS) {
        return Optional.of(new CurveSettings(NONE, Optional.empty(),
                Optional.of(new ScoredWindow(NONE, OptionalDouble.of(tipInS), NONE, NONE))));
    }
}
