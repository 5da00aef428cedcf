package fairpull.engine.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.pull.Channels;
import fairpull.domain.unit.Quantity;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Logs in which engine speed is made of straight pieces, so that rises begin and end at known times. */
class SweptPartsTest {
    /** Corners of a day's log, seconds and rad/s: driving up slowly, a blip, three sweeps of 6 s with coast-downs, the second given up. */
    private static final double[][] DAY = {{0, 100}, {40, 320}, {42, 110}, {42.5, 450}, {44, 110}, {50, 500}, {54, 110}, {56, 230}, {58, 110},
        {64, 500}, {68, 110}, {74, 500}, {80, 100}};
    /** When the throttle is fully open in it. */
    private static final double[][] OPEN = {{42, 42.5}, {44, 50}, {54, 56}, {58, 64}, {68, 74}};
    private static final double[][] SWEEPS = {{44, 50}, {58, 64}, {68, 74}};

    private static double at(double[][] corners, double time) {
        for (int i = 1; i < corners.length; i++) {
            if (time <= corners[i][0]) {
                double share = (time - corners[i - 1][0]) / (corners[i][0] - corners[i - 1][0]);
                return corners[i - 1][1] + share * (corners[i][1] - corners[i - 1][1]);
            }
        }
        return corners[corners.length - 1][1];
    }

    private static double open(double time) {
        for (double[] span : OPEN) {
            if (time >= span[0] && time <= span[1]) {
                return 1;
            }
        }
        return 0.2;
    }

    private static Channels day(boolean throttle, double noise) {
        SplittableRandom random = new SplittableRandom(7);
        TimeLog log = new TimeLog(80, 0.02).with(Quantity.ENGINE_SPEED, t -> at(DAY, t) + noise * random.nextGaussian());
        return (throttle ? log.with(Quantity.FRACTION, SweptPartsTest::open) : log).channels();
    }

    private static void assertSpans(List<SweptParts.Span> spans, double toleranceS, double[]... expected) {
        assertThat(spans).hasSize(expected.length);
        for (int i = 0; i < expected.length; i++) {
            assertThat(spans.get(i).fromS()).isCloseTo(expected[i][0], within(toleranceS));
            assertThat(spans.get(i).toS()).isCloseTo(expected[i][1], within(toleranceS));
        }
    }

    private static List<SweptParts.Span> sweeps(SweptParts parts) {
        return parts.parts().stream().map(SweptParts.Part::sweep).toList();
    }

    @Test
    void withTheThrottleTheSweepsAtFullThrottleAreThePulls() {
        for (double noise : new double[] {0, 2.5}) {
            SweptParts parts = SweptParts.of(day(true, noise));

            assertSpans(sweeps(parts), 0.5, SWEEPS);
            assertSpans(parts.passedOver(), 0.5, new double[] {42, 42.5}, new double[] {54, 56});
        }
    }

    @Test
    void withoutItTheBlipTheSlowDriveUpAndThePullGivenUpEarlyAreNamedAndPassedOver() {
        for (double noise : new double[] {0, 2.5}) {
            SweptParts parts = SweptParts.of(day(false, noise));

            assertSpans(sweeps(parts), 0.5, SWEEPS);
            assertSpans(parts.passedOver(), 2, new double[] {0, 40}, new double[] {42, 42.5}, new double[] {54, 56});
        }
    }

    @Test
    void eachPartHoldsItsSweepAloneAndTheCoastDownBehindIt() {
        Channels day = day(false, 0);
        SweptParts parts = SweptParts.of(day);

        for (int i = 0; i < SWEEPS.length; i++) {
            SweptParts.Part part = parts.parts().get(i);
            Channels own = Sweeps.cut(day, new Sweep(part.from(), part.to() - 1));
            assertThat(Sweeps.of(own)).hasSize(1);
            assertThat(own.find(Quantity.TIME).orElseThrow().at(0)).isLessThanOrEqualTo(SWEEPS[i][0] + 0.05);
            assertThat(own.find(Quantity.ENGINE_SPEED).orElseThrow().stream().max().orElseThrow()).isCloseTo(500, within(1e-6));
        }
        assertThat(parts.parts().get(1).to()).isEqualTo(parts.parts().get(2).from());
    }

    @Test
    void aLogOfOneSweepHasOnePartAndNothingPassedOver() {
        Channels log = new TimeLog(20, 0.02).with(Quantity.ENGINE_SPEED, t -> t < 5 ? 100 : t < 12 ? 100 + 55 * (t - 5) : 485 - 40 * (t - 12))
                .channels();

        assertThat(SweptParts.of(log).parts()).hasSize(1);
        assertThat(SweptParts.of(log).passedOver()).isEmpty();
    }

    @Test
    void aLogOfBlipsAloneAndOneWithoutTimeHaveNoParts() {
        Channels blips = new TimeLog(20, 0.02).with(Quantity.ENGINE_SPEED, t -> 100 + 300 * Math.max(0, 1 - Math.abs(t % 5 - 2) / 0.8)).channels();

        assertThat(SweptParts.of(blips).parts()).isEmpty();
        assertThat(SweptParts.of(day(true, 0).without(Quantity.TIME)).parts()).isEmpty();
    }
}
