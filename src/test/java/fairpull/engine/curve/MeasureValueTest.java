package fairpull.engine.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.plan.Definition;
import fairpull.domain.pull.Channels;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Units;
import fairpull.engine.curve.Outcome.Coverage;
import fairpull.engine.curve.Outcome.Missing;
import fairpull.engine.curve.Outcome.Reason;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Measures against closed forms: every expected value is worked out beside its check. */
class MeasureValueTest {
    private static final double RPM = Math.PI / 30;

    @Test
    void meanOfAStraightLineOverABandIsItsValueInTheMiddle() {
        // torque = 100 + speed/10, so the mean over [a, b] is 100 + (a + b)/20, whatever the spacing of the rows
        Channels pull = channels(Quantity.TORQUE, speed -> 100 + speed / 10, 200, 230, 300, 410, 415, 600, 640);

        assertThat(si(pull, new Definition.MeanOverBand(Quantity.TORQUE, 250, 610))).isCloseTo(100 + (250 + 610) / 20.0, within(1e-12));
    }

    @Test
    void everySpeedWeighsAlikeHoweverLongTheSweepDwellsThere() {
        // a sweep that dwells at the low end: the mean over samples would be far below the mean over the band
        double[] dwelling = DoubleStream.concat(DoubleStream.iterate(100, s -> s < 101, s -> s + 0.01), DoubleStream.of(200, 300)).toArray();
        Channels pull = channels(Quantity.POWER, speed -> 7 * speed, dwelling);

        assertThat(si(pull, new Definition.MeanOverBand(Quantity.POWER, 100, 300))).isCloseTo(7 * 200, within(1e-9));
    }

    @Test
    void meanOfAParabolaTendsToItsIntegral() {
        // 1/(b-a) ∫ w² dw = (b³ - a³) / (3 (b - a)); the trapezoid rule is off by h²/6 for step h
        double step = 0.5;
        double[] speeds = DoubleStream.iterate(100, s -> s <= 700, s -> s + step).toArray();
        double exact = (Math.pow(600, 3) - Math.pow(200, 3)) / (3 * 400);

        double mean = si(channels(Quantity.POWER, speed -> speed * speed, speeds), new Definition.MeanOverBand(Quantity.POWER, 200, 600));

        assertThat(mean - exact).isCloseTo(step * step / 6, within(1e-6));
    }

    @Test
    void equalSpeedsAreAveragedAndTheOrderOfSpeedsCounts() {
        Channels pull = new Channels(Map.of(
                Quantity.ENGINE_SPEED, Samples.of(100, 200, 200, 300),
                Quantity.POWER, Samples.of(10, 18, 22, 30)));

        // through (100, 10), (200, 20), (300, 30)
        assertThat(si(pull, new Definition.MeanOverBand(Quantity.POWER, 100, 300))).isEqualTo(20);
        assertThat(si(pull, new Definition.AtSpeed(Quantity.POWER, 150))).isEqualTo(15);
    }

    @Test
    void powerAndTorqueComeFromEachOther() {
        // hp = lbf·ft × rpm / 5252.113122 and kW = N·m × rpm / 9549.296586: the definitions of the units, 550·60/(2π) and 30000/π
        Channels torqueOnly = channels(Quantity.TORQUE, speed -> Units.POUND_FOOT.toSi(200), 3000 * RPM, 4000 * RPM, 5252.113122 * RPM);
        Channels powerOnly = channels(Quantity.POWER, speed -> Units.KILOWATT.toSi(100), 3000 * RPM, 4000 * RPM, 9549.296586 * RPM);

        assertThat(Units.HORSEPOWER.fromSi(si(torqueOnly, new Definition.Peak(Quantity.POWER)))).isCloseTo(200, within(2e-8));
        assertThat(Units.HORSEPOWER.fromSi(si(torqueOnly, new Definition.AtSpeed(Quantity.POWER, 4000 * RPM))))
                .isCloseTo(200 * 4000 / 5252.113122, within(2e-8));
        assertThat(si(powerOnly, new Definition.AtSpeed(Quantity.TORQUE, 9549.296586 * RPM))).isCloseTo(100, within(1e-8));
    }

    @Test
    void nothingIsExtrapolated() {
        Channels pull = channels(Quantity.POWER, speed -> speed, 200, 300, 400);

        assertThat(MeasureValue.of(pull, new Definition.MeanOverBand(Quantity.POWER, 200, 400.5)))
                .isEqualTo(new Missing(Reason.BAND_NOT_COVERED, Quantity.ENGINE_SPEED, Optional.of(new Coverage(200, 400))));
        assertThat(MeasureValue.of(pull, new Definition.AtSpeed(Quantity.POWER, 199)))
                .isEqualTo(new Missing(Reason.SPEED_NOT_COVERED, Quantity.ENGINE_SPEED, Optional.of(new Coverage(200, 400))));
        assertThat(si(pull, new Definition.MeanOverBand(Quantity.POWER, 200, 400))).isEqualTo(300);
    }

