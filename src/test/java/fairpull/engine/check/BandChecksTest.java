package fairpull.engine.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.finding.CheckOutcome;
import fairpull.domain.finding.CheckOutcome.State;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Units;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Coverage, samples, throttle and spikes within the band that decides, 3000 to 6500 rpm of a sweep from 2000 to 7000. */
class BandChecksTest {
    private static CheckOutcome covered(Traces pull) {
        return new BandCovered(Traces.LOW, Traces.HIGH).check(List.of(pull.trace()));
    }

    private static CheckOutcome sampled(Traces pull) {
        return new BandSampled(Traces.LOW, Traces.HIGH).check(List.of(pull.trace()));
    }

    private static CheckOutcome throttle(Traces pull) {
        return new FullThrottle(0, Double.POSITIVE_INFINITY).check(List.of(pull.trace()));
    }

    private static CheckOutcome collapse(Traces pull) {
        return new PowerCollapse().check(List.of(pull.trace()));
    }

    private static CheckOutcome spikes(Traces pull) {
        return new Spikes(Traces.LOW, Traces.HIGH).check(List.of(pull.trace()));
    }

    @Test
    void whatIsMissingOfTheBandIsGiven() {
        assertThat(covered(Traces.sweep(1)).state()).isEqualTo(State.CLEAR);
        CheckOutcome outcome = covered(Traces.sweep(1).first(173));

        assertThat(outcome.state()).isEqualTo(State.RAISED);
        assertThat(Units.RPM.fromSi(outcome.figures().get(0))).isCloseTo(200, within(1e-6));
    }

    @Test
    void fewSamplesOrALongGapAreNamed() {
        assertThat(sampled(Traces.sweep(1)).state()).isEqualTo(State.CLEAR);
        CheckOutcome few = sampled(Traces.sweep(1).put(Quantity.ENGINE_SPEED, Units.RPM, row -> 2000 + 700 * row));
        CheckOutcome gap = sampled(Traces.sweep(1).put(Quantity.ENGINE_SPEED, Units.RPM, row -> row < 60 ? 2000 + 25 * row : 3500 + 25 * row));

        assertThat(few.state()).isEqualTo(State.RAISED);
        assertThat(few.figures().get(0)).isEqualTo(5);
        assertThat(gap.state()).isEqualTo(State.RAISED);
        assertThat(Units.RPM.fromSi(gap.figures().get(1))).isCloseTo(1525, within(1e-6));
    }

    @Test
    void throttleBelowFullWithinTheScoredSweepIsNamed() {
        assertThat(throttle(Traces.sweep(1)).state()).isEqualTo(State.NOT_APPLICABLE);
        assertThat(throttle(Traces.sweep(1).put(Quantity.FRACTION, Units.PERCENT, row -> row < 20 ? 30 : 99.5)
                .cutToFullThrottle()).state()).isEqualTo(State.CLEAR);
        assertThat(throttle(Traces.sweep(1).put(Quantity.FRACTION, Units.PERCENT, row -> row == Traces.ROWS - 1 ? 0 : 100)).figures())
                .containsExactly(0.0);
        assertThat(new FullThrottle(Traces.LOW, Traces.HIGH).check(List.of(Traces.sweep(1).put(Quantity.FRACTION, Units.PERCENT,
                row -> row == Traces.ROWS - 1 ? 0 : 100).trace())).state()).isEqualTo(State.CLEAR);
        CheckOutcome lifted = throttle(Traces.sweep(1).put(Quantity.FRACTION, Units.PERCENT, row -> row == 100 ? 91 : 99.5));

        assertThat(lifted.state()).isEqualTo(State.RAISED);
        assertThat(lifted.figures()).containsExactly(0.91);
    }

    @Test
    void aCollapseInTheLastRowsIsNamedWithItsSizeAndANaturalFallIsNot() {
        Traces pull = Traces.sweep(1);
        double[] power = pull.reading(Quantity.POWER);
        CheckOutcome outcome = collapse(Traces.sweep(1).put(Quantity.POWER, Units.HORSEPOWER,
                row -> power[row] * (row == Traces.ROWS - 1 ? 0.5 : 1)));
        Traces slow = Traces.sweep(1).put(Quantity.POWER, Units.HORSEPOWER,
                row -> power[row] * (row < Traces.ROWS - 3 ? 1 : 1 - 0.1 * (row - Traces.ROWS + 4)));

        assertThat(outcome.state()).isEqualTo(State.RAISED);
        assertThat(outcome.figures().get(0)).isCloseTo(0.5, within(0.02));
        assertThat(Units.RPM.fromSi(outcome.figures().get(1))).isCloseTo(7000, within(1e-6));
        assertThat(collapse(slow).state()).isEqualTo(State.RAISED);
        for (int seed = 0; seed < 100; seed++) {
            assertThat(collapse(Traces.sweep(seed)).state()).as("seed %d", seed).isEqualTo(State.CLEAR);
        }
        assertThat(collapse(Traces.sweep(1).put(Quantity.POWER, Units.HORSEPOWER,
                row -> power[row] * (row == Traces.ROWS - 1 ? 0.5 : 1)).put(Quantity.FRACTION, Units.PERCENT,
                row -> row == Traces.ROWS - 1 ? 0 : 100).cutToFullThrottle()).state()).isEqualTo(State.CLEAR);
    }

    @Test
    void aFractionOfOneRevolutionAMinuteIsNotMissing() {
        double low = Traces.sweep(1).trace().channels().find(Quantity.ENGINE_SPEED).orElseThrow().stream().min().orElseThrow();

        assertThat(covered(low - Units.RPM.toSi(0.14)).state()).isEqualTo(State.CLEAR);
        assertThat(covered(low - Units.RPM.toSi(1.5)).state()).isEqualTo(State.RAISED);
    }

    private static CheckOutcome covered(double fromRadPerS) {
        return new BandCovered(fromRadPerS, fromRadPerS + 100).check(List.of(Traces.sweep(1).trace()));
    }

    @Test
    void aSpikeIsFoundWithItsSizeAndSpeed() {
        Traces pull = Traces.sweep(1);
        double[] power = pull.reading(Quantity.POWER);
        CheckOutcome outcome = spikes(pull.put(Quantity.POWER, Units.HORSEPOWER, row -> power[row] * (row == 120 ? 1.12 : 1)));

        assertThat(outcome.state()).isEqualTo(State.RAISED);
        assertThat(outcome.figures().get(0)).isEqualTo(1);
        assertThat(outcome.figures().get(1)).isCloseTo(0.12, within(0.015));
        assertThat(Units.RPM.fromSi(outcome.figures().get(2))).isCloseTo(5000, within(1e-6));
    }

    @Test
    void twoSpikesSideBySideDoNotHideEachOther() {
        Traces pull = Traces.sweep(1);
        double[] power = pull.reading(Quantity.POWER);

        assertThat(spikes(pull.put(Quantity.POWER, Units.HORSEPOWER, row -> power[row] * (row == 120 || row == 121 ? 0.85 : 1)))
                .figures().get(0)).isEqualTo(2);
    }

    @Test
    void ordinaryNoiseAndABumpOfTheCurveAreNoSpikes() {
        for (int seed = 0; seed < 200; seed++) {
            assertThat(spikes(Traces.sweep(seed)).state()).as("seed %d", seed).isEqualTo(State.CLEAR);
        }
        Traces pull = Traces.sweep(1);
        double[] power = pull.reading(Quantity.POWER);

        assertThat(spikes(pull.put(Quantity.POWER, Units.HORSEPOWER,
                row -> power[row] * (1 - 0.08 * Math.exp(-Math.pow((row - 120) / 8.0, 2))))).state()).isEqualTo(State.CLEAR);
    }

    @Test
    void noiseWithLongTailsStaysClearMostly() {
        Random random = new Random(9);
        Traces pull = Traces.sweep(2);
        double[] power = pull.reading(Quantity.POWER);

        assertThat(spikes(pull.put(Quantity.POWER, Units.HORSEPOWER, row -> power[row] + random.nextDouble() - 0.5)).state())
                .isEqualTo(State.CLEAR);
    }
}