    @Test
    void missingChannelsAreNamed() {
        Channels powerAlone = new Channels(Map.of(Quantity.POWER, Samples.of(1, 2, 3)));
        Channels noPower = channels(Quantity.VOLTAGE, speed -> 12, 100, 200);

        assertThat(MeasureValue.of(powerAlone, new Definition.AtSpeed(Quantity.POWER, 100)))
                .isEqualTo(Outcome.missing(Reason.CHANNEL_ABSENT, Quantity.ENGINE_SPEED));
        assertThat(MeasureValue.of(noPower, new Definition.Peak(Quantity.POWER)))
                .isEqualTo(Outcome.missing(Reason.CHANNEL_ABSENT, Quantity.POWER));
        assertThat(MeasureValue.of(noPower, new Definition.Elapsed(Quantity.SPEED, 0, 10)))
                .isEqualTo(Outcome.missing(Reason.CHANNEL_ABSENT, Quantity.SPEED));
        assertThat(MeasureValue.of(noPower, new Definition.Typed(Quantity.TIME)))
                .isEqualTo(Outcome.missing(Reason.TYPED_BY_HAND, Quantity.TIME));
        assertThat(si(powerAlone, new Definition.Peak(Quantity.POWER))).isEqualTo(3);
    }

    @Test
    void whatHappensBeforeAndAfterTheSweepStaysOut() {
        // idling with other power, the sweep with power = speed, lift-off with power negative
        SplittableRandom random = new SplittableRandom(20261124);
        double[] idle = DoubleStream.generate(() -> 90 + 2 * (random.nextDouble() - 0.5)).limit(300).toArray();
        double[] sweep = IntStream.rangeClosed(0, 500).mapToDouble(i -> 95 + i + 3 * (random.nextDouble() - 0.5)).toArray();
        double[] fall = IntStream.rangeClosed(1, 200).mapToDouble(i -> 596 - 2 * i).toArray();
        double[] speeds = joined(idle, sweep, fall);
        double[] power = joined(new double[300], sweep, DoubleStream.generate(() -> -50).limit(200).toArray());
        Channels pull = timed(speeds, Quantity.POWER, power);

        assertThat(si(pull, new Definition.MeanOverBand(Quantity.POWER, 120, 580))).isCloseTo(350, within(1e-9));
        assertThat(si(pull, new Definition.AtSpeed(Quantity.POWER, 400))).isCloseTo(400, within(1e-9));
        assertThat(Sweep.of(pull).orElseThrow().first()).isGreaterThan(290);
        assertThat(Sweep.of(pull).orElseThrow().last()).isBetween(796, 800);
    }

    @Test
    void theLargestRiseIsTheSweep() {
        Channels pull = timed(new double[] {100, 300, 100, 200, 400, 600, 100, 350}, Quantity.POWER, new double[] {9, 9, 1, 2, 4, 6, 9, 9});

        assertThat(Sweep.of(pull)).contains(new Sweep(2, 5));
        assertThat(si(pull, new Definition.Peak(Quantity.POWER))).isEqualTo(6);
    }

    @Test
    void aTableOfFallingSpeedsWithoutTimeIsTakenWhole() {
        assertThat(si(channels(Quantity.POWER, speed -> speed, 600, 400, 200), new Definition.MeanOverBand(Quantity.POWER, 200, 600)))
                .isEqualTo(400);
        assertThat(MeasureValue.of(timed(new double[] {600, 400, 200}, Quantity.POWER, new double[] {6, 4, 2}),
                new Definition.Peak(Quantity.POWER))).isEqualTo(Outcome.missing(Reason.NO_SWEEP, Quantity.ENGINE_SPEED));
        assertThat(Sweep.of(channels(Quantity.POWER, speed -> 1, 300, 300, 300))).isEmpty();
    }

    @Test
    void aSweepBinnedFromItsFirstSpeedKeepsItsFirstRow() {
        double[] speeds = DoubleStream.iterate(200, s -> s <= 700, s -> s + 5).toArray();

        assertThat(Sweep.of(channels(Quantity.POWER, speed -> speed, speeds))).contains(new Sweep(0, speeds.length - 1));
    }

    static Channels channels(Quantity quantity, DoubleUnaryOperator value, double... speeds) {
        return new Channels(Map.of(Quantity.ENGINE_SPEED, Samples.of(speeds), quantity, Samples.of(speeds).map(value)));
    }

    static Channels timed(double[] speeds, Quantity quantity, double[] values) {
        Map<Quantity, Samples> channels = new EnumMap<>(Quantity.class);
        channels.put(Quantity.TIME, Samples.of(IntStream.range(0, speeds.length).mapToDouble(row -> row / 10.0).toArray()));
        channels.put(Quantity.ENGINE_SPEED, Samples.of(speeds));
        channels.put(quantity, Samples.of(values));
        return new Channels(channels);
    }

    private static double[] joined(double[]... parts) {
        return Stream.of(parts).flatMapToDouble(DoubleStream::of).toArray();
    }

    static double si(Channels pull, Definition definition) {
        return MeasureValue.of(pull, definition).match(Outcome.Value::si, missing -> {
            throw new AssertionError("no value: " + missing);
        });
    }
}
